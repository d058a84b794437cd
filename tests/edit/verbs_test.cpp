// SPDX-License-Identifier: GPL-3.0-or-later
// Every verb: it does what it says, undo brings back the gym to the letter, redo does it again, and
// the gym in memory is always the gym in the file.
#include "edit/gym_verbs.hpp"
#include "edit/memory_file.hpp"
#include "edit/month_verbs.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
Block autumn() {
    return block("2026-09",
                 {section(SectionKind::WarmUp,
                          {group(rounds(2, 2), secondsRange(0, 30),
                                 {slot("squat", reps(8, 8)), slot("row", reps(8, 8))})}),
                  section(SectionKind::Strength,
                          {group(rounds(2, 3), secondsRange(60, 120),
                                 {slot("squat", reps(5, 5)), slot("press", reps(10, 12))}),
                           group(rounds(2, 3), secondsRange(60, 120),
                                 {slot("row", reps(8, 10)), slot("press", reps(8, 10)),
                                  slot("squat", reps(12, 15))})})});
}

struct Bench {
    Bench() {
        Gym gym;
        gym.shelf.put(exercise("squat", Pattern::Squat));
        gym.shelf.put(exercise("press", Pattern::HorizontalPush));
        gym.shelf.put(exercise("row", Pattern::HorizontalPull));
        gym.put(autumn());
        auto owned = std::make_unique<MemoryFile>(gym);
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
    }
    [[nodiscard]] const Block& now() const { return *open->gym().block(month("2026-09")); }
    [[nodiscard]] Spot at(std::string_view place) const {
        return {month("2026-09"), placeFrom(now(), place).value()};
    }
    MemoryFile* file;
    std::unique_ptr<OpenGym> open;
};

using Verb = std::function<Did(OpenGym&, const Bench&)>;

void doUndoRedo(const Verb& verb) {
    Bench b;
    const Gym before = b.open->gym();
    const Did did = verb(*b.open, b);
    REQUIRE(did);
    REQUIRE(*did);
    const Gym after = b.open->gym();
    CHECK_FALSE(sameMonths(before, after));
    CHECK(sameMonths(b.file->stored, after));
    REQUIRE(*b.open->undo());
    CHECK(sameMonths(before, b.open->gym()));
    CHECK(sameMonths(before, b.file->stored));
    REQUIRE(*b.open->redo());
    CHECK(sameMonths(after, b.open->gym()));
    CHECK(sameMonths(after, b.file->stored));
}
} // namespace

TEST_CASE("each verb of a slot can be done, undone and done again") {
    doUndoRedo([](auto& g, auto& b) { return setExercise(g, b.at("strength/1/1"), ex("row")); });
    doUndoRedo([](auto& g, auto& b) { return openSlot(g, b.at("strength/1/1")); });
    doUndoRedo([](auto& g, auto& b) { return setDose(g, b.at("strength/1/1"), reps(6, 8)); });
    doUndoRedo([](auto& g, auto& b) {
        return setTempo(g, b.at("strength/1/1"), Tempo::parse("31X0").value());
    });
    doUndoRedo([](auto& g, auto& b) {
        return setEffort(g, b.at("strength/1/1"), Range<Rir>(Rir::of(2).value()));
    });
    doUndoRedo([](auto& g, auto& b) { return setMain(g, b.at("strength/1/1"), true); });
    doUndoRedo([](auto& g, auto& b) { return setLocked(g, b.at("strength/1/1"), true); });
    doUndoRedo([](auto& g, auto& b) { return setNote(g, b.at("strength/1/1"), "slow"); });
}

