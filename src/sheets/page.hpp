// SPDX-License-Identifier: GPL-3.0-or-later
// A laid-out sheet: for each page a list of texts, strokes and fills, each at its place.
// Millimetres from the top left corner of the paper, y downwards. Nothing is decided after this:
// whoever paints it, on a screen, a printer or into a file, gets the same page.
#pragma once
#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <variant>
#include <vector>

namespace bw {

enum class Ink { Text, Quiet, Accent, Hair, Tint };
enum class Weight { Book, Bold };

// How near a text is meant to be read: Key from across the room, Small from arm's length.
enum class Rank { Title, Head, Key, Second, Small };

struct Type {
    double em = 0; // millimetres
    Weight weight = Weight::Book;
};

struct TextItem {
    QString text;
    QPointF at;       // left end of the baseline
    QRectF box;       // around the ink
    double width = 0; // advance of the text
    double room = 0;  // width that the layout had for it
    Type type;
    Ink ink = Ink::Text;
    Rank rank = Rank::Key;
};

struct StrokeItem { // an open line through the points
    QPolygonF points;
    double width = 0;
    Ink ink = Ink::Text;
};

struct FillItem { // the area within the points
    QPolygonF points;
    Ink ink = Ink::Tint;
};

using Item = std::variant<TextItem, StrokeItem, FillItem>;

struct SheetPage {
    std::vector<Item> items;
};

struct Layout {
    QString title; // of the document
    QSizeF paper;
    double margin = 0;
    QString family;
    bool blackAndWhite = false;
    double keyCap = 0;    // height of the capitals of the smallest Key text; 0 without any
    int cardsPerPage = 0; // of member cards; fewer than asked for where they would not fit
    std::vector<SheetPage> pages;
};

// A piece that does not keep to its place.
struct Overflow {
    enum class Kind {
        Room,
        Paper,
        Overlap
    }; // wider than its room, over the margin, onto another text
    int page = 0;
    Kind kind = Kind::Room;
    QString text;
    QRectF box;
};
// Empty for a page that may be printed.
[[nodiscard]] std::vector<Overflow> overflowOf(const Layout& layout);

[[nodiscard]] Item moved(Item item, QPointF by);

} // namespace bw
