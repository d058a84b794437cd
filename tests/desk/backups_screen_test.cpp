// SPDX-License-Identifier: GPL-3.0-or-later
// The screen of backups: what it lists, what it says before a restore, and what a restore does to
// the window and its file.
#include "desk/backups/backup_model.hpp"
#include "desk/backups/backup_preview.hpp"
#include "desk/backups/backup_words.hpp"
#include "desk/backups/backups_dialog.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/workspace.hpp"
#include "edit/gym_verbs.hpp"
#include "edit/month_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QToolButton>

#include <sys/stat.h>

namespace bw::test {

namespace {
namespace fs = std::filesystem;

WallTime wall(int hour, int minute) {
    using namespace std::chrono;
    return local_days(2026y / November / 25) + hours(hour) + minutes(minute);
}
Block named(const Gym& gym, const char* month, const char* title) {
    Block block = *gym.block(Month::parse(month).value());
    block.title = title;
    return block;
}
void scribble(const fs::path& file) { // over what SQLite needs to read it
    std::string bytes = readText(file);
    bytes.replace(4096, 64, std::string(64, '\xa5'));
    writeText(file, bytes);
}
QString pathOfText(const fs::path& path) { return QString::fromStdString(path.string()); }

// A gym file with the backup of today, which names October "Before"; the file names it "After".
struct Kept : FrameDesk {
    fs::path path = home.folder / "mill.bwgym";
    Backup before;
    Kept() {
        Gym gym = threeMonths();
        gym.put(named(gym, "2026-10", "Before"));
        const Bundle bundle = bundleOf(gym);
        const auto made = createGym(path, &bundle);
        REQUIRE(made.ok());
        before = kept(BackupReason::Daily);
        gym.put(named(gym, "2026-10", "After"));
        Bundle later = bundleOf(gym);
        REQUIRE(importBundle(**made, later).ok());
    }
    Backup kept(BackupReason reason) const {
        const auto made = backUp(path, reason, wallTime());
        if (!made) FAIL(made.why().english());
        return made->backup;
    }
    // Opens the screen from the menu's action and waits until the line is read.
    BackupsDialog& screen() {
        if (!window.workspace()) window.openFile(path);
        window.actions().find(QStringLiteral("backups"))->trigger();
        return seen();
    }
    BackupsDialog& seen() {
        auto* found = window.findChild<BackupsDialog*>();
        if (!found) throw std::runtime_error("no screen of backups");
        if (!QTest::qWaitFor([&] { return found->look().has_value(); }, 30'000))
            throw std::runtime_error("nothing was read");
        return *found;
    }
    QString said() { return seen().findChild<BackupPreview*>()->toPlainText(); }
    QString told() { return part<QLabel>("notice-line").text(); }
    void choose(const fs::path& backup) {
        auto* table = seen().findChild<QTableView*>();
        table->selectRow(static_cast<BackupModel*>(table->model())->rowOf(backup));
        (void)seen();
    }
    std::string october() { return gym().block(Month::parse("2026-10").value())->title; }
    void restore() {
        coach.button = 0;
        part<QPushButton>("restore").click();
        settle();
    }
};
} // namespace

TEST_CASE("The list of backups says when, why and how large, the last first") {
    BackupModel model(nullptr);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    CHECK(model.show({{"b", 2, BackupReason::Restore, wall(18, 30), 1'250'000},
                      {"a", 1, BackupReason::Daily, wall(8, 5), 180'000}}));
    CHECK_FALSE(model.show({{"b", 2, BackupReason::Restore, wall(18, 30), 1'250'000},
                            {"a", 1, BackupReason::Daily, wall(8, 5), 180'000}}));
    const auto text = [&](int row, int column) {
        return model.index(row, column).data().toString().toStdString();
    };
    CHECK(text(0, BackupModel::Made) == "Wed 25 Nov 2026, 18:30");
    CHECK(text(1, BackupModel::Made) == "Wed 25 Nov 2026, 08:05");
    CHECK(text(0, BackupModel::Why) == "before a restore");
    CHECK(text(1, BackupModel::Why) == "the first of the day");
    CHECK(text(0, BackupModel::Size) == "1.3 MB");
    CHECK(model.rowOf("a") == 1);
    CHECK(model.rowOf("c") == -1);
}

TEST_CASE("Before a restore it is said what would go, change and come back") {
    BackupDifference would;
    CHECK(differenceSentence(would).isEmpty());
    would.results = {12, 0, 1};
    would.monthsChanged = {Month::parse("2026-11").value(), Month::parse("2026-12").value()};
    would.settings = true;
    CHECK(differenceSentence(would).toStdString() ==
          "Would go – Results: 12. Would change – November 2026, December 2026; Settings and house "
          "limits. Would come back – Results: 1.");
    for (int m = 1; m <= 5; ++m) would.monthsGone.push_back(Month::of(2025, m).value());
    CHECK(differenceWords(would).gone.first().toStdString() == "Months: 5");
}

TEST_CASE("A backup's content stands beside that of the gym file, with what a restore would do") {
    Kept k;
    k.screen();
    const QString said = k.said();
    for (const char* words :
         {"this backup", "the gym file now", "Tide Mill", "3: September 2026 to November 2026",
          "Would change", "October 2026\n", "is kept first"}) {
        INFO(words << " in " << said.toStdString());
        CHECK(said.contains(QLatin1String(words)));
    }
    CHECK_FALSE(said.contains(QStringLiteral("Would go")));
    CHECK_FALSE(said.contains(QStringLiteral("byte for byte")));
    CHECK(k.part<QPushButton>("restore").isEnabled());
    const auto same = k.kept(BackupReason::Asked);
    k.screen();
    CHECK(k.said().contains(QStringLiteral("the gym file holds the same")));
}

TEST_CASE("Restoring brings the backup into the window and keeps what was there, back and forth") {
    Kept k;
    k.screen();
    k.window.showMonth(Month::parse("2026-10").value());
    CHECK(k.october() == "After");
    k.restore();
    REQUIRE(k.window.workspace());
    CHECK(k.october() == "Before");
    CHECK(k.shown().month.text() == "2026-10");
    CHECK(k.work().gym().file().writable());
    CHECK(k.coach.asked.last().contains(QStringLiteral("Would change – October 2026.")));
    const auto list = listBackups(k.path);
    REQUIRE(list.ok());
    REQUIRE(list->size() == 2);
    const Backup safety = list->front();
    CHECK(safety.reason == BackupReason::Restore);
    CHECK(k.told().contains(pathOfText(safety.file.filename())));
    CHECK(k.seen().findChild<QTableView*>()->model()->rowCount() == 2);
    k.choose(safety.file);
    k.restore();
    CHECK(k.october() == "After");
    REQUIRE(setTitle(k.work().gym(), Month::parse("2026-10").value(), "Later").ok());
}

TEST_CASE("Nothing is restored when the coach thinks better of it") {
    Kept k;
    k.screen();
    k.coach.button = -1;
    Workspace* work = k.window.workspace();
    k.part<QPushButton>("restore").click();
    CHECK(k.window.workspace() == work);
    CHECK(k.october() == "After");
    CHECK(listBackups(k.path)->size() == 1);
}

TEST_CASE("A damaged backup says so and can't be restored; one that was changed says that") {
    Kept k;
    SECTION("damaged") {
        scribble(k.before.file);
        k.screen();
        CHECK(k.said().contains(QStringLiteral("It can't be restored.")));
        CHECK(k.said().contains(QStringLiteral("is damaged (")));
        CHECK_FALSE(k.part<QPushButton>("restore").isEnabled());
    }
    SECTION("changed") {
        {
            auto file = GymFile::open(k.before.file);
            REQUIRE(file.ok());
            auto open = OpenGym::over(std::move(file).value());
            REQUIRE(setTitle(**open, Month::parse("2026-09").value(), "Meddled").ok());
        }
        k.screen();
        CHECK(k.said().contains(QStringLiteral("not byte for byte as made")));
        CHECK(k.part<QPushButton>("restore").isEnabled());
    }
}

TEST_CASE("A gym file that somebody else writes to is not restored over, and stays open") {
    Kept k;
    const auto holder = GymFile::open(k.path);
    REQUIRE((*holder)->writable());
    k.screen();
    CHECK_FALSE(k.part<QPushButton>("back-up").isEnabled());
    k.restore();
    CHECK(k.told().contains(QStringLiteral("writes to it")));
    CHECK(k.told().contains(QStringLiteral("Nothing was changed")));
    REQUIRE(k.window.workspace());
    CHECK(k.october() == "After");
    CHECK(listBackups(k.path)->size() == 1);
}

TEST_CASE("A damaged gym file leads to its backups from the start page, and opens again") {
    Kept k;
    scribble(k.path);
    k.window.openFile(k.path);
    REQUIRE_FALSE(k.window.workspace());
    auto& way = k.part<QPushButton>("way-on");
    REQUIRE(way.isVisibleTo(&k.window));
    k.window.showStart();
    k.press(Qt::Key_Space);
    k.seen();
    CHECK(k.said().contains(QStringLiteral("The gym file can't be read now")));
    CHECK_FALSE(k.part<QPushButton>("back-up").isEnabled());
    k.restore();
    REQUIRE(k.window.workspace());
    CHECK(k.october() == "Before");
    CHECK(k.part<QPushButton>("back-up").isEnabled());
    CHECK(listBackups(k.path)->front().reason == BackupReason::Damaged);
}

TEST_CASE("Only a gym file, or a name that has backups, leads to them") {
    Kept k;
    const auto offered = [&](const fs::path& file) {
        k.window.openFile(file);
        return k.part<QPushButton>("way-on").isVisibleTo(&k.window);
    };
    CHECK_FALSE(offered(k.home.folder / "none.bwgym"));
    writeText(k.home.folder / "letter.txt", "Dear coach");
    CHECK_FALSE(offered(k.home.folder / "letter.txt"));
    fs::remove(k.path);
    CHECK(offered(k.path));
}

TEST_CASE("While a gym is open, the notice leads to the backups of a file that is refused") {
    Kept k;
    k.openSmallGym();
    scribble(k.path);
    k.window.openFile(k.path);
    auto& way = k.part<QToolButton>("way-on");
    REQUIRE(way.isVisibleTo(&k.window));
    way.click();
    k.seen();
    k.restore();
    CHECK(k.work().gym().file().path() == k.path);
    CHECK(k.october() == "Before");
    k.work().notice().tell({"The disk is full.", {}});
    CHECK_FALSE(k.part<QToolButton>("way-on").isVisibleTo(&k.window));
}

TEST_CASE("Where there is no backup the screen says what to do, and makes one when asked") {
    SECTION("of a gym that is not on a disk") {
        FrameDesk d;
        d.openSmallGym();
        d.window.actions().find(QStringLiteral("backups"))->trigger();
        auto& empty = d.part<QLabel>("no-backup");
        CHECK(empty.isVisibleTo(&d.window));
        CHECK(empty.text().contains(QStringLiteral("There is no backup")));
        CHECK_FALSE(d.part<QTableView>("backup-list").isVisibleTo(&d.window));
    }
    SECTION("of one that is") {
        Kept k;
        fs::remove_all(backupFolder(k.path));
        k.window.openFile(k.path);
        k.window.actions().find(QStringLiteral("backups"))->trigger();
        CHECK(k.part<QLabel>("no-backup").text().contains(QStringLiteral("Back up now")));
        k.part<QPushButton>("back-up").click();
        k.seen();
        CHECK(listBackups(k.path)->front().reason == BackupReason::Asked);
        CHECK(k.part<QTableView>("backup-list").isVisibleTo(&k.window));
        CHECK(k.told().contains(QStringLiteral("-asked-")));
    }
}

TEST_CASE("A copy of the gym goes where the coach says, for its owner alone, and over nothing") {
    Kept k;
    k.window.openFile(k.path);
    const auto saveTo = [&](const fs::path& file) {
        k.coach.save = pathOfText(file);
        k.window.actions().find(QStringLiteral("save-copy"))->trigger();
    };
    saveTo(k.home.folder / "copy");
    const fs::path copy = k.home.folder / "copy.bwgym";
    CHECK(k.notice().contains(QStringLiteral("copy.bwgym")));
    struct stat made {};
    REQUIRE(::stat(copy.c_str(), &made) == 0);
    CHECK((made.st_mode & 0777U) == 0600U);
    CHECK(lookIntoBackup(copy)->months == 3);
    CHECK(k.work().gym().file().path() == k.path);
    const std::string before = readText(copy);
    for (const fs::path& taken : {copy, k.path}) {
        saveTo(taken);
        CHECK(k.notice().contains(QStringLiteral("is there already")));
    }
    CHECK(readText(copy) == before);
    REQUIRE(setTitle(k.work().gym(), Month::parse("2026-10").value(), "Still open").ok());
}

} // namespace bw::test
