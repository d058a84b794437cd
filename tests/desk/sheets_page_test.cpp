// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets driven by keys; files and the printer are answered for by the test.
#include "desk/frame/prompts.hpp"
#include "desk/frame/work_line.hpp"
#include "desk/rail_gym.hpp"
#include "desk/sheets/sheet_choices.hpp"
#include "desk/sheets/sheet_printing.hpp"
#include "desk/sheets/sheet_report.hpp"
#include "desk/sheets/sheets_page.hpp"
#include "support/catch.hpp"

#include <QAccessible>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPrinter>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>
#include <QTimer>

using namespace bw;
using namespace bw::test;

namespace {
// A home of its own, and what the coach answers.
struct Answers {
    Answers() : prompts(bw::prompts()), printer(askPrinter()), home(qgetenv("BLOCKWRIGHT_HOME")) {
        qputenv("BLOCKWRIGHT_HOME", folder.path().string().c_str());
        bw::prompts().saveFile = [this](QWidget*, const QString&, const QString& suggested,
                                        const QString&) {
            asked << suggested;
            return save;
        };
        bw::prompts().tell = [this](QWidget*, const QString&, const QString& text) {
            told << text;
        };
        bw::prompts().openFolder = [this](QWidget*, const QString&, const QString& suggested) {
            asked << suggested;
            return folderAnswer;
        };
        askPrinter() = [this](QPrinter& p, QWidget*) {
            paper = p.pageLayout();
            p.setOutputFileName(printFile);
            return !printFile.isEmpty();
        };
    }
    ~Answers() {
        bw::prompts() = prompts;
        askPrinter() = printer;
        if (home.isNull())
            qunsetenv("BLOCKWRIGHT_HOME");
        else
            qputenv("BLOCKWRIGHT_HOME", home);
    }
    QString file(const char* name) { return QString::fromStdString((folder / name).string()); }

    TempFolder folder;
    Prompts prompts;
    std::function<bool(QPrinter&, QWidget*)> printer;
    QByteArray home;
    std::optional<QString> save, folderAnswer;
    QString printFile; // empty: no printing
    QPageLayout paper;
    QStringList asked, told;
};

struct Sheets : RailGym {
    explicit Sheets(Gym gym = railGymOf(20))
        : RailGym(std::move(gym)), page(*draft, work, nullptr) {
        page.resize(1000, 640);
        page.show();
        page.activateWindow();
        (void)QTest::qWaitForWindowActive(&page);
    }
    template <class W> W& part(const char* name) {
        W* found = page.findChild<W*>(QLatin1String(name));
        REQUIRE(found != nullptr);
        return *found;
    }
    QPushButton& button(const char* text) {
        for (auto* b : page.findChildren<QPushButton*>())
            if (b->text() == QString::fromUtf8(text)) return *b;
        throw std::runtime_error("no such button");
    }
    QCheckBox& box(const char* text) {
        for (auto* b : page.findChildren<QCheckBox*>())
            if (b->text() == QLatin1String(text)) return *b;
        throw std::runtime_error("no such box");
    }
    SheetPreview& preview() { return *page.findChild<SheetPreview*>(); }

    QWidget status;
    WorkLine work{&status, std::chrono::milliseconds{0}};
    SheetsPage page;
};

bool isPdf(const QString& file) {
    const std::string text = readText(file.toStdString());
    return text.size() > 1000 && text.rfind("%PDF", 0) == 0;
}
} // namespace

TEST_CASE("The preview shows the draft and follows it") {
    const Answers coach;
    Sheets desk;
    CHECK(desk.preview().accessibleName() ==
          "Preview of the September 2026: Low tide (wall sheet), page 1 of 1");
    const QImage before = desk.preview().grab().toImage();
    desk.draft->preview([](Block& b) { b.sections[1].groups[0].slots[0].dose = reps(3, 3); });
    CHECK(desk.preview().grab().toImage() != before);
    desk.draft->endPreview();
    CHECK(desk.preview().grab().toImage() == before);
}

