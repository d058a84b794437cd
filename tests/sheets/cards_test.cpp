// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/target.hpp"
#include "sheets/card_sheet.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/sheet_words.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QFileInfo>

using namespace bw;
using namespace bw::test;

namespace {
// A gym of one pair: a squat with a pair of bells, a press with a bar. Five repetitions of 40 kg
// with two in reserve were done the month before.
DemoMonth pairGym(std::vector<Flag> flags = {}) {
    Gym gym;
    gym.settings.name = "Saltmarsh Boathouse";
    KitItem bells{kit("kettlebell"), "Kettlebell", 8, Claim::Group, {}, {}, {}, {}};
    for (const int kg : {12, 16, 20, 24}) bells.loads[Mass::fromKg(kg).value()] = 2;
    KitItem bar{kit("barbell"), "Barbell", 2, Claim::Group, {}, Mass::fromKg(20).value(), {}, {}};
    for (const double kg : {10.0, 5.0, 2.5, 1.25}) bar.plates[Mass::fromKg(kg).value()] = 4;
    gym.put(bells);
    gym.put(bar);
    Exercise squat = exercise("front-rack-squat", Pattern::Squat);
    squat.name = "Front-rack squat";
    squat.load = LoadId::parse("implement-pair").value();
    squat.needs = {{{kit("kettlebell"), 2, {}}}};
    (void)squat.demands.set(Demand::Knee, 3);
    squat.easier = {ex("box-squat")};
    squat.roles = {RoleId::parse("strength-heavy").value()};
    Exercise box = exercise("box-squat", Pattern::Squat);
    box.name = "Box squat";
    box.roles = squat.roles;
    Exercise press = exercise("bench-press", Pattern::HorizontalPush);
    press.name = "Bench press";
    press.load = LoadId::parse("barbell").value();
    press.needs = {{{kit("barbell"), 1, {}}}};
    for (const Exercise& e : {squat, box, press}) gym.shelf.put(e);
    Block b = block("2026-09",
                    {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 90),
                                                           {slot("front-rack-squat", reps(5, 5)),
                                                            slot("bench-press", reps(5, 5))})})});
    b.title = "Low tide";
    gym.put(b);
    gym.put(Member{MemberId::parse("m-1").value(), "Marit Oyelaran", std::move(flags), true, {}});
    gym.put(Member{MemberId::parse("m-2").value(), "Dario Fenwick", {}, false, {}});
    std::vector<LiftResult> results;
    for (const char* id : {"front-rack-squat", "bench-press"})
        results.push_back({MemberId::parse("m-1").value(),
                           Date::of(2026, 8, 20).value(),
                           ex(id),
                           1,
                           5,
                           Rir::of(2).value(),
                           Mass::fromKg(40).value(),
                           {}});
    return DemoMonth(std::move(gym), std::move(results));
}
} // namespace

TEST_CASE("a card has the loads of the month's targets, and what goes on the bar") {
    const DemoMonth month = pairGym();
    const Layout layout = layoutCards(month.matter(), {});
    const auto targets =
        MonthTargets(month.gym, *month.block).of(*month.ledger, month.gym.members[0]);
    QStringList bold;
    for (const TextItem& t : textsOf(layout))
        if (t.rank == Rank::Key && t.type.weight == Weight::Bold) bold << t.text;
    REQUIRE(targets.size() == 2);
    for (const SlotTargets& t : targets)
        for (const WeekTarget& w : t.weeks) {
            REQUIRE(w.target.loading);
            const double kg = w.target.loading->total.kg();
            CHECK(bold.removeOne(QStringLiteral("%1 kg").arg(kg)));
        }
    CHECK(bold.isEmpty()); // nothing else is a load
    const QString text = allText(layout);
    CHECK(text.contains("2 × 20 kg"));
    CHECK(text.contains("10/side"));
}

TEST_CASE("a card is for an active member, with the month, its weeks, caution, gym and number") {
    SheetOptions options;
    options.printedOn = Date::of(2026, 8, 28).value();
    const QString text = allText(layoutCards(pairGym().matter(), options));
    for (const char* part :
         {"Marit Oyelaran", "September 2026 · Low tide", "Week 1", "1–7, learn", "Week 4",
          "22–30, challenge", "1 in reserve", "Strength, rest 60–90 s", "2 rounds", "2–3 rounds",
          "card 1 of 1",
          "Saltmarsh Boathouse · September 2026 · Low tide · printed 28 August 2026"})
        CHECK(text.contains(QString::fromUtf8(part)));
    CHECK_FALSE(text.contains("Dario"));
    CHECK(text.simplified().contains(cautionText()));
}

TEST_CASE("a flag gives the substitute on the card and says nothing of the flag") {
    const QString text = allText(
        layoutCards(pairGym({{Demand::Knee, FlagLevel::Limit, "Left knee.", {}}}).matter(), {}));
    CHECK(text.contains("Box squat"));
    CHECK(text.contains("instead of Front-rack squat"));
    CHECK_FALSE(text.contains("knee", Qt::CaseInsensitive));
}

