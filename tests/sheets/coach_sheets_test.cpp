// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/accepting.hpp"
#include "sheets/coach/notes_parts.hpp"
#include "sheets/coach_sheets.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/sheet_words.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
QString pageText(const SheetPage& page) {
    QStringList lines;
    for (const TextItem& t : textsOf(page)) lines << t.text;
    return lines.join(QLatin1Char(' '));
}
bool has(const QString& text, const char* part) { return text.contains(QString::fromUtf8(part)); }
} // namespace

TEST_CASE("the notes say cues, options, cautions and what is new against the month before") {
    const QString text = allText(layoutNotes(demoMonth().matter(), {}));
    for (const char* part :
         {"New against November 2026", "D2 Goblet reverse lunge: new to this gym",
          "C1 Kettlebell swing: last in October 2026", "Kettlebell front-rack squat (month 2)",
          "– Hinge, do not squat", "easier: Dead-stop swing", "harder: One-arm swing",
          "caution: Two big steps clear in front.", "“More snap than last winter.”",
          "For the coach. Not for the wall."})
        CHECK(has(text, part));
}

TEST_CASE("the notes keep accepted findings with their reasons") {
    DemoMonth month(demoMonth().gym);
    REQUIRE_FALSE(month.verdict.findings.empty());
    Block b = *month.block;
    const Finding finding = month.verdict.findings.front();
    b.accepted.push_back(makeAcceptance(b, finding, "Open day: the doors close late."));
    month.gym.put(b);
    const DemoMonth accepted(month.gym);
    const QString text = allText(layoutNotes(accepted.matter(), {}));
    CHECK(text.contains(QString::fromStdString(finding.text.english())));
    CHECK(has(text, "Accepted: Open day: the doors close late."));
}

TEST_CASE("flags stand on a page of their own, with initials and without the coach's notes") {
    const Layout layout = layoutNotes(demoMonth().matter(), {});
    const QString last = pageText(layout.pages.back());
    CHECK(has(last, "R. T. · avoid overhead"));
    CHECK(has(last, "C2: Standing chest throw"));
    CHECK(has(last, "a licensed professional decides"));
    CHECK_FALSE(has(last, "Power"));
    const QString all = allText(layout);
    for (const Member& m : demoMonth().gym.members) {
        CHECK_FALSE(all.contains(QString::fromStdString(m.name)));
        for (const Flag& flag : m.flags)
            CHECK_FALSE(all.contains(QString::fromStdString(flag.note)));
    }
}

TEST_CASE("initials grow where two active members share them") {
    Gym gym;
    const auto put = [&](const char* id, const char* name, bool active) {
        gym.put(Member{MemberId::parse(id).value(), name, {}, active, {}});
        return *gym.findMember(MemberId::parse(id).value());
    };
    const Member marit = put("m-1", "Marit Oyelaran", true),
                 mateus = put("m-2", "Mateus Okonjo", true);
    const Member greta = put("m-3", "Greta Haugen", true), old = put("m-4", "Gil Hansen", false);
    const Member twin = put("m-5", "Mateus Olsen", true);
    CHECK(discreetName(gym, marit) == "Marit O.");
    CHECK(discreetName(gym, mateus) == "Mateus Okonjo");
    CHECK(discreetName(gym, twin) == "Mateus Olsen");
    CHECK(discreetName(gym, greta) == "G. H.");
}

TEST_CASE("the kit list counts what a full class needs, and says what goes in turns") {
    const QString text = allText(layoutKit(demoMonth().matter(), {}));
    for (const char* part : {"12 people, over the stations", "3 × Trap bar", "12 × Kettlebell",
                             "in turns; 6 would be wanted", "2 × Sled lane", "6 start here",
                             "12, 16, 20, 24 kg", "× Dumbbell", "free floor"})
        CHECK(has(text, part));
}

TEST_CASE("the kit list says what goes away, what stays and what is shared") {
    const Layout layout = layoutKit(demoMonth().matter(), {});
    const QString text = allText(layout);
    for (const char* part : {"Clear away 12 Floor mat 12 Long band Put out 12 Kettlebell",
                             "12 Kettlebell already out 6 Dumbbell", "shared with F",
                             "shared with G", "all start here", "then all here"})
        CHECK(has(text, part));
    // in the rooms bold comes out and plain stands already
    const auto weightOf = [&](const char* words, int nth) {
        for (const TextItem& t : textsOf(layout))
            if (t.text == QString::fromUtf8(words) && nth-- == 0) return t.type.weight;
        throw std::runtime_error(words);
    };
    CHECK(weightOf("12 × Kettlebell", 0) == Weight::Bold); // of Power
    CHECK(weightOf("12 × Kettlebell", 1) == Weight::Book); // of Strength, right after
    CHECK(weightOf("6 × Dumbbell", 0) == Weight::Bold);
}

