// SPDX-License-Identifier: GPL-3.0-or-later
// Help within the program: what is in it, and that F1 leads to it from everywhere.
#include "blockwright/rules/rule.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/handbook/handbook.hpp"
#include "desk/handbook/handbook_pictures.hpp"
#include "desk/handbook/handbook_search.hpp"
#include "desk/handbook/handbook_text.hpp"
#include "desk/handbook/handbook_view.hpp"
#include "desk/handbook/handbook_window.hpp"
#include "desk/propose/propose_strip.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <QTextDocument>
#include <QTreeWidget>

#include <set>

namespace bw::test {

namespace {
// Of all fragments: the places of links, the names of pictures.
struct Woven {
    QStringList links, pictures;
};
Woven woven(const QTextDocument& text) {
    Woven found;
    for (QTextBlock b = text.begin(); b.isValid(); b = b.next())
        for (auto it = b.begin(); !it.atEnd(); ++it) {
            const QTextCharFormat format = it.fragment().charFormat();
            if (format.isAnchor()) found.links << format.anchorHref();
            if (format.isImageFormat()) found.pictures << format.toImageFormat().name();
        }
    return found;
}

HandbookWindow* handbookOnShow() {
    for (QWidget* w : QApplication::topLevelWidgets())
        if (auto* handbook = qobject_cast<HandbookWindow*>(w); handbook && w->isVisible())
            return handbook;
    return nullptr;
}

// What F1 shows from where the coach is; the Handbook is closed again.
std::string helpHere(FrameDesk& d) {
    d.window.activateWindow();
    (void)QTest::qWaitForWindowActive(&d.window);
    d.press(Qt::Key_F1);
    HandbookWindow* handbook = handbookOnShow();
    if (!handbook) return "nothing";
    const std::string place = handbook->place().toStdString();
    handbook->close();
    d.window.activateWindow();
    (void)QTest::qWaitForWindowActive(&d.window);
    return place;
}

struct OpenHandbook {
    FrameDesk d;
    HandbookWindow& window = openHandbook(&d.window, QStringLiteral("guide.md#the-bench"));
    HandbookView& page = *window.findChild<HandbookView*>();
    QLineEdit& words = *window.findChild<QLineEdit*>(QStringLiteral("handbook-words"));
    QListWidget& found = *window.findChild<QListWidget*>(QStringLiteral("handbook-found"));
    OpenHandbook() { (void)QTest::qWaitForWindowActive(&window); }
    [[nodiscard]] std::string place() const { return window.place().toStdString(); }
};
} // namespace

TEST_CASE("Every document of the Handbook is in the program, in parts that have a title") {
    std::set<QString> files, places;
    for (const HandbookPage& page : handbookPages()) {
        files.insert(page.file);
        for (int h = 0; h < page.headings.size(); ++h) {
            INFO(page.place(h).toStdString());
            CHECK_FALSE(page.headings[h].title.isEmpty());
            CHECK(places.insert(page.place(h)).second);
        }
    }
    CHECK(files == std::set<QString>{"balance.md", "first-month.md", "floor.md", "gym-file.md",
                                     "guide.md", "ledger.md", "proposals.md", "rules.md",
                                     "sheets.md"});
    CHECK(handbookPages().front().file == "first-month.md");
}

TEST_CASE("Every link in the Handbook leads to a part of it, and every picture is there") {
    std::size_t links = 0, pictures = 0;
    for (const HandbookPage& page : handbookPages()) {
        QTextDocument text;
        setHandbookPage(text, page);
        const Woven found = woven(text);
        for (const QString& link : found.links) {
            INFO(page.place(0).toStdString() << " -> " << link.toStdString());
            CHECK(handbookSpot(link).found());
        }
        for (const QString& name : found.pictures) {
            INFO(name.toStdString());
            CHECK(HandbookPictures::dotsOf(name).isValid());
        }
        // Whatever the document says of its own or another page is kept a link.
        static const QRegularExpression inner(QStringLiteral(R"(\]\((#[^)]*)\))"));
        for (auto it = inner.globalMatch(page.markdown()); it.hasNext();) {
            const QString place = handbookPlace(page.file, it.next().captured(1));
            INFO(place.toStdString());
            CHECK(found.links.contains(place));
        }
        for (int h = 0; h < page.headings.size(); ++h) CHECK(blockOfHeading(text, h) >= 0);
        CHECK(blockOfHeading(text, static_cast<int>(page.headings.size())) == -1);
        links += static_cast<std::size_t>(found.links.size());
        pictures += static_cast<std::size_t>(found.pictures.size());
    }
    CHECK(links > 50);
    CHECK(pictures >= 20);
}

TEST_CASE("A document is cut at its headings; code and what is for others make none") {
    const auto headings = handbookHeadings(QStringLiteral("# One\na\n```\n# no\n```\n"
                                                          "<!-- not in the handbook -->\n"
                                                          "## Two\nb\n### Below two\nc\n"
                                                          "## The *third*: `x`!\nd\n"));
    REQUIRE(headings.size() == 2);
    CHECK(headings[0].title == "One");
    CHECK(headings[0].text.contains("# no"));
    CHECK_FALSE(headings[0].text.contains("handbook"));
    CHECK(headings[1].title == "The third: x!");
    CHECK(headings[1].anchor == "the-third-x");
    CHECK(headings[1].text == "d\n\n");
    CHECK_FALSE(handbookSpot(QStringLiteral("floor.md#draws")).found());
    CHECK(handbookSpot(QStringLiteral("floor.md#answers")).found());
}

TEST_CASE("A link out of the Handbook is words with its address, and leads nowhere") {
    const HandbookPage page{
        nullptr, "guide.md",
        handbookHeadings(QStringLiteral("# One\nSee [a paper](https://example.invalid/p) and "
                                        "[the bundle](bundle.md), <https://example.invalid>.\n"))};
    QTextDocument text;
    setHandbookPage(text, page);
    CHECK(woven(text).links.isEmpty());
    CHECK(text.toPlainText().contains("a paper (https://example.invalid/p) and the bundle "
                                      "(docs/bundle.md), https://example.invalid."));
}

TEST_CASE("F1 opens the Handbook at the place where the coach is") {
    FrameDesk d;
    CHECK(helpHere(d) == "first-month.md#first-month-in-ten-minutes");
    d.openSmallGym();
    const std::pair<Qt::Key, const char*> places[] = {
        {Qt::Key_1, "guide.md#the-bench"},   {Qt::Key_2, "guide.md#the-floor"},
        {Qt::Key_3, "guide.md#the-stair"},   {Qt::Key_4, "guide.md#the-shelf"},
        {Qt::Key_5, "guide.md#the-almanac"}, {Qt::Key_6, "guide.md#the-ledger"},
        {Qt::Key_7, "guide.md#the-sheets"}};
    for (const auto& [key, place] : places) {
        d.press(key, Qt::AltModifier);
        CHECK(helpHere(d) == place);
        d.part<QWidget>("block-title").setFocus(); // the top line is of the place below it
        CHECK(helpHere(d) == place);
    }
    d.press(Qt::Key_F9);
    CHECK(helpHere(d) == "guide.md#findings");
    d.press(Qt::Key_F9, Qt::ShiftModifier);
    CHECK(helpHere(d) == "guide.md#the-beam");
    d.press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(helpHere(d) == "guide.md#house-limits");
}

TEST_CASE("F1 beside a proposal tells of proposals, and the answer stays") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_F7, Qt::ControlModifier);
    REQUIRE(d.work().bench().proposals().isVisible());
    CHECK(helpHere(d) == "guide.md#proposals");
    CHECK(d.work().bench().proposals().isVisible());
}