TEST_CASE("where nothing fits a flag, the card says to leave the exercise out") {
    DemoMonth month = pairGym({{Demand::Knee, FlagLevel::Avoid, {}, {}}});
    Exercise box = *month.gym.shelf.find(ex("box-squat"));
    (void)box.demands.set(Demand::Knee, 1);
    month.gym.shelf.put(box);
    CHECK(allText(layoutCards(month.matter(), {})).contains("leave it out; ask your coach"));
}

TEST_CASE("loads are said in pounds when pounds are asked for") {
    SheetOptions options;
    options.massUnit = MassUnit::Lb;
    const QString text = allText(layoutCards(pairGym().matter(), options));
    CHECK(text.contains("88.18 lb")); // 40 kg; 1 lb is 0.45359237 kg (NIST SP 811)
    CHECK_FALSE(text.contains(" kg"));
}

TEST_CASE("every week of every exercise has a blank to write in, and a warm-up has none") {
    DemoMonth month = pairGym();
    const auto blanks = [](const Layout& layout) {
        int n = 0;
        for (const Item& item : layout.pages[0].items)
            if (const auto* stroke = std::get_if<StrokeItem>(&item))
                n += stroke->ink == Ink::Hair && stroke->points.boundingRect().height() == 0 &&
                     stroke->points.first().y() > 20 && stroke->points.first().y() < 140;
        return n;
    };
    SheetOptions four; // cut marks stand elsewhere
    CHECK(blanks(layoutCards(month.matter(), four)) == 8);
    Block warm = *month.block;
    warm.sections[0].kind = SectionKind::WarmUp;
    month.block = std::make_shared<const Block>(warm);
    CHECK(blanks(layoutCards(month.matter(), four)) == 0);
}

TEST_CASE("two or four cards stand on a page, and a page of one when no more fit") {
    DemoMonth month = pairGym();
    for (int i = 3; i < 11; ++i)
        month.gym.put(
            Member{MemberId::parse("m-" + std::to_string(i)).value(), "Name", {}, true, {}});
    SheetOptions options;
    CHECK(layoutCards(month.matter(), options).pages.size() == 5); // of nine members
    options.cardsPerPage = 4;
    CHECK(layoutCards(month.matter(), options).pages.size() == 3);
    CHECK(layoutCards(month.matter(), options).cardsPerPage == 4);
    Block longer = *month.block;
    for (int i = 0; i < 8; ++i) longer.sections.push_back(longer.sections[0]);
    month.block = std::make_shared<const Block>(longer);
    const Layout alone = layoutCards(month.matter(), options);
    CHECK(alone.cardsPerPage == 1);
    CHECK(alone.pages.size() == 9);
    CHECK(overflowText(alone) == "");
}

TEST_CASE("a card longer than a page goes on, under its member's name") {
    DemoMonth month = pairGym();
    Block longer = *month.block;
    for (int i = 0; i < 18; ++i) longer.sections.push_back(longer.sections[0]);
    month.block = std::make_shared<const Block>(longer);
    const Layout layout = layoutCards(month.matter(), {});
    REQUIRE(layout.pages.size() == 2);
    for (const SheetPage& page : layout.pages) {
        QStringList lines;
        for (const TextItem& t : textsOf(page)) lines << t.text;
        CHECK(lines.contains("Marit Oyelaran"));
    }
    CHECK(allText(layout).contains("continued, side 2"));
    CHECK(overflowText(layout) == "");
}

TEST_CASE("laying out cards can be stopped") {
    int calls = 0;
    const Layout layout = layoutCards(demoMonth().matter(), {}, [&](int done, int total) {
        CHECK(done < total);
        return ++calls < 30; // 24 cards are written, then set
    });
    CHECK(calls == 30);
    CHECK(layout.pages.empty());
}

TEST_CASE("a gym without active members has no cards") {
    DemoMonth month = pairGym();
    month.gym.members.clear();
    CHECK(layoutCards(month.matter(), {}).pages.empty());
}

TEST_CASE(
    "the demo's cards can be read back from their PDF, with embedded fonts and little weight") {
    const TempFolder folder;
    const QString path = QString::fromStdString((folder / "cards.pdf").string());
    const Layout layout = layoutCards(demoMonth().matter(), {});
    REQUIRE(layout.cardsPerPage == 2);
    REQUIRE(writePdf(path, layout).ok());
    CHECK(QFileInfo(path).size() < (2 << 20));
    const QString text = outputOf("pdftotext", {path, "-"});
    if (text.isEmpty()) return;
    for (const Member& m : demoMonth().gym.members)
        CHECK(text.contains(QString::fromStdString(m.name)) == m.active);
    for (const QString& line : outputOf("pdffonts", {path}).split('\n', Qt::SkipEmptyParts).mid(2))
        CHECK(line.simplified().split(' ').size() >= 5);
    CHECK(outputOf("pdffonts", {path}).contains("DejaVuSans"));
    CHECK_FALSE(outputOf("pdffonts", {path}).contains(" no  no")); // embedded, subset
}
