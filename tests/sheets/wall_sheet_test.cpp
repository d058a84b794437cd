// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/legibility.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/sheet_words.hpp"
#include "sheets/wall_sheet.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>

using namespace bw;
using namespace bw::test;

namespace {
Layout demo(const SheetOptions& options = {}) {
    return layoutWall(saltmarsh(), lowTide(), options);
}

// The block, with only the group that is given.
Layout only(Group group, const SheetOptions& options = {}) {
    Gym gym = saltmarsh();
    return layoutWall(gym, block("2026-09", {section(SectionKind::Strength, {std::move(group)})}),
                      options);
}

int pageOf(const Layout& layout, const QString& label) {
    for (std::size_t n = 0; n < layout.pages.size(); ++n)
        if (labelsOf(layout.pages[n]).contains(label)) return static_cast<int>(n);
    return -1;
}
} // namespace

TEST_CASE("the wall sheet shows every row of the month once, in order") {
    const Layout layout = demo();
    QStringList labels;
    for (const SheetPage& page : layout.pages) labels += labelsOf(page);
    CHECK(labels.join(' ').toStdString() == "A1 A2 B1 B2 C1 C2 D1 D2 E1 E2 F1 F2 G1 G2");
    const QString text = allText(layout);
    for (const char* name :
         {"Ankle rock at wall", "Goblet squat", "Single-arm dumbbell row", "Air bike"})
        CHECK(text.contains(QString::fromUtf8(name)));
    for (const char* dose : {"8/side", "12–15", "8–10 cal", "15 m"})
        CHECK(text.contains(QString::fromUtf8(dose)));
    CHECK(text.contains("31X0"));
    CHECK(text.contains("1–3"));
}

TEST_CASE("rounds and rest stand beside the rows that they hold together") {
    const Layout layout = demo();
    const auto texts = textsOf(layout.pages[0]);
    const auto rounds = std::find_if(texts.begin(), texts.end(),
                                     [](const TextItem& t) { return t.text == u"3–4 rounds"; });
    REQUIRE(rounds != texts.end());
    double top = 0, bottom = 0;
    for (const TextItem& t : texts) {
        if (t.text == u"C1") top = t.box.top();
        if (t.text == u"C2") bottom = t.box.bottom();
    }
    CHECK(rounds->box.top() > top);
    CHECK(rounds->box.bottom() < bottom + 10);
    CHECK(allText(layout).contains("no rest"));
    CHECK(allText(layout).contains("rest 60 s"));
}

TEST_CASE("the wall sheet names the month, its format, the stair and the minutes") {
    const QString text = allText(demo());
    for (const char* part :
         {"September 2026", "Low tide", "Heavy-then-long", "Week 1", "Week 4", "learn", "challenge",
          "Warm-up", "Power", "Strength", "Finisher", "17–21 min"})
        CHECK(text.contains(QString::fromUtf8(part)));
}

TEST_CASE("every page of the wall sheet has the caution, the gym and its number at the foot") {
    const Layout layout = demo();
    REQUIRE(layout.pages.size() == 2);
    for (int n = 0; n < 2; ++n) {
        const auto texts = textsOf(layout.pages[static_cast<std::size_t>(n)]);
        QStringList lines;
        for (const TextItem& t : texts) lines << t.text;
        const QString all = lines.join(' ');
        CHECK(all.contains(cautionText()));
        CHECK(all.contains("Saltmarsh Boathouse · September 2026 · Low tide"));
        CHECK(all.contains(pageText(n + 1, 2)));
    }
}

TEST_CASE("easier and harder stand below a name when they cost it little") {
    const QString text = allText(demo());
    CHECK(text.contains("easier: Goblet box squat"));
    CHECK(text.contains("harder: Barbell front squat"));
}

TEST_CASE("an open slot is a line to write on") {
    const Layout layout = only(group(rounds(2, 2), secondsRange(0, 0), {Slot{}}));
    CHECK(labelsOf(layout.pages[0]) == QStringList{"A1"});
    CHECK(allText(layout).contains("coach’s choice"));
    CHECK_FALSE(allText(demo()).contains("coach’s choice coach’s choice"));
}

TEST_CASE("a wall letter stands 4.4 mm high at the limit of sight from three metres") {
    // ISO 8596: 5 minutes of arc at acuity 1.0; tan(5') = 0.00145444, worked out by hand
    CHECK(thresholdHeight(3.0) == Approx(4.3633).epsilon(1e-4));
    CHECK(readableFrom(thresholdHeight(3.0), 1.0) == Approx(3.0));
    CHECK(readableFrom(3 * 4.3633, kEasyReading) == Approx(3.0).epsilon(1e-4));
}

TEST_CASE("names and doses never go below the floor, on A3 nine millimetres") {
    for (const SheetOptions& options : everyPaper("DejaVu Sans")) {
        const Layout layout = demo(options);
        const double floor = options.paper == Paper::A3 ? 9.0 : kBareReading * thresholdHeight(3.0);
        CHECK(layout.keyCap >= floor - 0.01);
        double smallest = 1000;
        for (const TextItem& t : textsOf(layout)) {
            if (t.rank == Rank::Key) smallest = std::min(smallest, t.type.em);
            CHECK(t.type.em >= 7 * 25.4 / 72); // 7 pt
        }
        // capitals of DejaVu Sans stand 0.729 em high (its OS/2 table: 1493 of 2048)
        CHECK(smallest * 1493 / 2048 == Approx(layout.keyCap).epsilon(0.01));
    }
}

TEST_CASE("a short month is set larger than a long one") {
    const Layout few =
        only(group(rounds(3, 3), secondsRange(60, 60), {slot("goblet-squat", reps(5, 5))}));
    CHECK(few.keyCap > 1.5 * demo().keyCap);
    CHECK(few.pages.size() == 1);
}

TEST_CASE("sections that fit on a page are never parted") {
    for (const SheetOptions& options : everyPaper("DejaVu Sans")) {
        const Layout layout = demo(options);
        CHECK(pageOf(layout, "A1") == pageOf(layout, "B2"));
        CHECK(pageOf(layout, "D1") == pageOf(layout, "F2"));
        CHECK(pageOf(layout, "G1") == pageOf(layout, "G2"));
    }
}

TEST_CASE("a group longer than a page goes on over the page under its section's name") {
    Group many = group(rounds(1, 1), secondsRange(0, 0), {});
    for (int i = 0; i < 40; ++i) many.slots.push_back(slot("goblet-squat", reps(5, 5)));
    const Layout layout = only(many);
    REQUIRE(layout.pages.size() >= 2);
    QStringList labels;
    for (const SheetPage& page : layout.pages) {
        labels += labelsOf(page);
        CHECK(textsOf(page, Rank::Head, Ink::Accent).contains("Strength"));
    }
    CHECK(labels.size() == 40);
    CHECK(allText(layout).contains("continued"));
    CHECK(overflowText(layout) == "");
}

TEST_CASE("large print raises the smallest type to twelve points") {
    SheetOptions options;
    options.largePrint = true;
    const Layout layout = demo(options);
    CHECK(layout.keyCap > demo().keyCap);
    for (const TextItem& t : textsOf(layout)) CHECK(t.type.em >= 12 * 25.4 / 72 - 0.001);
    CHECK(overflowText(layout) == "");
}

TEST_CASE("a month without sections still has a page with its name") {
    const Layout layout = layoutWall(saltmarsh(), block("2026-10", {}), {});
    REQUIRE(layout.pages.size() == 1);
    CHECK(allText(layout).contains("October 2026"));
    CHECK(layout.keyCap == 0);
}