TEST_CASE("each verb of a group, a section and a month can be done, undone and done again") {
    doUndoRedo([](auto& g, auto& b) { return setRounds(g, b.at("strength/1"), rounds(3, 4)); });
    doUndoRedo(
        [](auto& g, auto& b) { return setRest(g, b.at("strength/1"), secondsRange(30, 45)); });
    doUndoRedo([](auto& g, auto& b) { return setTalk(g, b.at("strength"), Millis{90'000}); });
    doUndoRedo(
        [](auto& g, auto& b) { return setBudget(g, b.at("strength"), secondsRange(600, 900)); });
    doUndoRedo([](auto& g, auto& b) { return setStart(g, b.at("strength"), StartCounts{{6, 6}}); });
    doUndoRedo([](auto& g, auto& b) { return addSlot(g, b.at("strength/1/1")); });
    doUndoRedo([](auto& g, auto& b) { return addGroup(g, b.at("strength/1")); });
    doUndoRedo(
        [](auto& g, auto& b) { return addSection(g, b.at("strength"), SectionKind::Finisher); });
    doUndoRedo([](auto& g, auto& b) { return removeAt(g, b.at("strength/1/1")); });
    doUndoRedo([](auto& g, auto& b) { return removeAt(g, b.at("strength/2")); });
    doUndoRedo([](auto& g, auto& b) { return removeAt(g, b.at("strength")); });
    doUndoRedo([](auto& g, auto& b) { return moveBy(g, b.at("strength/1/1"), 1); });
    doUndoRedo([](auto& g, auto& b) { return moveBy(g, b.at("strength"), -1); });
    doUndoRedo([](auto& g, auto&) { return setTitle(g, month("2026-09"), "Low tide"); });
    doUndoRedo([](auto& g, auto&) { return setFormat(g, month("2026-09"), Format::Opposed); });
    doUndoRedo([](auto& g, auto&) { return setVisits(g, month("2026-09"), 2); });
    doUndoRedo([](auto& g, auto&) {
        return setStairStep(g, month("2026-09"), week(1),
                            {RoundsMode::High, Rir{}, Intent::Challenge, {}});
    });
    doUndoRedo([](auto& g, auto&) { return startMonth(g, month("2026-10")); });
    doUndoRedo([](auto& g, auto&) { return copyMonth(g, month("2026-09"), month("2026-10")); });
    doUndoRedo([](auto& g, auto&) { return startNextFrom(g, month("2026-09")); });
    doUndoRedo([](auto& g, auto&) { return removeMonth(g, month("2026-09")); });
    doUndoRedo([](auto& g, auto& b) {
        return addAndSetExercise(g, b.at("strength/1/1"),
                                 newExercise(g.gym(), "Odd lift", Pattern::Carry).value());
    });
}

TEST_CASE("a verb that changes nothing leaves nothing to undo and tells nobody") {
    Bench b;
    int told = 0;
    const auto listening = b.open->changed.connect([&](const auto&) { ++told; });
    CHECK_FALSE(*setDose(*b.open, b.at("strength/1/1"), reps(5, 5)));
    CHECK_FALSE(*setMain(*b.open, b.at("strength/1/1"), false));
    CHECK_FALSE(*moveBy(*b.open, b.at("warm-up"), -1));
    CHECK_FALSE(*copyMonth(*b.open, month("2026-09"), month("2026-09")));
    CHECK(b.open->undoText() == nullptr);
    CHECK(told == 0);
}

TEST_CASE("the next month can start from any month: its session, not its title or its date") {
    Bench b;
    REQUIRE(*setTitle(*b.open, month("2026-09"), "Low tide"));
    REQUIRE(*startMonth(*b.open, month("2026-12")));
    REQUIRE(*startNextFrom(*b.open, month("2026-09")));
    const auto made = b.open->gym().block(month("2027-01"));
    REQUIRE(made);
    CHECK(made->sections == b.now().sections);
    CHECK(made->title.empty());
    CHECK(made->month == month("2027-01"));
    CHECK_FALSE(*startNextFrom(*b.open, month("2026-10"))); // there is none
}

TEST_CASE("what can't be stored is not done: gym, undo and screens stay as they were") {
    Bench b;
    REQUIRE(*setMain(*b.open, b.at("strength/1/1"), true));
    const Gym before = b.open->gym();
    int told = 0;
    const auto listening = b.open->changed.connect([&](const auto&) { ++told; });
    b.file->full = true;
    CHECK_FALSE(setDose(*b.open, b.at("strength/1/1"), reps(3, 3)).ok());
    CHECK_FALSE(b.open->undo().ok());
    CHECK(sameMonths(before, b.open->gym()));
    CHECK(told == 0);
    b.file->full = false;
    CHECK(*b.open->undo());
}

TEST_CASE("undo leads back to the month and place where it happened") {
    Bench b;
    std::optional<Spot> seen;
    REQUIRE(*setMain(*b.open, b.at("strength/2/1"), true));
    REQUIRE(*copyMonth(*b.open, month("2026-09"), month("2026-10")));
    const auto listening = b.open->changed.connect([&](const auto& spot) { seen = spot; });
    REQUIRE(*b.open->undo());
    CHECK(seen->month == month("2026-09"));
    REQUIRE(*b.open->undo());
    CHECK(seen == b.at("strength/2/1"));
    REQUIRE(*b.open->redo());
    CHECK(seen == b.at("strength/2/1"));
}

TEST_CASE("a slot moved over the edge of its group lands in the next one") {
    Bench b;
    REQUIRE(*moveBy(*b.open, b.at("strength/1/2"), 1));
    CHECK(b.now().sections[1].groups[0].slots.size() == 1);
    CHECK(b.now().sections[1].groups[1].slots[0].exercise == ex("press"));
    CHECK(b.now().sections[1].groups[1].slots.size() == 4);
    REQUIRE(*moveBy(*b.open, b.at("strength/1/1"), -1)); // the only one left: its group goes
    CHECK(b.now().sections[1].groups.size() == 1);
    CHECK(b.now().sections[0].groups[0].slots.back().exercise == ex("squat"));
}

TEST_CASE("a group's last slot takes the group with it, and heads by count become a spread") {
    Bench b;
    REQUIRE(*setStart(*b.open, b.at("strength"), StartCounts{{6, 6}}));
    REQUIRE(*removeAt(*b.open, b.at("strength/1/1")));
    REQUIRE(*removeAt(*b.open, b.at("strength/1/1")));
    CHECK(b.now().sections[1].groups.size() == 1);
    CHECK(std::holds_alternative<StartSpread>(b.now().sections[1].start));
}

TEST_CASE("an exercise that can't be timed by the slot's dose brings its usual one") {
    Bench b;
    Exercise carry = exercise("carry", Pattern::Carry);
    carry.pace = Pace::of(Measure::Metres, {{}, Rate::of(1).value(), {}}).value();
    REQUIRE(*putExercise(*b.open, carry));
    REQUIRE(*setExercise(*b.open, b.at("strength/1/1"), ex("carry")));
    CHECK(b.now().sections[1].groups[0].slots[0].dose->measure() == Measure::Metres);
    CHECK_FALSE(setDose(*b.open, b.at("strength/1/1"), reps(5, 5)).ok());
}

TEST_CASE("a thousand random edits undone one by one bring back every state on the way") {
    Bench b;
    std::mt19937 random(20261125); // engine only: its numbers are the same everywhere
    const auto pick = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    std::vector<Gym> states{b.open->gym()};
    for (int i = 0; i < 1000; ++i) {
        const Block& now = b.now();
        if (now.sections.empty()) {
            REQUIRE(*addSection(*b.open, {now.month, {}}, SectionKind::Strength));
            states.push_back(b.open->gym());
            continue;
        }
        Place p{pick(static_cast<int>(now.sections.size()))};
        const auto& groups = now.sections[static_cast<std::size_t>(p.section)].groups;
        if (!groups.empty() && pick(5) > 0) p.group = pick(static_cast<int>(groups.size()));
        if (p.group >= 0 && pick(4) > 0)
            p.slot = pick(static_cast<int>(groups[static_cast<std::size_t>(p.group)].slots.size()));
        const Spot at{now.month, p};
        Did did = false;
        switch (pick(8)) {
        case 0: did = addSlot(*b.open, at); break;
        case 1: did = addGroup(*b.open, at); break;
        case 2: did = removeAt(*b.open, at); break;
        case 3: did = moveBy(*b.open, at, 1); break;
        case 4: did = moveBy(*b.open, at, -1); break;
        case 5: did = setExercise(*b.open, at, ex("row")); break;
        case 6: did = setDose(*b.open, at, reps(1 + pick(9), 10)); break;
        case 7: did = moveTo(*b.open, at, {0, 0}); break;
        }
        REQUIRE(did);
        for (const Section& s : b.now().sections)
            for (const Group& g : s.groups) REQUIRE_FALSE(g.slots.empty());
        if (*did) states.push_back(b.open->gym());
    }
    REQUIRE(states.size() > 200);
    for (auto it = states.rbegin() + 1; it != states.rend(); ++it) {
        REQUIRE(*b.open->undo());
        REQUIRE(sameMonths(*it, b.open->gym()));
        REQUIRE(sameMonths(*it, b.file->stored));
    }
    CHECK_FALSE(*b.open->undo());
}
