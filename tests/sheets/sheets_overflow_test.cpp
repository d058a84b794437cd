// SPDX-License-Identifier: GPL-3.0-or-later
// The hand-held sheets on every paper: nothing is cut, runs over the margin or into other text.
#include "sheets/demo_month.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_support.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
constexpr SheetKind kHandHeld[] = {SheetKind::Cards, SheetKind::Notes, SheetKind::Kit,
                                   SheetKind::Talk};

// Every paper both ways, in turn usual and large, four and two cards to a page, kg and lb.
std::vector<SheetOptions> everyChoice(const QString& family, bool large) {
    std::vector<SheetOptions> all = everyPaper(family);
    for (SheetOptions& options : all) {
        options.largePrint = large;
        options.cardsPerPage = large ? 2 : 4;
        options.massUnit = large ? MassUnit::Lb : MassUnit::Kg;
        options.printedOn = Date::of(2026, 11, 25).value();
        large = !large;
    }
    return all;
}

void checkAll(const DemoMonth& month, const QString& family, bool large) {
    for (const SheetKind kind : kHandHeld)
        for (const SheetOptions& options : everyChoice(family, large)) {
            const Layout layout = layoutSheet(kind, month.matter(), options);
            CAPTURE(std::string(sheetWord(kind)), static_cast<int>(options.paper),
                    static_cast<int>(options.orientation), options.largePrint);
            CHECK(overflowText(layout) == "");
            CHECK_FALSE(layout.pages.empty());
        }
}

// Every letter that was asked for is on some page.
bool keeps(const Layout& layout, const std::string& name) {
    const auto squeezed = [](QString text) { return text.remove(QLatin1Char(' ')); };
    return squeezed(allText(layout)).contains(squeezed(QString::fromStdString(name)));
}
} // namespace

TEST_CASE("the demo's hand-held sheets overflow on no paper and in no font") {
    for (const char* family : {"DejaVu Sans", "Noto Sans"}) {
        if (installed(QString::fromUtf8(family)))
            for (const bool large : {false, true})
                checkAll(demoMonth(), QString::fromUtf8(family), large);
        else
            WARN(std::string(family) + " is not installed: not checked");
    }
}

TEST_CASE("random gyms with names of up to forty characters overflow on no hand-held sheet") {
    for (std::uint32_t seed = 1; seed <= 4; ++seed) {
        CAPTURE(seed);
        checkAll(randomGym(seed, 40, 3), QStringLiteral("DejaVu Sans"), seed % 2 == 0);
    }
}

TEST_CASE("names of two hundred characters stand whole on every hand-held sheet") {
    for (std::uint32_t seed = 100; seed < 102; ++seed) {
        CAPTURE(seed);
        const DemoMonth month = randomGym(seed, 200, 2);
        checkAll(month, QStringLiteral("DejaVu Sans"), seed % 2 == 0);
        const Layout cards = layoutSheet(SheetKind::Cards, month.matter(), {});
        for (const Member& m : month.gym.members) CHECK(keeps(cards, m.name));
        const Layout notes = layoutSheet(SheetKind::Notes, month.matter(), {});
        for (const auto& entry : month.gym.shelf.entries()) CHECK(keeps(notes, entry->name));
    }
}

TEST_CASE("large print has nothing below twelve points on any hand-held sheet") {
    SheetOptions options;
    options.largePrint = true;
    for (const SheetKind kind : kHandHeld)
        for (const TextItem& t : textsOf(layoutSheet(kind, demoMonth().matter(), options)))
            CHECK(t.type.em >= 12 * 25.4 / 72 - 0.001);
}
