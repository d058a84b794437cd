// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_parts.hpp"

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
constexpr int kMostRounds = 20, kLongestRest = 1800, kLongestTalk = 3600, kLongestBudget = 18'000;
constexpr int kMostHeads = 400;
constexpr std::size_t kMostSections = 20, kMostGroups = 40, kMostSlots = 40, kMostAccepted = 200;

auto secondsUpTo(Reading& r, int most) {
    return [&r, most](Node n) { return readSeconds(r, n, 0, most); };
}

std::optional<Group> readGroup(Reading& r, Node n) {
    Fields f(r, n);
    Group g;
    const auto round = [&](Node one) { return readWhole(r, one, 1, kMostRounds); };
    g.rounds = orElse(readRange(r, f.take("rounds"), round), g.rounds);
    g.rest = orElse(readRange(r, f.take("rest_seconds"), secondsUpTo(r, kLongestRest)), g.rest);
    g.slots = readList<Slot>(r, f.take("slots"), readSlot, kMostSlots);
    g.extras = f.rest();
    return g;
}

Start readStart(Reading& r, Node n, std::size_t groups) {
    if (n == kNone) return StartTogether{};
    if (r.tree.is(n, Kind::Text) && r.tree.text(n) == "together") return StartTogether{};
    if (r.tree.is(n, Kind::Text) && r.tree.text(n) == "spread") return StartSpread{};
    if (!r.tree.is(n, Kind::Array)) {
        r.error(n,
                {"This must be “together”, “spread” or a list with one head count a group.", {}});
        return StartTogether{};
    }
    StartCounts counts;
    counts.heads =
        readList<int>(r, n, [](Reading& x, Node one) { return readWhole(x, one, 0, kMostHeads); });
    if (r.tree.count(n) != groups)
        r.error(n, {"There are %1 head counts for %2 groups: give one a group.",
                    {std::to_string(r.tree.count(n)), std::to_string(groups)}});
    return counts;
}

std::optional<StairStep> readStep(Reading& r, Node n) {
    Fields f(r, n);
    StairStep step;
    step.rounds = orElse(readWord<RoundsMode>(r, f.take("rounds")), step.rounds);
    step.rir = orElse(readRir(r, f.need("rir")), step.rir);
    step.intent = orElse(readWord<Intent>(r, f.take("intent")), step.intent);
    step.extras = f.rest();
    return step;
}

std::vector<StairStep> readStair(Reading& r, Node n) {
    if (n == kNone) return defaultStair();
    auto stair = readList<StairStep>(r, n, readStep, Week::kMost);
    if (r.tree.is(n, Kind::Array) && r.tree.count(n) == 0)
        r.error(n, {"A stair needs at least one week; leave the key out for the usual four.", {}});
    return stair;
}
} // namespace

Section readSection(Reading& r, Node n) {
    Fields f(r, n);
    Section s;
    s.kind = orElse(readWord<SectionKind>(r, f.need("kind")), s.kind);
    s.talk = orElse(readSeconds(r, f.take("talk_seconds"), 0, kLongestTalk), s.talk);
    s.budget = readRange(r, f.take("budget_seconds"), secondsUpTo(r, kLongestBudget));
    const Node groups = f.take("groups");
    s.groups = readList<Group>(r, groups, readGroup, kMostGroups);
    s.start = readStart(r, f.take("start"), groups == kNone ? 0 : r.tree.count(groups));
    s.extras = f.rest();
    return s;
}

std::optional<Block> readBlock(Reading& r, Node n) {
    Fields f(r, n);
    const Node monthAt = f.need("month");
    r.refs.haveMonth(monthAt);
    const auto month = readParsed<Month>(r, monthAt);
    auto title = readText(r, f.take("title"), kTitle);
    const auto format = readWord<Format>(r, f.take("format"));
    const auto visits = readWhole(r, f.take("visits_per_week"), 1, 14);
    auto sections = readList<Section>(
        r, f.take("sections"),
        [](Reading& x, Node section) { return std::optional(readSection(x, section)); },
        kMostSections);
    auto stair = readStair(r, f.take("stair"));
    auto accepted = readList<Acceptance>(r, f.take("accepted"), readAcceptance, kMostAccepted);
    auto extras = f.rest();
    if (!month) return std::nullopt;
    return Block{.month = *month,
                 .title = orElse(std::move(title), std::string{}),
                 .format = format,
                 .visitsPerWeek = orElse(visits, 3),
                 .sections = std::move(sections),
                 .stair = std::move(stair),
                 .accepted = std::move(accepted),
                 .extras = std::move(extras)};
}

} // namespace bw
