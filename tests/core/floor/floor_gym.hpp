// SPDX-License-Identifier: GPL-3.0-or-later
// Tiny gyms whose class can be worked out by hand: no opening, no closing, everything in seconds.
#pragma once
#include "blockwright/floor/floor.hpp"
#include "support/fixtures.hpp"

#include <sstream>
#include <string>

namespace bw::test {

[[nodiscard]] inline KitItem kitItem(std::string_view id, int units, Claim claim) {
    return {.id = kit(id),
            .name = std::string(id),
            .units = units,
            .claim = claim,
            .loads = {},
            .bar = {},
            .plates = {},
            .extras = {}};
}

using Wants = std::vector<std::vector<std::pair<std::string_view, int>>>;

// A class of an hour for two, whose draft starts with one section.
class TinyGym {
public:
    TinyGym() {
        gym.settings.opening = gym.settings.closing = Millis{0};
        gym.settings.places = 2;
        draft.stair = {{RoundsMode::Open, {}, Intent::Build, {}}};
    }
    TinyGym& own(std::string_view id, int units, Claim claim) {
        gym.put(kitItem(id, units, claim));
        return *this;
    }
    // A slot of so many seconds' work, of an exercise of its own that wants this kit.
    Slot work(int seconds, const Wants& wants = {}, int setupSeconds = 0) {
        Exercise e =
            exercise("work-" + std::to_string(gym.shelf.size()), Pattern::Squat, 1, setupSeconds);
        for (const auto& one : wants) {
            e.needs.emplace_back();
            for (const auto& [id, count] : one) e.needs.back().push_back({kit(id), count, {}});
        }
        const std::string id = e.id.text();
        gym.shelf.put(std::move(e));
        return slot(id, secondsDose(seconds, seconds));
    }
    Section& add(std::vector<Group> groups) {
        draft.sections.push_back(section(SectionKind::Strength, std::move(groups)));
        return draft.sections.back();
    }
    [[nodiscard]] FloorAnswer steady(int members) const {
        FloorOptions o;
        o.members = members;
        o.steady = o.timeline = true;
        return simulateFloor(gym, draft, o).value();
    }

    Gym gym;
    Block draft = block("2026-09", {});
};

[[nodiscard]] inline Group onceThrough(std::vector<Slot> slots, int restSeconds = 0) {
    return group(rounds(1, 1), secondsRange(restSeconds, restSeconds), std::move(slots));
}

inline std::string_view wordOf(FloorDoing d) {
    constexpr std::string_view kWords[] = {"wait", "set", "rest", "talk"};
    return kWords[static_cast<int>(d)];
}

// What a member does, in seconds: "set 0-10, rest 10-30".
[[nodiscard]] inline std::string laneOf(const FloorAnswer& answer, int member) {
    std::ostringstream text;
    for (const FloorRow& row : answer.timeline) {
        if (row.member != member) continue;
        if (text.tellp() > 0) text << ", ";
        text << bw::test::wordOf(row.doing) << ' ' << static_cast<double>(row.from.count()) / 1000
             << '-' << static_cast<double>(row.to.count()) / 1000;
    }
    return text.str();
}

[[nodiscard]] inline double secondsOf(MeanTime t) { return t.count() / 1000; }
[[nodiscard]] inline const FloorKitUse& useOf(const FloorAnswer& answer, std::string_view id) {
    for (const FloorKitUse& use : answer.kit)
        if (use.kit.text() == id) return use;
    throw std::out_of_range("no such kit in the answer");
}

} // namespace bw::test
