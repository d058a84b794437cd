// SPDX-License-Identifier: GPL-3.0-or-later
// Writes items of a page, measuring them. The list and the ruler must outlive the pen.
#pragma once
#include "sheets/type_ruler.hpp"

namespace bw {

class PagePen {
public:
    PagePen(const TypeRuler& ruler, std::vector<Item>& items) : ruler_(ruler), items_(items) {}

    struct Look {
        Type type;
        Ink ink = Ink::Text;
        Rank rank = Rank::Key;
    };
    // `room` is the width that there is for it; more is reported as overflow, never cut.
    void left(const QString& text, QPointF baseline, double room, const Look& look);
    void right(const QString& text, QPointF baselineEnd, double room, const Look& look);

    void stroke(const QPolygonF& points, double width, Ink ink);
    void line(QPointF from, QPointF to, double width, Ink ink) { stroke({{from, to}}, width, ink); }
    void fill(const QPolygonF& points, Ink ink);
    void put(const std::vector<Item>& items, QPointF by);

    [[nodiscard]] const TypeRuler& ruler() const { return ruler_; }

private:
    const TypeRuler& ruler_;
    std::vector<Item>& items_;
};

} // namespace bw
