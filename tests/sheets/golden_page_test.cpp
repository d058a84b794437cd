// SPDX-License-Identifier: GPL-3.0-or-later
// The demo's sheets look as they did. The font is that of fonts-dejavu-core, the same file
// (version 2.37) on Debian 12 and 13, without hinting.
#include "sheets/demo_month.hpp"
#include "sheets/golden_page.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_painter.hpp"
#include "sheets/sheet_support.hpp"
#include "support/catch.hpp"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <random>

using namespace bw;
using namespace bw::test;

namespace {
constexpr SheetKind kAll[] = {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes, SheetKind::Kit,
                              SheetKind::Talk};

Layout demoSheet(SheetKind kind) {
    const SheetMatter matter = demoMonth().matter();
    SheetOptions options = usualOptions(matter.gym.settings, kind);
    options.paper = Paper::A4;
    options.printedOn = Date::of(2026, 11, 25).value();
    return layoutSheet(kind, matter, options);
}

// The first page, and of sheets that end otherwise than they begin the last.
std::vector<int> keptPages(SheetKind kind, const Layout& layout) {
    const int last = static_cast<int>(layout.pages.size()) - 1;
    if (last == 0 || kind == SheetKind::Cards) return {0};
    return {0, last};
}

// All that stands within half a millimetre of a line of text in the middle of the page.
bool onLine(const Item& item, double y) {
    const auto* text = std::get_if<TextItem>(&item);
    return text && std::abs(text->at.y() - y) < 0.5;
}
double someLine(const SheetPage& page) {
    const auto texts = textsOf(page);
    return texts[texts.size() / 2].at.y();
}
double astray(const Layout& before, const Layout& after) {
    return comparePages(greyPage(before, 0), greyPage(after, 0)).worst;
}
} // namespace

TEST_CASE("the demo's sheets look as they are kept") {
    REQUIRE(installed(QStringLiteral("DejaVu Sans"))); // package fonts-dejavu-core
    for (const SheetKind kind : kAll) {
        const Layout layout = demoSheet(kind);
        for (const int page : keptPages(kind, layout))
            CHECK(
                checkedAgainstGolden(std::string(sheetWord(kind)) + '-' + std::to_string(page + 1),
                                     layout, page) == "");
    }
}

TEST_CASE("a line of text that is gone, moved or changed is seen on every sheet") {
    for (const SheetKind kind : kAll) {
        const Layout before = demoSheet(kind);
        const double y = someLine(before.pages[0]);
        CAPTURE(std::string(sheetWord(kind)), y);
        Layout moved = before, shorter = before, other = before;
        for (Item& item : moved.pages[0].items)
            if (onLine(item, y)) item = bw::moved(item, {0, 2});
        CHECK(astray(before, moved) > 2 * kMostAstray);
        std::erase_if(shorter.pages[0].items, [&](const Item& item) { return onLine(item, y); });
        CHECK(astray(before, shorter) > 2 * kMostAstray);
        for (Item& item : other.pages[0].items)
            if (onLine(item, y)) std::ranges::reverse(std::get<TextItem>(item).text);
        CHECK(astray(before, other) > kMostAstray);
    }
}

TEST_CASE("greys that a rasteriser draws a little otherwise are the same page") {
    std::mt19937 dice(6);
    for (const SheetKind kind : kAll) {
        const QImage page = greyPage(demoSheet(kind), 0);
        QImage rough = page;
        for (int y = 0; y < rough.height(); ++y)
            for (int x = 0; x < rough.width(); ++x) { // two of sixteen greys up or down
                const int grey = page.constScanLine(y)[x] + static_cast<int>(dice() % 5) - 2;
                rough.scanLine(y)[x] = static_cast<uchar>(std::clamp(grey, 0, 15));
            }
        CHECK(comparePages(page, rough).worst <= kMostAstray);
    }
}

TEST_CASE("a page of another size is another page") {
    const QImage page = greyPage(demoSheet(SheetKind::Talk), 0);
    CHECK(comparePages(page, page).worst == 0);
    CHECK(comparePages(page, page.copy(0, 0, page.width() - 1, page.height())).worst == 1);
    CHECK(comparePages(QImage(), page).worst == 1);
}

TEST_CASE("a page that differs is written beside a picture of the difference") {
    if (qEnvironmentVariableIsSet("BLOCKWRIGHT_WRITE")) return;
    const std::string told = checkedAgainstGolden("talk-1", demoSheet(SheetKind::Notes), 0);
    for (const char* end : {"talk-1.now.png", "talk-1.differs.png"}) {
        const QString file =
            QDir::temp().filePath(QStringLiteral("blockwright-pages/") + QString::fromUtf8(end));
        CAPTURE(told);
        CHECK(told.find(file.toStdString()) != std::string::npos);
        CHECK(QFileInfo(file).size() > 0);
        CHECK(QFile::remove(file));
    }
}
