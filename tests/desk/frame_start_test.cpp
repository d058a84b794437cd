// SPDX-License-Identifier: GPL-3.0-or-later
// How a gym is opened or made, and what is said when that can't be.
#include "desk/frame/actions.hpp"
#include "desk/frame/launch.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/status_line.hpp"
#include "desk/frame/workspace.hpp"
#include "edit/gym_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QLineEdit>
#include <QPushButton>

namespace bw::test {

namespace {
QString text(const std::filesystem::path& path) { return QString::fromStdString(path.string()); }
std::string tidyBundle() { return writeBundle(bundleOf(threeMonths())); }
} // namespace

TEST_CASE("The first key on the start page opens a copy of the demonstration gym") {
    FrameDesk d;
    d.window.showStart();
    d.press(Qt::Key_Space);
    REQUIRE(d.window.workspace());
    CHECK(d.gym().settings.name == "Saltmarsh Boathouse");
    CHECK(d.work().gym().file().path() == d.home.folder / "demo.bwgym");
    CHECK(std::filesystem::exists(d.home.folder / "demo.bwgym"));
    CHECK(Remembered::recent() == QStringList{text(d.home.folder / "demo.bwgym")});
    CHECK(d.work().status().text() == QStringLiteral("demo.bwgym · all changes kept"));
}

TEST_CASE("An empty gym gets its name, the Shelf, and the usual place") {
    FrameDesk d;
    d.window.showStart();
    auto* name = d.window.startPage().findChild<QLineEdit*>();
    d.type(*name, QStringLiteral("Tide Mill"));
    d.press(Qt::Key_Return);
    REQUIRE(d.window.workspace());
    CHECK(d.gym().settings.name == "Tide Mill");
    CHECK(d.gym().shelf.size() > 200);
    CHECK(d.gym().blocks.empty());
    CHECK(d.work().gym().file().path() == defaultGymPath());
}

TEST_CASE("Where the usual place is taken, a new gym asks for another") {
    FrameDesk d;
    writeText(defaultGymPath(), "somebody else's");
    Q_EMIT d.window.startPage().emptyWanted(QStringLiteral("Tide Mill"));
    CHECK(d.window.workspace() == nullptr);
    d.coach.save = text(d.home.folder / "mill.bwgym");
    Q_EMIT d.window.startPage().emptyWanted(QStringLiteral("Tide Mill"));
    REQUIRE(d.window.workspace());
    CHECK(d.work().gym().file().path() == d.home.folder / "mill.bwgym");
    CHECK(readText(defaultGymPath()) == "somebody else's");
}

TEST_CASE("A bundle becomes a gym; one with faults leaves nothing and says which") {
    FrameDesk d;
    writeText(d.home.folder / "good.json", tidyBundle());
    writeText(
        d.home.folder / "bad.json",
        R"({"format": "blockwright-bundle", "version": 1, "blocks": [{"month": "2026-13"}]})");
    d.coach.open = text(d.home.folder / "bad.json");
    Q_EMIT d.window.startPage().bundleWanted();
    CHECK(d.window.workspace() == nullptr);
    CHECK(d.window.startPage().trouble().contains(QStringLiteral("/blocks/0/month")));
    CHECK_FALSE(std::filesystem::exists(defaultGymPath()));
    d.coach.open = text(d.home.folder / "good.json");
    Q_EMIT d.window.startPage().bundleWanted();
    REQUIRE(d.window.workspace());
    CHECK(d.shown().title == "Tide of 2026-11");
}

TEST_CASE("A file that is no gym file is refused untouched, and the start page says so") {
    FrameDesk d;
    const auto letter = d.home.folder / "letter.bwgym";
    writeText(letter, "Dear coach");
    d.window.openFile(letter);
    CHECK(d.window.workspace() == nullptr);
    CHECK(d.window.startPage().trouble().contains(QStringLiteral("letter.bwgym")));
    CHECK(readText(letter) == "Dear coach");
    CHECK(Remembered::recent().isEmpty());
}

TEST_CASE("A refused file leaves the open gym open, and is told above its page") {
    FrameDesk d;
    d.openSmallGym();
    d.window.openFile(d.home.folder / "none.bwgym");
    REQUIRE(d.window.workspace());
    CHECK(d.gym().settings.name == "Tide Mill");
    CHECK(d.notice().contains(QStringLiteral("none.bwgym")));
}

TEST_CASE("A gym that somebody else writes to opens read-only and says who") {
    FrameDesk d;
    const auto path = d.home.folder / "gym.bwgym";
    Bundle bundle = bundleOf(threeMonths());
    const auto holder = createGym(path, &bundle);
    REQUIRE(holder.ok());
    d.window.openFile(path);
    REQUIRE(d.window.workspace());
    CHECK(d.work().status().text().contains(QStringLiteral("read-only")));
    CHECK(d.work().status().text().contains(QStringLiteral("process")));
    auto& title = d.part<QLineEdit>("block-title");
    d.type(title, QStringLiteral("x"));
    d.press(Qt::Key_Return, Qt::NoModifier, &title);
    CHECK(d.shown().title == "Tide of 2026-11");
    d.press(Qt::Key_N, Qt::ControlModifier);
    CHECK(d.coach.asked.isEmpty());
}

TEST_CASE("New gym shows the start page and leads back to the gym that is open") {
    FrameDesk d;
    d.openSmallGym();
    d.window.showStart();
    QPushButton* back = nullptr;
    for (auto* b : d.window.startPage().findChildren<QPushButton*>())
        if (b->text() == QStringLiteral("Back to Tide Mill")) back = b;
    REQUIRE((back && back->isVisible()));
    back->click();
    CHECK(d.work().isVisible());
}

TEST_CASE("A bundle is brought in after a question, and one gym opens after the other") {
    FrameDesk d;
    d.openSmallGym();
    writeText(
        d.home.folder / "more.json",
        R"({"format": "blockwright-bundle", "version": 1, "blocks": [{"month": "2027-01"}]})");
    d.coach.open = text(d.home.folder / "more.json");
    QAction* in = d.window.actions().find(QStringLiteral("bring-in"));
    in->trigger();
    CHECK(d.gym().blocks.size() == 3);
    d.coach.button = 0;
    in->trigger();
    CHECK(d.gym().blocks.size() == 4);

    d.coach.save = text(d.home.folder / "out.bundle.json");
    d.window.actions().find(QStringLiteral("write-bundle"))->trigger();
    const auto again = readBundle(readText(d.home.folder / "out.bundle.json"));
    REQUIRE(again.bundle);
    CHECK(again.bundle->blocks.size() == 4);

    d.window.openDemo();
    CHECK(d.gym().settings.name == "Saltmarsh Boathouse");
    d.press(Qt::Key_PageUp, Qt::ControlModifier); // the keys are those of this gym
    CHECK(d.shown().month == month("2026-11"));
}

TEST_CASE("The command line says file, theme and month, and what it does not understand") {
    const auto read = [](QStringList words) {
        words.prepend(QStringLiteral("blockwright"));
        return readLaunch(words);
    };
    const auto all =
        read({QStringLiteral("a b.bwgym"), QStringLiteral("--theme"), QStringLiteral("dark"),
              QStringLiteral("--month"), QStringLiteral("2026-09")});
    REQUIRE(all.ok());
    CHECK(all->file == std::filesystem::path("a b.bwgym"));
    CHECK(all->theme == Theme::Dark);
    CHECK(all->month == month("2026-09"));
    CHECK(read({QStringLiteral("--demo")})->demo);
    CHECK_FALSE(read({QStringLiteral("--theme"), QStringLiteral("plaid")}).ok());
    CHECK_FALSE(read({QStringLiteral("--month"), QStringLiteral("May")}).ok());
    CHECK_FALSE(read({QStringLiteral("a"), QStringLiteral("b")}).ok());
    CHECK_FALSE(read({QStringLiteral("--wizard")}).ok());
}

} // namespace bw::test
