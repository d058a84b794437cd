// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/progression.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/rules/member_substitute.hpp"

#include <algorithm>

namespace bw {

namespace {
const Exercise* firstFit(const Gym& gym, const std::vector<ExerciseId>& options,
                         const Member* member) {
    for (const ExerciseId& id : options) {
        const Exercise* e = gym.shelf.find(id);
        if (!e || e->retired || !ownsKitFor(gym, *e)) continue;
        if (!member || !flagAgainst(*member, *e)) return e;
    }
    return nullptr;
}

std::string reps(Range<int> aim) {
    return aim.single() ? std::to_string(aim.lo())
                        : std::to_string(aim.lo()) + "–" + std::to_string(aim.hi());
}

BodyMove moveAfter(int done, Range<int> window) {
    const int top = std::min(window.hi(), std::max(window.hi() - 2, window.lo() + 2));
    if (done < window.lo()) return BodyMove::Easier;
    if (done >= top) return BodyMove::Harder;
    return done <= window.lo() + 1 ? BodyMove::Stay : BodyMove::Climb;
}

Message easierText(int done, const Exercise* option, Range<int> window, Range<int> aim) {
    if (option)
        return {"%1 last time, fewer than %2: take %3 for %4 until it is easy.",
                {std::to_string(done), std::to_string(window.lo()), option->name, reps(aim)}};
    return {"%1 last time, fewer than %2, and no easier option fits: stop well before form goes.",
            {std::to_string(done), std::to_string(window.lo())}};
}

Message harderText(int done, const Exercise* option, Range<int> aim) {
    if (option)
        return {"%1 last time: with good form go on to %2 for %3; else climb on here.",
                {std::to_string(done), option->name, reps(aim)}};
    return {"%1 last time, and no harder option fits: climb on, add load or slow it down.",
            {std::to_string(done)}};
}
} // namespace

BodyStep nextBodyStep(const Gym& gym, const Exercise& exercise, int done, Range<int> window,
                      const Member* member) {
    const Range<int> start =
        Range<int>::between(window.lo(), std::min(window.lo() + 1, window.hi()));
    BodyStep out{moveAfter(done, window), start, nullptr, {}};
    switch (out.move) {
    case BodyMove::Easier:
        out.option = firstFit(gym, exercise.easier, member);
        out.text = easierText(done, out.option, window, start);
        break;
    case BodyMove::Stay:
        out.text = {"%1 last time: stay, aim at %2.", {std::to_string(done), reps(start)}};
        break;
    case BodyMove::Climb:
        out.aim = Range<int>(done + 1);
        out.text = {"%1 last time: one more, on the way to %2.",
                    {std::to_string(done), std::to_string(window.hi())}};
        break;
    case BodyMove::Harder:
        out.option = firstFit(gym, exercise.harder, member);
        if (!out.option) out.aim = Range<int>(done + 1);
        out.text = harderText(done, out.option, start);
        break;
    }
    return out;
}

} // namespace bw
