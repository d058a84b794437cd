// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/task.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/rules/member_substitute.hpp"
#include "core/floor/served.hpp"
#include "core/propose/asked.hpp"
#include "core/rules/offers.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::proposing {

namespace {
// One hard limit after the other; the first that leaves nothing is the reason.
class Sieve {
public:
    Sieve(const Task& task, const SlotFact& slot) : task_(task), slot_(slot) {
        for (const Shelf::Entry& e : task.gym.shelf.entries())
            if (!e->retired) left_.push_back(e.get());
        if (left_.empty()) nothing_ = Message{"The Shelf has no exercise to offer.", {}};
    }
    template <class Keeps> void keep(Keeps keeps, Message whenNone) {
        if (nothing_) return;
        const std::size_t before = left_.size();
        std::erase_if(left_, [&](const Exercise* e) { return !keeps(*e); });
        if (!left_.empty()) return;
        nothing_ = Message{"Nothing on the Shelf can stand in the slot %1. " + whenNone.source,
                           {placeText(*task_.block, slot_.place), std::to_string(before)}};
        nothing_->args.insert(nothing_->args.end(), whenNone.args.begin(), whenNone.args.end());
    }
    [[nodiscard]] const std::optional<Message>& nothing() const { return nothing_; }
    [[nodiscard]] std::vector<const Exercise*> left() const { return left_; }

private:
    const Task& task_;
    const SlotFact& slot_;
    std::vector<const Exercise*> left_;
    std::optional<Message> nothing_;
};

std::string rolesText(const std::vector<std::string_view>& roles) {
    std::vector<std::string> words(roles.begin(), roles.end());
    return listText(words);
}

std::string patternsText(const Slot& slot) {
    std::vector<std::string> words;
    for (const Pattern p : slot.patterns) words.emplace_back(wordOf(p));
    return listText(words);
}

bool hasKit(const Gym& gym, const Exercise& e) {
    return gym.kit.empty() || e.needs.empty() ||
           std::any_of(e.needs.begin(), e.needs.end(),
                       [&](const auto& one) { return served(gym, one); });
}

bool takes(const Gym& gym, const Exercise& e, const std::vector<KitId>& kit) {
    return std::any_of(kit.begin(), kit.end(), [&](const KitId& k) { return mayTake(gym, e, k); });
}

// %1 is the slot, %2 how many passed the limits before.
void sift(Sieve& sieve, const Task& task, const SlotFact& slot, const AskedSlot& asked,
          const Member* member) {
    const auto roles = rolesFor(*task.facts, slot);
    sieve.keep(
        [&](const Exercise& e) {
            return std::any_of(roles.begin(), roles.end(),
                               [&](std::string_view role) { return e.hasRole(role); });
        },
        {"None of its %2 exercises has the role %3.", {rolesText(roles)}});
    sieve.keep(
        [&](const Exercise& e) { return patternFits(asked.like, e); },
        {"None of the %2 of its role is mainly of the pattern %3.", {patternsText(asked.like)}});
    const auto& dose = slot.slot->dose;
    sieve.keep([&](const Exercise& e) { return !dose || canTime(*slot.slot, e, *dose); },
               {"None of the %2 of its role and pattern can be timed by the dose %3.",
                {dose ? doseText(*dose, Sides::Both) : ""}});
    sieve.keep([&](const Exercise& e) { return hasKit(task.gym, e); },
               {"The gym has the kit of none of the %2 that would fit.", {}});
    sieve.keep([&](const Exercise& e) { return !takes(task.gym, e, asked.spare); },
               {"All of the %2 that would fit take kit that is to be left alone.", {}});
    sieve.keep(
        [&](const Exercise& e) { return !member || !flagAgainst(*member, e); },
        {"A flag of %3 rules out all of the %2 that would fit.", {member ? member->name : ""}});
    const auto& slots = task.facts->slots;
    sieve.keep(
        [&](const Exercise& e) {
            return &e != asked.leaves &&
                   std::none_of(slots.begin(), slots.end(),
                                [&](const auto& s) { return s.exercise == &e; });
        },
        {"All of the %2 that would fit are in the session already.", {}});
}
} // namespace

Result<std::shared_ptr<const Task>> taskOf(const Gym& gym, const Block& draft,
                                           const ProposeOptions& options) {
    if (auto wrong = faultOf(gym, draft, options)) return *wrong;
    const std::vector<AskedSlot> asked = slotsAsked(gym, draft, options);
    if (asked.empty()) return Message{"There is no open slot to fill.", {}};
    auto block = std::make_unique<Block>(draft);
    for (const AskedSlot& one : asked) slotAt(*block, one.place)->exercise.reset();
    auto task = std::make_shared<Task>(Task{gym,
                                            std::move(block),
                                            std::make_unique<const History>(gym, draft.month),
                                            nullptr,
                                            {},
                                            options.floor});
    task->facts =
        std::make_unique<const Facts>(Facts::of(gym, *task->block, *task->history, Week::first()));
    const Member* member = options.member ? gym.findMember(*options.member) : nullptr;
    const Offers offers(*task->facts);
    for (const SlotFact& slot : task->facts->slots) {
        const auto one = std::ranges::find(asked, slot.place, &AskedSlot::place);
        if (one == asked.end()) continue;
        Sieve sieve(*task, slot);
        sift(sieve, *task, slot, *one, member);
        if (sieve.nothing()) return *sieve.nothing();
        task->targets.push_back({slot.place, sieve.left()});
        offers.rank(task->targets.back().fits);
    }
    return std::shared_ptr<const Task>(std::move(task));
}

} // namespace bw::proposing
