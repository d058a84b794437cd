// SPDX-License-Identifier: GPL-3.0-or-later
// The class played in the background: what is told, when, and what no longer counts.
#include "desk/floor/background_work.hpp"
#include "desk/floor_gym.hpp"
#include "support/catch.hpp"

#include <QSignalSpy>

#include <atomic>

using namespace bw;
using namespace bw::test;

namespace {
bool has(const CheckResult& verdict, std::string_view rule) {
    return std::ranges::any_of(verdict.findings, [&](const Finding& f) { return f.rule == rule; });
}
} // namespace

TEST_CASE("A newer piece of work stops the one that runs, and takes the place of one that waits") {
    std::atomic<int> stopped = 0, second = 0, third = 0;
    std::atomic<bool> begun = false;
    {
        BackgroundWork work;
        work.start([&](const std::stop_token& stop) {
            begun = true;
            while (!stop.stop_requested()) std::this_thread::yield();
            ++stopped;
        });
        while (!begun) std::this_thread::yield();
        // The first is still at work when the second is handed in: it is asked to stop, and the
        // third may come before it has.
        work.start([&](const std::stop_token& stop) {
            ++second;
            while (!stop.stop_requested()) std::this_thread::yield();
        });
        work.start([&](const std::stop_token&) { ++third; });
        while (third == 0) std::this_thread::yield();
    }
    CHECK(stopped == 1);
    CHECK(third == 1);
    CHECK(second <= 1);
}

TEST_CASE("What runs at the end is asked to stop and waited for") {
    std::atomic<bool> begun = false, ended = false;
    {
        BackgroundWork work;
        work.start([&](const std::stop_token& stop) {
            begun = true;
            while (!stop.stop_requested()) std::this_thread::yield();
            ended = true;
        });
        while (!begun) std::this_thread::yield();
    }
    CHECK(ended);
}

TEST_CASE("The draft's class is told as the engine says it, and the rule book hears of it") {
    FloorGym desk;
    CHECK(desk.runner.behind());
    CHECK_FALSE(has(desk.draft->verdict(), "kit-queue"));
    REQUIRE(desk.played());
    REQUIRE(desk.runner.usual().answer);
    CHECK(*desk.runner.usual().answer == desk.answer());
    REQUIRE(desk.draft->study());
    CHECK(desk.draft->study()->weeks.size() == desk.draft->block()->stair.size());
    CHECK(has(desk.draft->verdict(), "kit-queue")); // six wait for one sled
}

TEST_CASE("Only the last of several edits is answered") {
    FloorGym desk;
    REQUIRE(desk.played());
    std::vector<std::string> told;
    QObject::connect(&desk.runner, &FloorRunner::told,
                     [&] { told.push_back(desk.runner.usual().block->title); });
    for (const char* title : {"a", "ab", "abc"}) desk.retitle(title);
    CHECK(desk.runner.behind());
    REQUIRE(desk.played());
    REQUIRE_FALSE(told.empty());
    for (const std::string& title : told) CHECK(title == "abc");
}

TEST_CASE("An edit while classes are played drops their answer") {
    FloorGym desk;
    REQUIRE(desk.played());
    desk.retitle("first");
    REQUIRE(QTest::qWaitFor([&] { return desk.runner.running(); }, 5000));
    std::vector<std::string> told;
    QObject::connect(&desk.runner, &FloorRunner::told,
                     [&] { told.push_back(desk.runner.usual().block->title); });
    desk.retitle("second"); // whatever the first has on its way is of no use any more
    CHECK_FALSE(desk.runner.running());
    REQUIRE(desk.played());
    for (const std::string& title : told) CHECK(title == "second");
    CHECK(desk.runner.usual().block->title == "second");
}

TEST_CASE("What is typed is played before it is entered, and taken back when it is not") {
    FloorGym desk;
    REQUIRE(desk.played());
    const FloorAnswer before = *desk.runner.usual().answer;
    desk.draft->preview([](Block& b) { b.sections[1].groups[0].rounds = rounds(4, 4); });
    REQUIRE(desk.played());
    CHECK(desk.runner.usual().answer->finish.mean > before.finish.mean);
    desk.draft->endPreview();
    REQUIRE(desk.played());
    CHECK(*desk.runner.usual().answer == before);
}

TEST_CASE("While a new answer is worked out the findings of the floor stay") {
    FloorGym desk;
    REQUIRE(desk.played());
    REQUIRE(has(desk.draft->verdict(), "kit-queue"));
    desk.draft->preview([](Block& b) { b.sections[1].groups[1].rounds = rounds(3, 3); });
    CHECK(desk.runner.behind());
    CHECK(has(desk.draft->verdict(), "kit-queue"));
    REQUIRE(desk.played());
    CHECK(has(desk.draft->verdict(), "kit-queue"));
    desk.draft->endPreview();
    desk.setSled(6);
    REQUIRE(desk.played());
    CHECK_FALSE(has(desk.draft->verdict(), "kit-queue"));
}

TEST_CASE("Another week is shown without playing the month again") {
    FloorGym desk;
    REQUIRE(desk.played());
    QSignalSpy studied(desk.draft.get(), &Draft::changed);
    desk.draft->showWeek(week(4));
    REQUIRE(QTest::qWaitFor([&] { return desk.runner.usual().asked.week == week(4); }, 5000));
    REQUIRE(desk.played());
    CHECK(studied.count() == 1); // the week itself
    CHECK(*desk.runner.usual().answer == desk.answer());
}

TEST_CASE("A class that kit is too short for is answered in words") {
    FloorGym desk(queueGym(0));
    REQUIRE(desk.played());
    CHECK_FALSE(desk.runner.usual().answer);
    REQUIRE(desk.runner.usual().why.has_value());
    CHECK(desk.runner.usual().why->english().find("“Sled” and the gym has 0") != std::string::npos);
    desk.setSled(1);
    REQUIRE(desk.played());
    CHECK(desk.runner.usual().answer);
    CHECK_FALSE(desk.runner.usual().why.has_value());
}

TEST_CASE("Stop holds until the next change or until going on, and what was there stays") {
    FloorGym desk;
    REQUIRE(desk.played());
    desk.retitle("again");
    desk.runner.halt();
    CHECK(desk.runner.halted());
    CHECK(desk.runner.behind());
    QTest::qWait(FloorRunner::kDelay + 100);
    CHECK_FALSE(desk.runner.running());
    CHECK(desk.runner.usual().block->title != "again");
    desk.runner.goOn();
    REQUIRE(desk.played());
    CHECK(desk.runner.usual().block->title == "again");
    desk.runner.halt();
    desk.retitle("and again");
    REQUIRE(desk.played());
    CHECK(desk.runner.usual().block->title == "and again");
}

TEST_CASE("Going away in the middle of everything ends well") {
    for (int i = 0; i < 8; ++i) {
        FloorGym desk;
        FloorOptions slow;
        slow.members = 40;
        slow.start = StartBest{};
        desk.runner.want(slow);
        QTest::qWait(i * 10);
        desk.retitle("gone");
    }
    SUCCEED("nothing hangs or crashes");
}

TEST_CASE("A gym without a month plays nothing") {
    FloorGym desk{Gym{}};
    CHECK_FALSE(desk.runner.running());
    CHECK_FALSE(desk.runner.behind());
    QTest::qWait(50);
    CHECK_FALSE(desk.runner.usual().answer);
}
