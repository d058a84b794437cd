// SPDX-License-Identifier: GPL-3.0-or-later
// A search that is too long to be waited for, in the background.
#include "blockwright/floor/study.hpp"
#include "blockwright/rules/check.hpp"
#include "desk/propose/propose_runner.hpp"
#include "interchange/bundle.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QTest>

namespace bw::test {

namespace {
// The demonstration gym's draft with the whole of its strength open.
struct Long {
    Long() {
        auto demo = std::make_shared<Gym>();
        layOver(*demo,
                *readBundle(readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"))
                     .bundle);
        Block draft = *demo->latest();
        for (Section& section : draft.sections)
            for (Group& group : section.groups)
                for (Slot& slot : group.slots)
                    if (section.kind == SectionKind::Strength && !slot.locked)
                        slot.exercise.reset();
        demo->put(draft);
        gym = demo;
        block = gym->latest();
    }
    std::shared_ptr<const Gym> gym;
    Gym::BlockPtr block;
};

struct Heard {
    explicit Heard(ProposeRunner& runner) {
        QObject::connect(&runner, &ProposeRunner::told, [this](const ProposeRunner::Found& found) {
            last = found;
            ++answers;
        });
        QObject::connect(&runner, &ProposeRunner::played,
                         [this](const auto& found) { played = found; });
        QObject::connect(&runner, &ProposeRunner::progressed, [this] { ++steps; });
    }
    ProposeRunner::Found last, played;
    int answers = 0, steps = 0;
};

void checkIsSound(const Long& asked, const ProposeRunner::Found& found) {
    REQUIRE(found);
    REQUIRE(found->ok());
    REQUIRE_FALSE(found->value().answers.empty());
    for (const ProposedMonth& answer : found->value().answers)
        CHECK(answer.penalty == check(*asked.gym, answer.block).penalty);
    CHECK(found->value().bound <= found->value().answers.front().penalty + 1e-6);
}
} // namespace

TEST_CASE("Enough keeps the best answers so far, while the window's thread goes on") {
    const Long asked;
    ProposeRunner runner(std::chrono::minutes(10));
    Heard heard(runner);
    runner.ask(asked.gym, asked.block, {});
    CHECK(runner.looking());
    REQUIRE(QTest::qWaitFor([&] { return heard.steps > 0; }, 60'000));
    runner.enough();
    REQUIRE(QTest::qWaitFor([&] { return heard.answers > 0; }, 60'000));
    CHECK_FALSE(runner.looking());
    checkIsSound(asked, heard.last);
}

TEST_CASE("Then the classes are played: penalties are those of the check that has seen them") {
    const Long asked;
    ProposeRunner runner;
    Heard heard(runner);
    ProposeOptions one;
    one.places = {{2, 0, 1}};
    runner.ask(asked.gym, asked.block, one);
    REQUIRE(QTest::qWaitFor([&] { return heard.played != nullptr; }, 120'000));
    REQUIRE(heard.last);
    const Proposal& paper = heard.last->value();
    const Proposal& played = heard.played->value();
    CHECK_FALSE(paper.onFloor);
    REQUIRE(played.onFloor);
    CHECK(paper.answers.size() == ProposeRunner::kKeep);
    CHECK(played.answers.size() == ProposeRunner::kKeep);
    const ProposedMonth& best = played.answers.front();
    const auto study = studyFloor(*asked.gym, best.block, {});
    REQUIRE(study);
    CHECK(best.penalty == check(*asked.gym, best.block, {}, &*study).penalty);
    for (const ProposedMonth& answer : played.answers) CHECK(answer.penalty >= best.penalty);
}

TEST_CASE("After its time the search ends by itself") {
    const Long asked;
    ProposeRunner runner(std::chrono::milliseconds(50));
    Heard heard(runner);
    runner.ask(asked.gym, asked.block, {});
    REQUIRE(QTest::qWaitFor([&] { return heard.answers > 0; }, 60'000));
    checkIsSound(asked, heard.last);
}

TEST_CASE("A newer question is the only one that is answered, and a dropped one is not") {
    const Long asked;
    ProposeRunner runner;
    Heard heard(runner);
    ProposeOptions one, wrong;
    one.places = {{0, 0, 0}};
    wrong.places = {{99}}; // refused by the engine
    runner.ask(asked.gym, asked.block, one);
    runner.ask(asked.gym, asked.block, wrong);
    REQUIRE(QTest::qWaitFor([&] { return heard.answers > 0; }, 60'000));
    QTest::qWait(300);
    CHECK(heard.answers == 1);
    CHECK_FALSE(heard.last->ok());
    runner.ask(asked.gym, asked.block, wrong);
    runner.drop();
    QTest::qWait(300);
    CHECK(heard.answers == 1);
}

} // namespace bw::test
