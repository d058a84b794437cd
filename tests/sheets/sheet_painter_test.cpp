// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/ink.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/sheet_painter.hpp"
#include "sheets/sheet_support.hpp"
#include "sheets/wall_sheet.hpp"
#include "support/catch.hpp"

#include <QPainter>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kDpi = 72;
constexpr double kDots = kDpi / 25.4;

// The box around all that is not white.
QRect inked(const QImage& image) {
    QRect box;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) != qRgb(255, 255, 255)) box |= QRect(x, y, 1, 1);
    return box;
}

double inkShare(const QImage& image, const QRectF& mm) {
    const QRect box = QRectF(mm.topLeft() * kDots, mm.size() * kDots).toAlignedRect();
    double dark = 0;
    for (int y = box.top(); y <= box.bottom(); ++y)
        for (int x = box.left(); x <= box.right(); ++x) dark += 255 - qGray(image.pixel(x, y));
    return dark / 255 / (box.width() * box.height());
}
} // namespace

TEST_CASE("nothing is painted in the margin of a page") {
    for (const SheetOptions& options : everyPaper("DejaVu Sans")) {
        const Layout layout = layoutWall(saltmarsh(), lowTide(), options);
        for (int n = 0; n < static_cast<int>(layout.pages.size()); ++n) {
            const QImage image = pageImage(layout, n, kDpi);
            const double m = (layout.margin - 0.5) * kDots;
            const QRectF inside = QRectF(image.rect()).adjusted(m, m, -m, -m);
            CHECK(inside.contains(QRectF(inked(image))));
        }
    }
}

TEST_CASE("every text of a page leaves ink in its box") {
    const Layout layout = layoutWall(saltmarsh(), lowTide(), {});
    const QImage image = pageImage(layout, 0, kDpi);
    for (const TextItem& item : textsOf(layout.pages[0])) {
        CAPTURE(item.text.toStdString());
        CHECK(inkShare(image, item.box) > 0.08);
    }
}

TEST_CASE("in black and white a page has no colour and no tint") {
    SheetOptions options;
    options.blackAndWhite = true;
    const Layout layout = layoutWall(saltmarsh(), lowTide(), options);
    const QImage image = pageImage(layout, 0, kDpi);
    int coloured = 0, dark = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor c = image.pixelColor(x, y);
            coloured += c.red() != c.green() || c.green() != c.blue();
            dark += c.red() < 40;
        }
    CHECK(coloured == 0);
    CHECK(dark > 1000);
    for (const Ink ink : {Ink::Text, Ink::Quiet, Ink::Accent, Ink::Hair})
        CHECK(colourOf(ink, true) == QColor(Qt::black));
}

TEST_CASE("print has the contrast that reading needs") {
    // WCAG 2.1, criterion 1.4.3: 4.5 for text; 1.4.11: 3 for graphics
    for (const Ink ink : {Ink::Text, Ink::Quiet, Ink::Accent}) {
        CHECK(contrast(colourOf(ink, false), Qt::white) >= 4.5);
        CHECK(contrast(colourOf(ink, false), colourOf(Ink::Tint, false)) >= 4.5);
    }
    CHECK(contrast(colourOf(Ink::Hair, false), Qt::white) >= 3);
    CHECK(contrast(Qt::black, Qt::white) == Approx(21)); // the same source
}

TEST_CASE("a page is the same on a fine and a coarse device") {
    const Layout layout = layoutWall(saltmarsh(), lowTide(), {});
    const QImage fine = pageImage(layout, 0, 4 * kDpi), coarse = pageImage(layout, 0, kDpi);
    const QRect a = inked(fine), b = inked(coarse);
    CHECK(a.right() / 4.0 == Approx(b.right()).margin(1.5));
    CHECK(a.bottom() / 4.0 == Approx(b.bottom()).margin(1.5));
}

TEST_CASE("painting leaves the painter as it was") {
    const Layout layout = layoutWall(saltmarsh(), lowTide(), {});
    QImage image(200, 200, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setPen(Qt::red);
    const QTransform before = painter.transform();
    paintPage(painter, layout, 0);
    CHECK(painter.transform() == before);
    CHECK(painter.pen().color() == QColor(Qt::red));
}
