// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_parts.hpp"

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
constexpr TextSize kPlaceKey{1, 10'000, false}; // names every exercise of a group

// Null where no number was measured.
std::optional<double> readMeasured(Reading& r, Node n) {
    if (n != kNone && r.tree.is(n, Kind::Null)) return std::nullopt;
    return readNumber(r, n, {-kLargestLimit, kLargestLimit});
}
} // namespace

std::optional<Acceptance> readAcceptance(Reading& r, Node n) {
    Fields f(r, n);
    Acceptance a;
    a.rule = orElse(readText(r, f.need("rule"), kName), std::string{});
    a.place = orElse(readText(r, f.need("place"), kPlaceKey), std::string{});
    a.about = orElse(readText(r, f.take("about"), kTitle), std::string{});
    Fields facts(r, f.need("facts"));
    a.level = orElse(readWord<Level>(r, facts.need("level")), a.level);
    a.measured = readMeasured(r, facts.need("measured"));
    a.limit = orElse(readLimit(r, facts.need("limit")), a.limit);
    a.reason = orElse(readText(r, f.need("reason"), kName), std::string{});
    a.extras = f.rest({&facts});
    return a;
}

} // namespace bw