TEST_CASE("Paper, turn and ink are chosen by key, and remembered") {
    const Answers coach;
    {
        Sheets desk;
        CHECK(desk.part<QComboBox>("paper").currentText() == "A4");
        QTest::keyClick(&desk.part<QComboBox>("paper"), Qt::Key_End);
        QTest::keyClick(&desk.part<QComboBox>("turned"), Qt::Key_Down);
        QTest::keyClick(&desk.box("&Black and white"), Qt::Key_Space);
    }
    const SheetOptions kept = rememberedOptions(SheetKind::Wall, {});
    CHECK(kept.paper == Paper::A3);
    CHECK(kept.orientation == Orientation::Landscape);
    CHECK(kept.blackAndWhite);
    CHECK_FALSE(kept.largePrint);
    Sheets again;
    CHECK(again.part<QComboBox>("paper").currentText() == "A3");
    CHECK(again.part<QComboBox>("turned").currentIndex() == 1);
    CHECK(again.box("&Black and white").isChecked());
}

TEST_CASE("The five sheets are chosen from the list by key, each with choices of its own") {
    const Answers coach;
    Gym gym = railGymOf(20);
    gym.put(Member{MemberId::parse("m-1").value(), "Marit Oyelaran", {}, true, {}});
    Sheets desk(gym);
    auto& list = *desk.page.findChild<QListWidget*>();
    REQUIRE(list.count() == 5);
    QStringList previews;
    for (int i = 0; i < 5; ++i) {
        previews << desk.preview().accessibleName().section('(', 1).section(')', 0, 0);
        CHECK(desk.part<QComboBox>("per-page").isVisible() == (i == 1));
        CHECK(desk.part<QComboBox>("unit").isVisible() == (i == 1 || i == 3));
        CHECK(desk.preview().pages() >= 1);
        QTest::keyClick(&list, Qt::Key_Down);
    }
    CHECK(previews ==
          QStringList{"wall sheet", "member cards", "coach notes", "kit list", "talk outline"});
    list.setCurrentRow(1);
    desk.part<QComboBox>("per-page").setCurrentIndex(1);
    desk.part<QComboBox>("unit").setCurrentIndex(1);
    list.setCurrentRow(0);
    CHECK(rememberedOptions(SheetKind::Cards, {}).cardsPerPage == 4);
    CHECK(rememberedOptions(SheetKind::Cards, {}).massUnit == MassUnit::Lb);
    CHECK(rememberedOptions(SheetKind::Kit, {}).massUnit == MassUnit::Kg);
}

TEST_CASE("Without an active member the cards say so, and the other sheets stand") {
    const Answers coach;
    Sheets desk;
    auto& list = *desk.page.findChild<QListWidget*>();
    list.setCurrentRow(1);
    CHECK(desk.preview().pages() == 0);
    CHECK(desk.preview().accessibleName().contains("No member is active"));
    list.setCurrentRow(2);
    CHECK(desk.preview().pages() == 1);
}

TEST_CASE("All sheets are kept in a folder at once") {
    Answers coach;
    Gym gym = railGymOf(20);
    gym.put(Member{MemberId::parse("m-1").value(), "Marit Oyelaran", {}, true, {}});
    Sheets desk(gym);
    QTest::keyClick(&desk.button("Ever&y sheet as PDF…"), Qt::Key_Space); // the coach says no
    CHECK(desk.part<QLabel>("told").text().isEmpty());
    coach.folderAnswer = coach.file("");
    QTest::keyClick(&desk.button("Ever&y sheet as PDF…"), Qt::Key_Space);
    for (const char* word : {"wall", "cards", "notes", "kit", "talk"})
        CHECK(isPdf(coach.file(("2026-09 Low tide - " + std::string(word) + ".pdf").c_str())));
    CHECK(desk.part<QLabel>("told").text().startsWith("All sheets are kept in"));
    coach.folderAnswer = coach.file("not there");
    QTest::keyClick(&desk.button("Ever&y sheet as PDF…"), Qt::Key_Space);
    CHECK(coach.told.size() == 1);
}

