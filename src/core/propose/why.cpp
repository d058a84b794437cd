// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/why.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/floor_facts.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

namespace proposing {

namespace {
const Block* lastWith(const History& history, const ExerciseId& id) {
    const auto has = [&](const Gym::BlockPtr& block) {
        for (const Section& section : block->sections)
            for (const Group& group : section.groups)
                for (const Slot& slot : group.slots)
                    if (slot.exercise == id) return true;
        return false;
    };
    const auto it = std::find_if(history.blocks().begin(), history.blocks().end(), has);
    return it == history.blocks().end() ? nullptr : it->get();
}

std::string kitOf(const Gym& gym, const Exercise& e) {
    const auto* kit = kitAtHand(gym, e);
    std::vector<std::string> words;
    for (const KitNeed& need : kit ? *kit : std::vector<KitNeed>{}) {
        const std::string count = need.count > 1 ? std::to_string(need.count) + " of " : "";
        words.push_back(count + "“" + book::kitName(gym, need.kit) + "”");
    }
    return listText(words);
}
} // namespace

// %1 exercise with its slot, %2 dose, %3 main pattern, %4 month it was last in, %5 kit.
Message whyOf(const Task& task, const Block& filled, Place place, const Exercise& e) {
    const Slot& slot = *slotAt(filled, place);
    const std::string kit = kitOf(task.gym, e);
    const Block* last = lastWith(*task.history, e.id);
    const bool lastMonth = last && task.block->month.monthsSince(last->month) == 1;
    std::vector<std::string> args{slotLabel(filled, place, e.name), doseText(*slot.dose, e.sides),
                                  std::string(wordOf(e.patterns.largest())),
                                  last ? last->month.text() : "", kit};
    if (task.history->empty())
        return {kit.empty() ? "%1, %2: trains %3, takes no kit." : "%1, %2: trains %3, takes %5.",
                args};
    if (!last)
        return {kit.empty() ? "%1, %2: trains %3, is new to this gym, takes no kit."
                            : "%1, %2: trains %3, is new to this gym, takes %5.",
                args};
    if (lastMonth)
        return {kit.empty() ? "%1, %2: trains %3, carries over from last month, takes no kit."
                            : "%1, %2: trains %3, carries over from last month, takes %5.",
                args};
    return {kit.empty() ? "%1, %2: trains %3, was here last in %4, takes no kit."
                        : "%1, %2: trains %3, was here last in %4, takes %5.",
            args};
}

} // namespace proposing

std::vector<Message> whyOf(const ProposedMonth& answer) {
    std::vector<Message> out;
    for (const ProposedSlot& slot : answer.slots) out.push_back(slot.why);
    for (const Finding& f : answer.shift.go) out.push_back({"Settles: %1", {f.text.english()}});
    for (const auto& [level, f] : answer.shift.turn)
        out.push_back(
            {"Was a %1, is a %2: %3",
             {std::string(wordOf(level)), std::string(wordOf(f.level)), f.text.english()}});
    for (const Finding& f : answer.shift.appear) out.push_back({"Brings: %1", {f.text.english()}});
    return out;
}

} // namespace bw
