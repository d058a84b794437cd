// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/legibility.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/wall_sheet.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QRegularExpression>

using namespace bw;
using namespace bw::test;

namespace {
TextItem text(const char* words, QRectF box, double width, double room) {
    TextItem item;
    item.text = QString::fromUtf8(words);
    item.box = box;
    item.at = box.bottomLeft();
    item.width = width;
    item.room = room;
    return item;
}

std::vector<QString> fonts() {
    std::vector<QString> found;
    for (const char* family : {"DejaVu Sans", "Noto Sans"}) {
        if (installed(QString::fromUtf8(family)))
            found.push_back(QString::fromUtf8(family));
        else
            WARN(std::string(family) + " is not installed: not checked");
    }
    return found;
}

// Every letter that was asked for is on some page.
bool keepsName(const Layout& layout, const std::string& name) {
    const auto squeezed = [](QString text) { return text.remove(QLatin1Char(' ')); };
    return squeezed(allText(layout)).contains(squeezed(QString::fromStdString(name)));
}

// A group may be parted only when it had the page to itself.
bool partsOnlyLongGroups(const Layout& layout) {
    const auto letter = [](QString label) { return label.remove(QRegularExpression("[0-9]")); };
    for (std::size_t n = 1; n < layout.pages.size(); ++n) {
        const QStringList before = labelsOf(layout.pages[n - 1]), here = labelsOf(layout.pages[n]);
        if (before.isEmpty() || here.isEmpty()) continue;
        if (letter(before.back()) == letter(here.front()) &&
            letter(before.front()) != letter(here.front()))
            return false;
    }
    return true;
}
} // namespace

TEST_CASE("a page reports what is too wide, over the margin or on other text") {
    Layout layout;
    layout.paper = {100, 100};
    layout.margin = 10;
    SheetPage page;
    page.items = {text("fits", {10, 10, 20, 5}, 20, 20), text("wide", {10, 20, 21, 5}, 21, 20),
                  text("over", {80, 40, 11, 5}, 11, 20), text("on", {25, 12, 9, 5}, 9, 20)};
    layout.pages = {page};
    const auto found = overflowOf(layout);
    REQUIRE(found.size() == 3);
    CHECK(found[0].kind == Overflow::Kind::Room);
    CHECK(found[0].text == "wide");
    CHECK(found[1].kind == Overflow::Kind::Paper);
    CHECK(found[1].text == "over");
    CHECK(found[2].kind == Overflow::Kind::Overlap);
    CHECK(found[2].text == "on");
}

TEST_CASE("the demo month overflows on no paper and in no font") {
    for (const QString& family : fonts())
        for (const SheetOptions& options : everyPaper(family)) {
            const Layout layout = layoutWall(saltmarsh(), lowTide(), options);
            CHECK(overflowText(layout) == "");
            CHECK(layout.pages.size() == 2);
        }
}

TEST_CASE("random months with names of up to forty characters overflow nowhere") {
    for (const QString& family : fonts())
        for (std::uint32_t seed = 1; seed <= 6; ++seed) {
            const RandomMonth month = randomMonth(seed, 40);
            for (const SheetOptions& options : everyPaper(family)) {
                const Layout layout = layoutWall(month.gym, month.block, options);
                CAPTURE(seed, family.toStdString(), static_cast<int>(options.paper));
                CHECK(overflowText(layout) == "");
                CHECK(partsOnlyLongGroups(layout));
            }
        }
}

TEST_CASE("names of two hundred characters are broken and set smaller, never cut") {
    for (const QString& family : fonts())
        for (std::uint32_t seed = 100; seed < 104; ++seed) {
            const RandomMonth month = randomMonth(seed, 200);
            for (const SheetOptions& options : everyPaper(family)) {
                const Layout layout = layoutWall(month.gym, month.block, options);
                CAPTURE(seed, family.toStdString(), static_cast<int>(options.paper));
                CHECK(overflowText(layout) == "");
                CHECK(keepsName(layout, month.block.title));
                for (const auto& entry : month.gym.shelf.entries())
                    CHECK(keepsName(layout, entry->name));
                if (layout.keyCap > 0)
                    CHECK(layout.keyCap >= kBareReading * thresholdHeight(3.0) - 0.01);
            }
        }
}

TEST_CASE("large print of random months overflows nowhere") {
    SheetOptions options;
    options.largePrint = true;
    for (std::uint32_t seed = 200; seed < 204; ++seed) {
        const RandomMonth month = randomMonth(seed, 60);
        CHECK(overflowText(layoutWall(month.gym, month.block, options)) == "");
    }
}

TEST_CASE("the widest names and doses there may be overflow nowhere") {
    Gym gym;
    Exercise e = exercise("widest", Pattern::Squat);
    e.name = std::string(200, 'W');
    e.sides = Sides::Each;
    gym.shelf.put(e);
    gym.settings.name = e.name;
    Group wide = group(rounds(19, 20), secondsRange(1701, 1799), {});
    for (int i = 0; i < 12; ++i)
        wide.slots.push_back(
            slot("widest", Dose::of(Measure::Metres, 19'998'999, 19'999'999).value()));
    Block draft = block("2026-09", {section(SectionKind::WarmUp, {}),
                                    section(SectionKind::Strength, {wide, wide})});
    draft.title = e.name;
    draft.stair.resize(6, draft.stair.back());
    for (const bool large : {false, true})
        for (SheetOptions options : everyPaper("DejaVu Sans")) {
            options.largePrint = large;
            const Layout layout = layoutWall(gym, draft, options);
            CAPTURE(large, static_cast<int>(options.paper), static_cast<int>(options.orientation));
            CHECK(overflowText(layout) == "");
            CHECK(layout.keyCap >= kBareReading * thresholdHeight(3.0) - 0.01);
        }
}