TEST_CASE("Writing every sheet shows in the status line and stops there") {
    Answers coach;
    Sheets desk;
    coach.folderAnswer = coach.file("");
    bool ran = false;
    QTimer::singleShot(0, [&] {
        ran = desk.work.running();
        desk.work.findChild<QPushButton*>()->click();
    });
    QTest::keyClick(&desk.button("Ever&y sheet as PDF…"), Qt::Key_Space);
    CHECK(ran);
    CHECK_FALSE(desk.work.running());
    CHECK(desk.part<QLabel>("told").text().startsWith("Stopped."));
    CHECK_FALSE(QFile::exists(coach.file("2026-09 Low tide - talk.pdf")));
}

TEST_CASE("Printing stops between two pages when it is told to") {
    Answers coach;
    coach.printFile = coach.file("printed.pdf");
    Layout three;
    three.paper = {210, 297};
    three.pages.resize(3);
    std::vector<int> asked;
    const auto stopped = printSheet(three, nullptr, [&](int done) {
        asked.push_back(done);
        return done < 1;
    });
    REQUIRE(stopped.ok());
    CHECK(*stopped == Printed::Stopped);
    CHECK(asked == std::vector{0, 1});
    const auto all = printSheet(three, nullptr, [](int) { return true; });
    REQUIRE(all.ok());
    CHECK(*all == Printed::All);
}

TEST_CASE("Until something is chosen, the paper is the gym's") {
    const Answers coach;
    Gym gym = railGymOf(20);
    gym.settings.paper = Paper::Letter;
    Sheets desk(gym);
    CHECK(desk.part<QComboBox>("paper").currentText() == "Letter");
}

TEST_CASE("A PDF is kept under a name that sorts by month, and its folder is remembered") {
    Answers coach;
    Sheets desk;
    coach.save = coach.file("wall"); // the ending is added
    QTest::keyClick(&desk.button("PD&F…"), Qt::Key_Space);
    REQUIRE(coach.asked.size() == 1);
    CHECK(coach.asked[0].endsWith("/2026-09 Low tide - wall.pdf"));
    CHECK(isPdf(coach.file("wall.pdf")));
    CHECK(desk.part<QLabel>("told").text() == "Kept as " + coach.file("wall.pdf") + ".");
    coach.save.reset();
    QTest::keyClick(&desk.button("PD&F…"), Qt::Key_Space);
    CHECK(coach.asked[1] == coach.file("2026-09 Low tide - wall.pdf"));
    CHECK(coach.told.isEmpty());
}

TEST_CASE("A PDF that can't be written is told plainly") {
    Answers coach;
    Sheets desk;
    coach.save = coach.file("not there/wall.pdf");
    QTest::keyClick(&desk.button("PD&F…"), Qt::Key_Space);
    REQUIRE(coach.told.size() == 1);
    CHECK(coach.told[0].contains("wall.pdf"));
    CHECK(desk.part<QLabel>("told").text().isEmpty());
}

TEST_CASE("The printer is set to the paper that was chosen, and prints when the coach agrees") {
    Answers coach;
    Sheets desk;
    desk.part<QComboBox>("paper").setCurrentText("A3");
    desk.part<QComboBox>("turned").setCurrentIndex(1);
    coach.printFile = coach.file("printed.pdf");
    QTest::keyClick(&desk.button("&Print…"), Qt::Key_Space);
    CHECK(coach.paper.pageSize().id() == QPageSize::A3);
    CHECK(coach.paper.orientation() == QPageLayout::Landscape);
    CHECK(isPdf(coach.printFile));
    CHECK(desk.part<QLabel>("told").text() == "Sent to the printer.");
    CHECK(coach.told.isEmpty());
}

TEST_CASE("Nothing is printed when the coach says no") {
    Answers coach;
    Sheets desk;
    QTest::keyClick(&desk.button("&Print…"), Qt::Key_Space);
    CHECK(coach.paper.pageSize().id() == QPageSize::A4); // was asked
    CHECK(desk.part<QLabel>("told").text().isEmpty());
    CHECK(coach.told.isEmpty());
}

