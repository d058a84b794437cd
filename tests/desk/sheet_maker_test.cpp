// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/workspace.hpp"
#include "desk/sheets/sheet_maker.hpp"
#include "edit/gym_verbs.hpp"
#include "edit/result_verbs.hpp"
#include "ledger_gym.hpp"
#include "support/catch.hpp"

namespace bw::test {

TEST_CASE("Cards read what was lifted once, and anew when anything they read it by has changed") {
    auto owned = std::make_unique<MemoryFile>(ledgerGym());
    MemoryFile& file = *owned;
    const auto gym = OpenGym::over(std::move(owned)).value();
    Draft draft(*gym);
    SheetMaker maker(draft);
    const auto reads = [&] {
        const int before = file.queries;
        REQUIRE(maker.ledger().ok());
        return file.queries - before;
    };
    CHECK(reads() == 1);
    CHECK(reads() == 0);
    GymSettings settings = gym->gym().settings;
    settings.name = "Elsewhere";
    REQUIRE(setSettings(*gym, settings).ok());
    draft.preview([](Block& b) { b.title = "Typed"; });
    CHECK(reads() == 0);

    const LiftDay press{who("m-001"), day("2026-11-10"), ex("floor-press")};
    REQUIRE(setSets(*gym, press, {{5, {}, Mass::fromKg(40).value()}}).ok());
    CHECK(reads() == 1);
    CHECK((*maker.ledger())->last(press.member, press.exercise)->reps == 5);
    REQUIRE(gym->undo().ok());
    CHECK(reads() == 1);
    CHECK_FALSE((*maker.ledger())->last(press.member, press.exercise));

    settings.limits["ledger.drift"] = {0.01, 0.01, false};
    REQUIRE(setSettings(*gym, settings).ok());
    CHECK(reads() == 1);
    Member cy = *gym->gym().findMember(who("m-003"));
    cy.active = true;
    REQUIRE(gym->change({{"Cy is back", {}}, {PutMember{cy}}, {}, {}}).ok());
    CHECK(reads() == 1);
    Exercise squat = *gym->gym().shelf.find(ex("box-squat"));
    squat.sides = Sides::Alternating;
    REQUIRE(gym->change({{"sides", {}},
                         {PutExercise{std::make_shared<const Exercise>(std::move(squat))}},
                         {},
                         {}})
                .ok());
    CHECK(reads() == 1);
    draft.preview([](Block& b) { b.sections[1].groups[0].slots.resize(1); });
    CHECK(reads() == 0); // fewer exercises
}

} // namespace bw::test
