// SPDX-License-Identifier: GPL-3.0-or-later
// All five sheets of full classes with much kit, under choices drawn at random.
#include "blockwright/floor/kit_plan.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
constexpr SheetKind kAll[] = {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes, SheetKind::Kit,
                              SheetKind::Talk};
constexpr int kKits = 9;

void stock(Gym& gym, std::uint32_t seed) {
    for (int i = 0; i < kKits; ++i) {
        KitItem item{
            kit("kit-" + std::to_string(i)), "Kit", 1 + 4 * i, Claim::Group, {}, {}, {}, {}};
        item.name = gym.shelf.entries()[static_cast<std::size_t>(i) % gym.shelf.size()]->name;
        gym.put(item);
    }
    std::uint32_t n = seed;
    for (const auto& entry : std::vector(gym.shelf.entries())) {
        Exercise e = *entry;
        for (int more = 0; more < 2; ++more)
            e.needs.push_back({{kit("kit-" + std::to_string(n++ % kKits)), 1 + more, {}}});
        e.needs.resize(1); // one way to do it, of several kinds of kit
        e.needs[0].push_back({kit("kit-" + std::to_string(n++ % kKits)), 2, {}});
        gym.shelf.put(e);
    }
}

// Up to forty places, started in all three ways.
DemoMonth crowdedGym(std::uint32_t seed) {
    Gym gym = randomGym(seed, seed % 2 ? 24 : 90, 6).gym;
    gym.settings.places = 20 + static_cast<int>(seed % 3) * 10;
    if (gym.shelf.size() > 0) stock(gym, seed);
    Block b = *gym.latest();
    std::uint32_t n = seed;
    for (Section& section : b.sections) switch (n++ % 3) {
        case 0: section.start = StartTogether{}; break;
        case 1: section.start = StartSpread{}; break;
        default: section.start = StartCounts{std::vector<int>(section.groups.size(), 10)};
        }
    gym.put(b);
    return DemoMonth(std::move(gym));
}

SheetOptions drawn(std::mt19937& dice) {
    SheetOptions options;
    options.paper = static_cast<Paper>(dice() % 3);
    options.orientation = static_cast<Orientation>(dice() % 2);
    options.blackAndWhite = dice() % 2 == 0;
    options.largePrint = dice() % 2 == 0;
    options.massUnit = static_cast<MassUnit>(dice() % 2);
    options.cardsPerPage = dice() % 2 ? 2 : 4;
    if (dice() % 2) options.printedOn = Date::of(2026, 11, 25).value();
    return options;
}

std::string told(SheetKind kind, const SheetOptions& o) {
    return std::string(sheetWord(kind)) + " on " + std::string(wordOf(o.paper)) +
           (o.orientation == Orientation::Landscape ? " landscape" : "") +
           (o.largePrint ? " large" : "") + (o.blackAndWhite ? " black" : "") + " in " +
           std::string(wordOf(o.massUnit));
}
} // namespace

TEST_CASE("full classes with much kit overflow on no sheet, whatever is chosen") {
    std::mt19937 dice(20261125);
    for (std::uint32_t seed = 300; seed < 310; ++seed) {
        const DemoMonth month = crowdedGym(seed);
        for (const SheetKind kind : kAll) {
            const SheetOptions options = drawn(dice);
            CAPTURE(seed, told(kind, options));
            const Layout layout = layoutSheet(kind, month.matter(), options);
            CHECK(overflowText(layout) == "");
            CHECK_FALSE(layout.pages.empty());
        }
    }
}

TEST_CASE("the demo's wall sheet in large print overflows on no paper") {
    for (SheetOptions options : everyPaper("DejaVu Sans")) {
        options.largePrint = true;
        CAPTURE(told(SheetKind::Wall, options));
        CHECK(overflowText(layoutSheet(SheetKind::Wall, demoMonth().matter(), options)) == "");
    }
}

TEST_CASE("in pounds no load is said in kilograms") {
    SheetOptions options;
    options.massUnit = MassUnit::Lb;
    for (const SheetKind kind : {SheetKind::Cards, SheetKind::Kit}) {
        const QString text = allText(layoutSheet(kind, demoMonth().matter(), options));
        CHECK(text.contains(" lb"));
        CHECK_FALSE(text.contains(" kg"));
    }
}

TEST_CASE("black and white moves nothing") {
    for (const SheetKind kind : kAll) {
        SheetOptions options;
        const auto colour = textsOf(layoutSheet(kind, demoMonth().matter(), options));
        options.blackAndWhite = true;
        const auto black = textsOf(layoutSheet(kind, demoMonth().matter(), options));
        REQUIRE(colour.size() == black.size());
        bool same = true;
        for (std::size_t i = 0; i < colour.size(); ++i)
            same = same && colour[i].text == black[i].text && colour[i].at == black[i].at;
        CHECK(same);
    }
}

TEST_CASE("the kit of every station of a full class is on its list") {
    for (std::uint32_t seed = 300; seed < 306; ++seed) {
        const DemoMonth month = crowdedGym(seed);
        const auto squeezed = [](QString text) { return text.remove(QLatin1Char(' ')); };
        const QString text = squeezed(allText(layoutSheet(SheetKind::Kit, month.matter(), {})));
        for (const KitSection& section : kitPlan(month.gym, *month.block, month.ledger.get()))
            for (const KitStation& station : section.stations)
                for (const KitLine& line : station.kit) {
                    const QString name = QString::fromStdString(month.gym.findKit(line.kit)->name);
                    CHECK(text.contains(QString::number(line.units) + QStringLiteral("×") +
                                        squeezed(name)));
                }
    }
}
