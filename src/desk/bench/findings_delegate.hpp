// SPDX-License-Identifier: GPL-3.0-or-later
// How one finding is set on the paper. The current one opens to its basis and everything to try.
#pragma once
#include "desk/bench/findings_model.hpp"

#include <QFont>
#include <QHash>
#include <QRect>
#include <QStyledItemDelegate>

#include <utility>
#include <vector>

namespace bw {

// Where the parts of a finding stand, in the coordinates of the list.
struct FindingPlaces {
    struct Line {
        QRect rect;
        QString text, key;
        int action = -1; // its number among those the program can do; -1: advice
    };
    QRect shape, text, figures, gauge;
    QRect where;                // null where it has no room; then the basis begins with it
    QRect basis;                // with the weeks before it: one line when closed, whole when open
    QRect tryHint;              // closed and with something to do: opens the list of it
    QRect before;               // open, when it was accepted once
    std::vector<Line> remedies; // open
    std::vector<Line> verdicts; // open: accept it or take that back, its limit, its rule
    int bottom = 0;
};

class FindingsDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    // actionAt: the hint of a closed finding, and what a coach decides of an open one.
    static constexpr int kHint = 1000, kAccept = 1001, kLimit = 1002, kRule = 1003;

    [[nodiscard]] FindingPlaces places(const QStyleOptionViewItem& option, const QModelIndex& index,
                                       bool open) const;
    // The action whose button is under the point, one of those above, or -1.
    [[nodiscard]] int actionAt(const QStyleOptionViewItem& option, const QModelIndex& index,
                               bool open, QPoint point) const;
    // Row and action under the pointer; false when that is so already.
    bool setHover(const QModelIndex& index, int action);
    void setOpen(const QModelIndex& index); // one at a time; lays that row out anew

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    // Heights of wrapped texts, of one font and few widths: laying out the list asks for them again
    // and again.
    [[nodiscard]] int wrapped(const QFont& font, int width, const QString& text) const;
    void putOpen(FindingPlaces& at, const FindingRow& row, const QRect& column,
                 const QFont& small) const;
    void placeRemedies(FindingPlaces& at, const FindingRow& row, const QRect& column,
                       const QFont& small) const;

    mutable QHash<std::pair<QString, int>, int> heights_;
    QPersistentModelIndex open_, hoverRow_;
    int hoverAction_ = -1;
};

} // namespace bw