TEST_CASE("Every rule of the rule book has its part, and R on a finding opens it") {
    for (const Rule& rule : ruleBook()) {
        INFO(rule.id);
        CHECK(handbookSpot(QStringLiteral("rules.md#") + plain(rule.id)).found());
    }
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_F8);
    d.press(Qt::Key_F9);
    const Finding* finding = d.work().bench().findings().current();
    REQUIRE(finding);
    d.press(Qt::Key_R);
    REQUIRE(handbookOnShow());
    CHECK(handbookOnShow()->place() == QStringLiteral("rules.md#") + plain(finding->rule));
}

TEST_CASE("The Handbook finds the parts that have all words, headings first") {
    CHECK(searchHandbook(QStringLiteral("  ")).isEmpty());
    CHECK(searchHandbook(QStringLiteral("zebra")).isEmpty());
    const auto hits = searchHandbook(QStringLiteral("Minute RAIL"));
    REQUIRE(hits.size() > 1);
    const HandbookPage& first = handbookPages()[hits.front().spot.page];
    CHECK(first.headings[hits.front().spot.heading].title == "The Minute rail");
    for (const HandbookHit& hit : hits) {
        const HandbookHeading& there = handbookPages()[hit.spot.page].headings[hit.spot.heading];
        CHECK((there.title + there.text).toLower().contains("rail"));
        CHECK_FALSE(hit.line.contains(u'`'));
    }
    // A word is meant from its beginning: "rest" is not in "crest" or "interest".
    for (const HandbookHit& hit : searchHandbook(QStringLiteral("ound")))
        FAIL(hit.line.toStdString());
}

