// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/wording.hpp"

#include "blockwright/model/shorthand.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

Message commonPractice() { return {"Common practice.", {}}; }
Message thisGymsSetting() { return {"This gym's setting.", {}}; }

std::string slotLabel(const Block& block, Place at, std::string_view name) {
    const std::string mark = groupLetter(block, at) + std::to_string(at.slot + 1);
    return name.empty() ? mark : std::string(name) + " (" + mark + ")";
}

std::string slotLabel(const Block& block, const SlotFact& slot) {
    return slotLabel(block, slot.place, slot.exercise ? slot.exercise->name : std::string_view{});
}

std::string groupLabel(const Facts& facts, Place group) {
    std::string names;
    for (const SlotFact& s : facts.slots) {
        if (s.place.section != group.section || s.place.group != group.group || !s.exercise)
            continue;
        names += (names.empty() ? "" : " + ") + s.exercise->name;
    }
    const std::string letter = groupLetter(facts.block, group);
    return names.empty() ? letter : letter + " (" + names + ")";
}

std::string kindLabel(const Section& section) { return std::string(wordOf(section.kind)); }

std::string numberText(double n) {
    const auto tenths = std::llround(n * 10);
    const std::string whole = std::to_string(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + "." + std::to_string(tenths % 10);
}

Millis toMillis(double s) { return Millis{std::llround(std::clamp(s, 0.0, 1e9) * 1000)}; }

std::string secondsText(double s) {
    const Millis tenths{std::llround(s * 10) * 100};
    return tenths == Millis{0} ? "0 s" : restText(Range<Millis>(tenths));
}

std::string bandText(const LimitValue& seconds) {
    return restText(Range<Millis>::between(toMillis(seconds.lo), toMillis(seconds.hi)));
}

std::string listText(const std::vector<std::string>& words) {
    std::string out;
    for (const std::string& w : words) out += (out.empty() ? "" : ", ") + w;
    return out;
}

} // namespace bw
