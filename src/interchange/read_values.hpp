// SPDX-License-Identifier: GPL-3.0-or-later
// One value of a bundle at a time. Each reader takes kNone for a key that is not there and then
// gives nothing; when the value is not what it should be it says so among the faults and gives
// nothing.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/effort.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/range.hpp"
#include "blockwright/model/shares.hpp"
#include "interchange/faults.hpp"

#include <optional>
#include <span>

namespace bw {

struct Reader {
    const json::Tree& tree;
    Faults& faults;

    void error(json::Node at, Message text) { faults.error(at, std::move(text)); }
    // False, with the fault told, unless n is there and of that kind; `what` is "a list", "text",
    // ...
    bool expect(json::Node n, json::Kind kind, std::string_view what);
};

// How long a text may be, in Unicode code points, and whether it may have lines and tabs.
struct TextSize {
    std::size_t least = 0, most = 200;
    bool lines = false;
};
inline constexpr TextSize kName{1, 200, false};
inline constexpr TextSize kTitle{0, 200, false};
inline constexpr TextSize kNote{0, 2000, true};

// A number as written must be in here, before it is rounded. `above`: lo itself is outside.
struct Bounds {
    double lo = 0, hi = 0;
    bool above = false;
};

[[nodiscard]] std::optional<std::string> readText(Reader& r, json::Node n, TextSize size);
[[nodiscard]] std::optional<bool> readBool(Reader& r, json::Node n);
[[nodiscard]] std::optional<int> readWhole(Reader& r, json::Node n, int lo, int hi);
[[nodiscard]] std::optional<double> readNumber(Reader& r, json::Node n, Bounds bounds);
// In the nearest grain of `perUnit` to the unit, with a note when that is not the number as
// written.
[[nodiscard]] std::optional<std::int64_t> readGrains(Reader& r, json::Node n, Bounds bounds,
                                                     std::int64_t perUnit);
[[nodiscard]] std::optional<Millis> readSeconds(Reader& r, json::Node n, int lo, int hi);
[[nodiscard]] std::optional<Mass> readKg(Reader& r, json::Node n);
// The key of an object as a mass above 0: "2.5".
[[nodiscard]] std::optional<Mass> readKgKey(Reader& r, json::Node member);
[[nodiscard]] std::optional<Share> readShare(Reader& r, json::Node n);
[[nodiscard]] std::optional<Rate> readRate(Reader& r, json::Node n);
[[nodiscard]] std::optional<Rir> readRir(Reader& r, json::Node n);

inline constexpr double kLargestLimit = 1e9; // of the rule book, and of what it measures

// The value, or `otherwise` when there is none.
template <class T> [[nodiscard]] T orElse(std::optional<T> value, T otherwise) {
    return value ? std::move(*value) : std::move(otherwise);
}
// What a type's own reading of a text makes of this one.
template <class T> [[nodiscard]] std::optional<T> readParsed(Reader& r, json::Node n) {
    if (!r.expect(n, json::Kind::Text, "text")) return std::nullopt;
    auto value = T::parse(r.tree.text(n));
    if (value) return std::move(value).value();
    r.error(n, value.why());
    return std::nullopt;
}

// [lo, hi], or one value for both; `one` reads a single one.
template <class F> [[nodiscard]] auto readRange(Reader& r, json::Node n, F one)
    -> std::optional<Range<typename decltype(one(n))::value_type>> {
    using Values = Range<typename decltype(one(n))::value_type>;
    if (n == json::kNone) return std::nullopt;
    if (!r.tree.is(n, json::Kind::Array)) {
        const auto both = one(n);
        return both ? std::optional(Values(*both)) : std::nullopt;
    }
    if (r.tree.count(n) != 2) {
        r.error(n, {"This must be one number, or two as [lowest, highest].", {}});
        return std::nullopt;
    }
    const auto lo = one(r.tree.first(n));
    const auto hi = one(r.tree.next(r.tree.first(n)));
    if (!lo || !hi) return std::nullopt;
    const auto range = Values::of(*lo, *hi);
    if (!range) r.error(n, range.why());
    return range ? std::optional(range.value()) : std::nullopt;
}

// Says which words there are.
void wordFault(Reader& r, json::Node at, std::string_view word,
               std::span<const std::string_view> words);

template <class E> [[nodiscard]] std::optional<E> readWord(Reader& r, json::Node n) {
    if (!r.expect(n, json::Kind::Text, "a word in quotation marks")) return std::nullopt;
    const auto e = fromWord<E>(r.tree.text(n));
    if (!e) wordFault(r, n, r.tree.text(n), Spelling<E>::words);
    return e;
}
// The key of an object as a word of a closed list.
template <class E> [[nodiscard]] std::optional<E> readWordKey(Reader& r, json::Node member) {
    const auto e = fromWord<E>(r.tree.key(member));
    if (!e) wordFault(r, member, r.tree.key(member), Spelling<E>::words);
    return e;
}

// A word of a list that gyms may add to: one we do not ship is only a note.
void noteNewWord(Reader& r, json::Node at, std::string_view word,
                 std::span<const std::string_view> shipped);

// Calls visit(child) for each item of an Array or Object; does nothing when n is not there, and
// tells a fault when it is of another kind or has more than `most`.
template <class F>
void eachChild(Reader& r, json::Node n, json::Kind kind, F visit, std::size_t most = SIZE_MAX) {
    if (n == json::kNone) return;
    if (!r.expect(n, kind, kind == json::Kind::Array ? "a list [ ]" : "an object { }")) return;
    if (r.tree.count(n) > most) {
        r.error(n, {"There are %1 of these, more than the %2 that are allowed.",
                    {std::to_string(r.tree.count(n)), std::to_string(most)}});
        return;
    }
    for (auto child = r.tree.first(n); child != json::kNone; child = r.tree.next(child))
        visit(child);
}

} // namespace bw