TEST_CASE("Words typed on a page are looked for, and found by keys alone") {
    OpenHandbook h;
    QTest::keyClick(&h.page, 's');
    QTest::keyClicks(&h.words, "tair drag");
    CHECK(h.words.text() == "stair drag");
    CHECK(h.words.hasFocus());
    REQUIRE(h.found.count() > 0);
    CHECK(h.place() == "guide.md#the-stair");
    CHECK(h.page.marked() > 2);
    QTest::keyClick(&h.words, Qt::Key_Down);
    CHECK(h.found.hasFocus());
    QTest::keyClick(&h.window, Qt::Key_Escape);
    CHECK(h.words.text().isEmpty());
    CHECK(h.page.marked() == 0);
    CHECK(h.page.hasFocus());
    QTest::keyClick(&h.window, Qt::Key_Left, Qt::AltModifier);
    CHECK(h.place() == "guide.md#the-bench");
    QTest::keyClick(&h.window, Qt::Key_Escape);
    CHECK_FALSE(h.window.isVisible());
}

TEST_CASE("A link leads on, Alt+Left back to the same line, and the contents follow") {
    OpenHandbook h;
    h.page.verticalScrollBar()->setValue(200);
    Q_EMIT h.page.anchorClicked(QUrl(QStringLiteral("rules.md#push-pull")));
    CHECK(h.place() == "rules.md#push-pull");
    auto& contents = *h.window.findChild<QTreeWidget*>(QStringLiteral("handbook-contents"));
    REQUIRE(contents.currentItem());
    CHECK(contents.currentItem()->text(0) == "push-pull");
    CHECK(h.page.verticalScrollBar()->value() > 1000); // it is one of the later rules
    QTest::keyClick(&h.window, Qt::Key_Left, Qt::AltModifier);
    CHECK(h.place() == "guide.md#the-bench");
    CHECK(h.page.verticalScrollBar()->value() == 200);
    QTest::keyClick(&h.window, Qt::Key_Right, Qt::AltModifier);
    CHECK(h.place() == "rules.md#push-pull");
    h.window.goTo(QStringLiteral("nowhere.md#at-all"));
    CHECK(h.place() == "rules.md#push-pull");
}

TEST_CASE("F6 goes through words, contents and page, and each is walked by keys") {
    OpenHandbook h;
    auto& contents = *h.window.findChild<QTreeWidget*>(QStringLiteral("handbook-contents"));
    QTest::keyClick(&h.window, Qt::Key_F6);
    CHECK(h.words.hasFocus());
    QTest::keyClick(&h.window, Qt::Key_F6);
    CHECK(contents.hasFocus());
    QTest::keyClick(&contents, Qt::Key_Down);
    CHECK(h.place() == "guide.md#writing-the-sheet");
    QTest::keyClick(&h.window, Qt::Key_F6);
    CHECK(h.page.hasFocus());
}

TEST_CASE("No picture is wider than the text, nor is a page wider than the window") {
    OpenHandbook h;
    for (const int width : {700, 1040, 1900}) {
        h.window.resize(width, 700);
        for (const HandbookPage& page : handbookPages()) {
            h.window.goTo(page.place(0));
            INFO(width << " " << page.place(0).toStdString());
            CHECK(h.page.horizontalScrollBar()->maximum() == 0);
        }
    }
}

TEST_CASE("A picture whose dots nearly fit is drawn dot for dot") {
    HandbookPictures pictures;
    QTextImageFormat bench;
    bench.setName(QStringLiteral("pictures/bench.png"));
    REQUIRE(HandbookPictures::dotsOf(bench.name()).width() == 1280);
    pictures.setColumn(700, 1);
    CHECK(pictures.intrinsicSize(nullptr, 0, bench).width() == Approx(700));
    pictures.setColumn(700, 2);
    CHECK(pictures.intrinsicSize(nullptr, 0, bench).width() == Approx(640));
    pictures.setColumn(2000, 1);
    CHECK(pictures.intrinsicSize(nullptr, 0, bench).width() <= 1280);
}

TEST_CASE("The page changes its inks with the colours of the program, and stays where it is") {
    OpenHandbook h;
    const auto headInk = [&] {
        const QTextBlock head = h.page.document()->begin();
        return head.begin().fragment().charFormat().foreground().color();
    };
    h.d.window.setTheme(Theme::Light);
    h.d.settle();
    h.page.verticalScrollBar()->setValue(150);
    CHECK(headInk() == inksOf(false).ink);
    h.d.window.setTheme(Theme::Dark);
    h.d.settle();
    CHECK(headInk() == inksOf(true).ink);
    CHECK(h.page.verticalScrollBar()->value() == 150);
    const QImage seen = h.page.viewport()->grab().toImage();
    CHECK(seen.pixelColor(3, seen.height() - 3) == inksOf(true).paper);
    h.d.window.setTheme(Theme::System);
}

TEST_CASE("The Handbook goes with the program's window and remembers its size") {
    {
        OpenHandbook h;
        h.window.resize(900, 600);
        h.window.close();
        HandbookWindow& again = openHandbook(&h.d.window, QStringLiteral("guide.md#care"));
        CHECK(&again == &h.window); // there is one
        CHECK(again.size() == QSize(900, 600));
    }
    CHECK(handbookOnShow() == nullptr);
}

} // namespace bw::test
