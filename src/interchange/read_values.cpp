// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_values.hpp"

#include "interchange/utf8.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
constexpr std::int64_t kWholeKg = Mass::kMost / Mass::kMicrogramsPerKg;
constexpr auto kMostKg = static_cast<double>(kWholeKg);

// As short as it can be without loss.
std::string numberText(double x) {
    char buffer[32];
    const auto end = std::to_chars(buffer, buffer + sizeof buffer, x).ptr;
    return {buffer, end};
}

// Index of the first control character; npos when there is none. U+007F is one too.
std::size_t controlAt(std::string_view text, bool lines) {
    const auto it = std::find_if(text.begin(), text.end(), [lines](char c) {
        const auto byte = static_cast<unsigned char>(c);
        const bool allowed = lines && (c == '\n' || c == '\r' || c == '\t');
        return (byte < 0x20 && !allowed) || byte == 0x7F;
    });
    return it == text.end() ? text.npos : static_cast<std::size_t>(it - text.begin());
}

bool inside(double x, Bounds b) { return b.above ? x > b.lo && x <= b.hi : x >= b.lo && x <= b.hi; }

Message outside(Bounds b) {
    const std::vector<std::string> args{numberText(b.lo), numberText(b.hi)};
    if (b.above) return {"This must be a number above %1 and at most %2.", args};
    return {"This must be a number from %1 to %2.", args};
}

// The nearest grain; a note when it is not the same number. A grain count below 2^53 divided by the
// grains of a unit is the double nearest to that decimal number, so the comparison is exact.
std::int64_t toGrains(Reader& r, Node at, double x, std::int64_t perUnit) {
    const auto scale = static_cast<double>(perUnit);
    const auto n = std::llround(x * scale);
    const double kept = static_cast<double>(n) / scale;
    if (kept != x)
        r.faults.note(at, {"%1 is kept as %2, the nearest that can be stored.",
                           {numberText(x), numberText(kept)}});
    return n;
}

template <class T> std::optional<T> checked(Reader& r, Node at, Result<T> value) {
    if (value) return std::move(value).value();
    r.error(at, value.why());
    return std::nullopt;
}
} // namespace

bool Reader::expect(Node n, Kind kind, std::string_view what) {
    if (n == kNone) return false;
    if (tree.is(n, kind)) return true;
    error(n, {"This must be %1.", {std::string(what)}});
    return false;
}

std::optional<std::string> readText(Reader& r, Node n, TextSize size) {
    if (!r.expect(n, Kind::Text, "text in quotation marks")) return std::nullopt;
    const auto text = r.tree.text(n);
    const auto length = codePoints(text);
    if (length < size.least)
        r.error(n, {"This text must not be empty.", {}});
    else if (length > size.most)
        r.error(n, {"This text has %1 characters, more than the %2 that are allowed.",
                    {std::to_string(length), std::to_string(size.most)}});
    else if (controlAt(text, size.lines) != text.npos)
        r.error(n, {"This text holds a control character that can't be printed.", {}});
    else
        return std::string(text);
    return std::nullopt;
}

std::optional<bool> readBool(Reader& r, Node n) {
    if (n == kNone) return std::nullopt;
    if (r.tree.is(n, Kind::True)) return true;
    if (r.tree.is(n, Kind::False)) return false;
    r.error(n, {"This must be true or false.", {}});
    return std::nullopt;
}

std::optional<int> readWhole(Reader& r, Node n, int lo, int hi) {
    if (n == kNone) return std::nullopt;
    const double x = r.tree.is(n, Kind::Number) ? r.tree.number(n) : std::nan("");
    if (x >= lo && x <= hi && std::floor(x) == x) return static_cast<int>(x);
    r.error(n, {"This must be a whole number from %1 to %2.",
                {std::to_string(lo), std::to_string(hi)}});
    return std::nullopt;
}

std::optional<double> readNumber(Reader& r, Node n, Bounds bounds) {
    if (n == kNone) return std::nullopt;
    if (r.tree.is(n, Kind::Number) && inside(r.tree.number(n), bounds)) return r.tree.number(n);
    r.error(n, outside(bounds));
    return std::nullopt;
}

std::optional<std::int64_t> readGrains(Reader& r, Node n, Bounds bounds, std::int64_t perUnit) {
    const auto x = readNumber(r, n, bounds);
    return x ? std::optional(toGrains(r, n, *x, perUnit)) : std::nullopt;
}

std::optional<Millis> readSeconds(Reader& r, Node n, int lo, int hi) {
    const auto ms = readGrains(r, n, {static_cast<double>(lo), static_cast<double>(hi)}, 1000);
    return ms ? std::optional(Millis{*ms}) : std::nullopt;
}

std::optional<Mass> readKg(Reader& r, Node n) {
    const auto ug = readGrains(r, n, {0, kMostKg}, Mass::kMicrogramsPerKg);
    return ug ? checked(r, n, Mass::fromMicrograms(*ug)) : std::nullopt;
}

std::optional<Mass> readKgKey(Reader& r, Node member) {
    const auto key = r.tree.key(member);
    double kg = std::nan("");
    const auto [end, error] =
        std::from_chars(key.data(), key.data() + key.size(), kg, std::chars_format::fixed);
    const bool number = error == std::errc{} && end == key.data() + key.size() &&
                        key.find_first_not_of("0123456789.") == key.npos && key.front() != '.' &&
                        key.back() != '.';
    const Bounds bounds{0, kMostKg, true};
    const bool fits = number && inside(kg, bounds);
    const auto ug = fits ? toGrains(r, member, kg, Mass::kMicrogramsPerKg) : 0;
    if (ug > 0) return checked(r, member, Mass::fromMicrograms(ug));
    r.error(member, {"“%1” is not a mass: write kilograms above 0 and at most 2000, such as “2.5”.",
                     {std::string(key)}});
    return std::nullopt;
}

std::optional<Share> readShare(Reader& r, Node n) {
    const auto billionths = readGrains(r, n, {0, 1}, Share::kWhole);
    return billionths ? checked(r, n, Share::fromBillionths(*billionths)) : std::nullopt;
}

std::optional<Rate> readRate(Reader& r, Node n) {
    const auto billionths = readGrains(r, n, {0, 1000, true}, Rate::kUnit);
    return billionths ? checked(r, n, Rate::fromBillionths(*billionths)) : std::nullopt;
}

std::optional<Rir> readRir(Reader& r, Node n) {
    const auto tenths = readGrains(r, n, {0, 10}, 10);
    return tenths ? checked(r, n, Rir::fromTenths(static_cast<int>(*tenths))) : std::nullopt;
}

void wordFault(Reader& r, Node at, std::string_view word, std::span<const std::string_view> words) {
    std::string all;
    for (const auto w : words) all += (all.empty() ? "" : ", ") + std::string(w);
    r.error(at, {"“%1” is none of the words known here: %2.", {std::string(word), all}});
}

void noteNewWord(Reader& r, Node at, std::string_view word,
                 std::span<const std::string_view> shipped) {
    if (std::find(shipped.begin(), shipped.end(), word) != shipped.end()) return;
    r.faults.note(at, {"“%1” is a word of this gym's own; it is kept, and no rule looks at it.",
                       {std::string(word)}});
}

} // namespace bw