TEST_CASE("A printer that takes nothing is told of") {
    Answers coach;
    Sheets desk;
    coach.printFile = coach.file("not there/printed.pdf");
    QTest::keyClick(&desk.button("&Print…"), Qt::Key_Space);
    REQUIRE(coach.told.size() == 1);
    CHECK(coach.told[0].startsWith("The printer did not take the sheet"));
}

TEST_CASE("The preview comes nearer, moves and fits again by key") {
    const Answers coach;
    Sheets desk;
    SheetPreview& preview = desk.preview();
    CHECK(preview.zoom() == 1);
    CHECK(preview.verticalScrollBar()->maximum() == 0);
    for (int i = 0; i < 3; ++i) QTest::keyClick(&preview, Qt::Key_Plus);
    CHECK(preview.zoom() > 1.9);
    REQUIRE(preview.verticalScrollBar()->maximum() > 0);
    QTest::keyClick(&preview, Qt::Key_Down);
    CHECK(preview.verticalScrollBar()->value() > 0);
    QTest::keyClick(&preview, Qt::Key_0);
    CHECK(preview.zoom() == 1);
    QTest::keyClick(&preview, Qt::Key_Minus); // never smaller than the page that fits
    CHECK(preview.zoom() == 1);
}

TEST_CASE("Pages turn by key, and a page that has gone is left") {
    const Answers coach;
    SheetPreview preview(nullptr);
    Layout three;
    three.paper = {210, 297};
    three.pages.resize(3);
    preview.show(three, QStringLiteral("wall sheet"));
    QTest::keyClick(&preview, Qt::Key_PageUp);
    CHECK(preview.page() == 0);
    for (int i = 0; i < 5; ++i) QTest::keyClick(&preview, Qt::Key_PageDown);
    CHECK(preview.page() == 2);
    CHECK(preview.accessibleName() == "Preview of the wall sheet, page 3 of 3");
    three.pages.resize(1);
    preview.show(three, QStringLiteral("wall sheet"));
    CHECK(preview.page() == 0);
}

TEST_CASE("What does not fit is named, with its page and what to do") {
    Layout layout;
    layout.paper = {210, 297};
    layout.margin = 10;
    layout.pages.resize(1);
    CHECK(reportOn(layout, {}).text == "One page.");
    CHECK_FALSE(reportOn(layout, {}).trouble);
    TextItem wide;
    wide.text = QStringLiteral("A very long name");
    wide.at = {20, 20};
    wide.box = {20, 15, 90, 6};
    wide.width = 90;
    wide.room = 60;
    layout.pages[0].items.push_back(wide);
    const SheetReport said = reportOn(layout, {});
    CHECK(said.trouble);
    CHECK(
        said.text.toStdString() ==
        "One page.\n■ Does not fit: “A very long name” (page 1). Take a larger paper, turn it, or "
        "shorten the text.");
    CHECK(reportOn(Layout{}, {}).text.isEmpty());
}

TEST_CASE("Without a month the page says what to do, and prints nothing") {
    Answers coach;
    Sheets desk{Gym{}};
    CHECK(desk.preview().accessibleName().contains("There is no month yet."));
    CHECK_FALSE(desk.button("&Print…").isEnabled());
    CHECK_FALSE(desk.button("PD&F…").isEnabled());
    desk.page.print();
    desk.page.savePdf();
    CHECK(coach.asked.isEmpty());
}

TEST_CASE("Every control of the page can be reached by Tab and has a name") {
    const Answers coach;
    Sheets desk;
    QStringList reached;
    for (QWidget* w = &desk.page; (w = w->nextInFocusChain()) != &desk.page;)
        if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) &&
            !w->focusProxy()) {
            QAccessibleInterface* told = QAccessible::queryAccessibleInterface(w);
            REQUIRE(told != nullptr);
            INFO(w->metaObject()->className());
            CHECK_FALSE(told->text(QAccessible::Name).isEmpty());
            reached << QLatin1String(w->metaObject()->className());
        }
    for (const char* wanted :
         {"QListWidget", "QComboBox", "QCheckBox", "QPushButton", "bw::SheetPreview"})
        CHECK(reached.contains(QLatin1String(wanted)));
}
