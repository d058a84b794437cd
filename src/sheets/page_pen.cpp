// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/page_pen.hpp"

namespace bw {

void PagePen::left(const QString& text, QPointF at, double room, const Look& look) {
    if (text.isEmpty()) return;
    items_.push_back(TextItem{text, at, ruler_.inkBox(text, look.type).translated(at),
                              ruler_.width(text, look.type), room, look.type, look.ink, look.rank});
}

void PagePen::right(const QString& text, QPointF end, double room, const Look& look) {
    left(text, end - QPointF(ruler_.width(text, look.type), 0), room, look);
}

void PagePen::stroke(const QPolygonF& points, double width, Ink ink) {
    items_.push_back(StrokeItem{points, width, ink});
}

void PagePen::fill(const QPolygonF& points, Ink ink) { items_.push_back(FillItem{points, ink}); }

void PagePen::put(const std::vector<Item>& items, QPointF by) {
    for (const Item& item : items) items_.push_back(moved(item, by));
}

} // namespace bw
