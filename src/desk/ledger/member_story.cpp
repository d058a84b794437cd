// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/member_story.hpp"

#include <algorithm>

namespace bw {

namespace {
void addIfNew(std::vector<ExerciseId>& list, const ExerciseId& id) {
    if (std::find(list.begin(), list.end(), id) == list.end()) list.push_back(id);
}

// What a coach's ratio passes on is asked for as well.
std::vector<ExerciseId> withKin(const ExerciseId& id, const LedgerRules& rules) {
    std::vector<ExerciseId> out{id};
    for (const auto& entry : rules.ratios) {
        if (entry.first.first == id) addIfNew(out, entry.first.second);
        if (entry.first.second == id) addIfNew(out, entry.first.first);
    }
    return out;
}

Result<bool> listExercises(GymFile& file, const StoryAsk& ask, MemberStory& into) {
    const Ledger span(*ask.gym, ask.on);
    into.exercises = ask.session;
    return file.eachResultOf({{ask.member}, {}, span.earliest(), ask.on}, [&](const auto& r) {
        addIfNew(into.exercises, r.exercise);
        return true;
    });
}

Result<bool> readExercise(GymFile& file, const StoryAsk& ask, MemberStory& into) {
    Ledger ledger(*ask.gym, ask.on);
    std::vector<LiftResult> series;
    const auto read =
        file.eachResultOf({{ask.member}, withKin(*into.exercise, ledger.rules()), {}, ask.on},
                          [&](const LiftResult& r) {
                              ledger.add(r);
                              if (r.exercise == *into.exercise) series.push_back(r);
                              return true;
                          });
    if (!read) return read;
    into.days = overTime(*ask.gym, series);
    into.estimate = ledger.estimate(ask.member, *into.exercise);
    if (into.estimate) into.remarks = remarks(*into.estimate, ledger.rules());
    if (const Exercise* e = ask.gym->shelf.find(*into.exercise))
        into.next = nextTime(*ask.gym, ledger, *into.member, *e);
    return true;
}

std::vector<MemberSubstitute> substitutes(const Gym& gym, const Block& block,
                                          const Member& member) {
    std::vector<MemberSubstitute> out;
    if (member.flags.empty()) return out;
    const History history(gym, block.month);
    const Facts facts = Facts::of(gym, block, history, Week::first());
    for (const SlotFact& slot : facts.slots)
        if (auto instead = memberSubstitute(facts, slot, member))
            out.push_back(std::move(*instead));
    return out;
}
} // namespace

Result<MemberStory> tellOf(GymFile& file, const StoryAsk& ask) {
    MemberStory out{ask.gym, ask.gym->findMember(ask.member), {}, {}, ask.on, {}, {}, {}, {}, {}};
    if (ask.block) out.substitutes = substitutes(*ask.gym, *ask.block, *out.member);
    if (const auto listed = listExercises(file, ask, out); !listed) return listed.why();
    const auto& known = out.exercises;
    if (ask.exercise && std::find(known.begin(), known.end(), *ask.exercise) != known.end())
        out.exercise = ask.exercise;
    else if (!known.empty())
        out.exercise = known.front();
    if (!out.exercise) return out;
    if (const auto read = readExercise(file, ask, out); !read) return read.why();
    return out;
}

} // namespace bw
