// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/new_exercise.hpp"

#include "blockwright/model/id.hpp"

#include <array>

namespace bw {

namespace {
// Words of the trade, common practice, no source; the first that is found decides.
constexpr std::array<std::pair<std::string_view, Pattern>, 20> kWords{{
    {"squat", Pattern::Squat},
    {"deadlift", Pattern::Hinge},
    {"hinge", Pattern::Hinge},
    {"swing", Pattern::Hinge},
    {"bridge", Pattern::Hinge},
    {"lunge", Pattern::Lunge},
    {"step-up", Pattern::Lunge},
    {"overhead-press", Pattern::VerticalPush},
    {"press", Pattern::HorizontalPush},
    {"push", Pattern::HorizontalPush},
    {"dip", Pattern::HorizontalPush},
    {"pull-up", Pattern::VerticalPull},
    {"pull-down", Pattern::VerticalPull},
    {"chin-up", Pattern::VerticalPull},
    {"row", Pattern::HorizontalPull},
    {"carry", Pattern::Carry},
    {"rotation", Pattern::Rotation},
    {"plank", Pattern::TrunkStability},
    {"run", Pattern::Locomotion},
    {"stretch", Pattern::Mobility},
}};
} // namespace

std::optional<Pattern> patternInName(std::string_view name) {
    const std::string words = idTextFrom(name);
    for (const auto& [word, pattern] : kWords)
        if (words.find(word) != std::string::npos) return pattern;
    return std::nullopt;
}

Pattern likelyPattern(const SheetCell& cell, std::string_view name) {
    const Slot* slot = slotAt(cell.block, cell.row.place);
    if (slot && !slot->patterns.empty()) return slot->patterns.front();
    if (const auto pattern = patternInName(name)) return *pattern;
    if (const Group* g = groupAt(cell.block, cell.row.place))
        for (const Slot& s : g->slots)
            if (const Exercise* e = s.exercise ? cell.gym.shelf.find(*s.exercise) : nullptr)
                return e->patterns.largest();
    return Pattern::TrunkStability;
}

} // namespace bw
