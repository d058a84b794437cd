// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_painter.hpp"
#include "sheets/ink.hpp"
#include "sheets/type_ruler.hpp"

#include <QPainter>

namespace bw {

namespace {
constexpr double kMmPerInch = 25.4;

struct Brush {
    QPainter& painter;
    const Layout& layout;
    const InkColours& colours;

    void operator()(const TextItem& text) const {
        painter.setPen(colours(text.ink));
        painter.setFont(sheetFont(layout.family, text.type));
        painter.drawText(text.at * kUnitsPerMm, text.text);
    }
    void operator()(const StrokeItem& stroke) const {
        painter.setPen(QPen(colours(stroke.ink), stroke.width * kUnitsPerMm, Qt::SolidLine,
                            Qt::FlatCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(scaled(stroke.points));
    }
    void operator()(const FillItem& area) const {
        if (layout.blackAndWhite && area.ink == Ink::Tint) return;
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours(area.ink));
        painter.drawPolygon(scaled(area.points));
    }
    static QPolygonF scaled(QPolygonF points) {
        for (QPointF& p : points) p *= kUnitsPerMm;
        return points;
    }
};
} // namespace

void useMillimetres(QPainter& painter) {
    const auto* device = painter.device();
    painter.scale(device->logicalDpiX() / kMmPerInch, device->logicalDpiY() / kMmPerInch);
}

void paintPage(QPainter& painter, const Layout& layout, int page) {
    paintPage(painter, layout, page, [&](Ink ink) { return colourOf(ink, layout.blackAndWhite); });
}

void paintPage(QPainter& painter, const Layout& layout, int page, const InkColours& colours) {
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(1.0 / kUnitsPerMm, 1.0 / kUnitsPerMm);
    for (const Item& item : layout.pages.at(static_cast<std::size_t>(page)).items)
        std::visit(Brush{painter, layout, colours}, item);
    painter.restore();
}

QImage pageImage(const Layout& layout, int page, double dotsPerInch) {
    const double scale = dotsPerInch / kMmPerInch;
    QImage image((layout.paper * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintPage(painter, layout, page);
    return image;
}

} // namespace bw
