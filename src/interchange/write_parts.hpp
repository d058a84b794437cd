// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a bundle as JSON. A key is left out when its value is the one that reading assumes,
// but what a coach looks for (units, rounds, dose) is always written.
#pragma once
#include "interchange/bundle.hpp"
#include "interchange/json_out.hpp"

namespace bw {

// Settings may be null; the kit is written when the bundle has it.
[[nodiscard]] json::Out gymOut(const Bundle& bundle);
[[nodiscard]] json::Out kitOut(const KitItem& item);
[[nodiscard]] json::Out exerciseOut(const Exercise& exercise);
[[nodiscard]] json::Out limitOut(const LimitValue& limit);
[[nodiscard]] json::Out blockOut(const Block& block);
[[nodiscard]] json::Out memberOut(const Member& member);
[[nodiscard]] json::Out resultOut(const LiftResult& result);

[[nodiscard]] inline json::Out secondsOut(Millis t) { return json::Out::decimal(t.count(), 1000); }
[[nodiscard]] inline json::Out shareOut(Share s) {
    return json::Out::decimal(s.billionths(), Share::kWhole);
}
[[nodiscard]] inline json::Out kgOut(Mass m) {
    return json::Out::decimal(m.micrograms(), Mass::kMicrogramsPerKg);
}
[[nodiscard]] inline json::Out rirOut(Rir rir) { return json::Out::decimal(rir.tenths(), 10); }
template <class E> [[nodiscard]] json::Out wordOut(E e) { return json::Out::text(wordOf(e)); }

// One value when both ends are equal, else [lo, hi].
template <class T, class F> [[nodiscard]] json::Out rangeOut(const Range<T>& range, F one) {
    if (range.single()) return one(range.lo());
    auto both = json::Out::array();
    both.push(one(range.lo())).push(one(range.hi()));
    return both;
}
template <class List, class F> [[nodiscard]] json::Out listOut(const List& list, F one) {
    auto out = json::Out::array();
    for (const auto& item : list) out.push(one(item));
    return out;
}
template <class List> [[nodiscard]] json::Out idsOut(const List& ids) {
    return listOut(ids, [](const auto& id) { return json::Out::text(id.text()); });
}
// Only when there is something in it.
inline void addUnlessEmpty(json::Out& to, std::string_view key, json::Out part) {
    if (!part.empty()) to.add(key, std::move(part));
}
inline void addText(json::Out& to, std::string_view key, const std::string& text) {
    if (!text.empty()) to.add(key, json::Out::text(text));
}

} // namespace bw