TEST_CASE("a room has a box for each station, of one width, in the order people go round") {
    const Layout layout = layoutKit(demoMonth().matter(), {});
    std::vector<QRectF> boxes;
    for (const SheetPage& page : layout.pages)
        for (const Item& item : page.items)
            if (const auto* fill = std::get_if<FillItem>(&item))
                boxes.push_back(fill->points.boundingRect());
    REQUIRE(boxes.size() == 10);                           // A to J
    for (const std::size_t first : {0U, 3U, 5U, 7U, 8U}) { // A B, D E, F G, H I, I J
        CHECK(boxes[first].width() == Approx(boxes[first + 1].width()));
        CHECK(boxes[first].top() == Approx(boxes[first + 1].top()));
        CHECK(boxes[first].right() < boxes[first + 1].left());
    }
}

TEST_CASE("the talk begins with what is new, then takes the weeks in turn, with the caution") {
    const Layout layout = layoutTalk(demoMonth().matter(), {});
    const QString text = allText(layout);
    qsizetype before = 0;
    for (const char* part :
         {"What this month is for", "New: Goblet reverse lunge (D2)", "New: Rope sled pull (I1)",
          "Back again", "What stays", "Week 1: learn (1–7 December 2026)", "Week 2: build",
          "Week 3: build", "Week 4: challenge", "Before you start", "Questions"}) {
        const qsizetype at = text.indexOf(QString::fromUtf8(part));
        CAPTURE(part);
        CHECK(at > before);
        before = at;
    }
    CHECK(has(text, "About 10 minutes"));
    CHECK(text.contains(cautionText()));
}

TEST_CASE("every hand-held sheet has gym, block, day and page at the foot of every page") {
    SheetOptions options;
    options.printedOn = Date::of(2026, 11, 25).value();
    for (const SheetKind kind :
         {SheetKind::Wall, SheetKind::Notes, SheetKind::Kit, SheetKind::Talk}) {
        const Layout layout = layoutSheet(kind, demoMonth().matter(), options);
        for (std::size_t n = 0; n < layout.pages.size(); ++n) {
            const QString text = pageText(layout.pages[n]);
            CAPTURE(std::string(sheetWord(kind)), n);
            CHECK(has(
                text,
                "Saltmarsh Boathouse · December 2026 · Harbour lights · printed 25 November 2026"));
            CHECK(text.contains(
                bw::pageText(static_cast<int>(n) + 1, static_cast<int>(layout.pages.size()))));
        }
    }
}

TEST_CASE("what members read carries the caution") {
    for (const SheetKind kind : {SheetKind::Wall, SheetKind::Cards, SheetKind::Talk}) {
        const Layout layout = layoutSheet(kind, demoMonth().matter(), {});
        for (const SheetPage& page : layout.pages)
            CHECK(pageText(page).contains("Members should be screened"));
    }
}

TEST_CASE("the coach's sheets are found again in their PDFs") {
    const TempFolder folder;
    for (const SheetKind kind : {SheetKind::Notes, SheetKind::Kit, SheetKind::Talk}) {
        const QString path = QString::fromStdString((folder / "sheet.pdf").string());
        const Layout layout = layoutSheet(kind, demoMonth().matter(), {});
        REQUIRE(writePdf(path, layout).ok());
        const QString text = outputOf("pdftotext", {"-raw", path, "-"});
        if (text.isEmpty()) return;
        for (const TextItem& item : textsOf(layout)) CHECK(text.contains(item.text));
        CHECK(outputOf("pdfinfo", {path}).contains(sheetTitle(kind, *demoMonth().block)));
    }
}

TEST_CASE("a heading never stands alone at the end of a page") {
    for (const SheetOptions& options : everyPaper("DejaVu Sans"))
        for (const SheetKind kind : {SheetKind::Notes, SheetKind::Kit, SheetKind::Talk})
            for (const SheetPage& page : layoutSheet(kind, demoMonth().matter(), options).pages) {
                double lowest = 0, head = 0;
                for (const TextItem& t : textsOf(page)) {
                    const bool foot = t.type.em < 2.8 * paperScale(options);
                    if (!foot) lowest = std::max(lowest, t.at.y());
                    if (t.rank == Rank::Head) head = std::max(head, t.at.y());
                }
                CHECK(head < lowest);
            }
}
