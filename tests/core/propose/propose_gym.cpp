// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/propose_gym.hpp"

#include "support/fixtures.hpp"

namespace bw::test {

Gym pairGym() {
    Gym gym;
    gym.put(KitItem{kit("bell"), "Bell", 1, Claim::Group, {}, {}, {}, {}});
    const auto put = [&](const char* id, Pattern pattern, const char* role) -> Exercise {
        Exercise e = exercise(id, pattern);
        e.roles = {RoleId::parse(role).value()};
        gym.shelf.put(e);
        return e;
    };
    put("squat", Pattern::Squat, "strength-heavy");
    put("hinge", Pattern::Hinge, "strength-heavy");
    Exercise bells = put("bell-hinge", Pattern::Hinge, "strength-heavy");
    bells.needs = {{{kit("bell"), 2, {}}}};
    gym.shelf.put(bells);
    return gym;
}

Slot openSlot(std::vector<Pattern> patterns, const char* role) {
    Slot s;
    s.role = RoleId::parse(role).value();
    s.patterns = std::move(patterns);
    return s;
}

Block oneGroup(std::vector<Slot> slots) {
    return block("2026-09",
                 {section(SectionKind::Strength,
                          {group(rounds(2, 3), secondsRange(60, 90), std::move(slots))})});
}

Names namesOf(const ProposedMonth& answer) {
    Names out;
    for (const ProposedSlot& slot : answer.slots) out.push_back(slot.exercise);
    return out;
}

} // namespace bw::test
