// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_paint.hpp"

#include "desk/bench/sheet_model.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>
#include <QStyle>

namespace bw {

namespace {
using Kind = SheetRow::Kind;

Kind kindAt(const QModelIndex& i) {
    return static_cast<Kind>(i.data(SheetModel::RowKindRole).toInt());
}

QFont scaled(QFont font, double by, QFont::Weight weight = QFont::Normal) {
    font.setPointSizeF(font.pointSizeF() * by);
    font.setWeight(weight);
    return font;
}

struct Pen {
    QFont font;
    QColor colour;
    Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter;
};

Pen sectionPen(const QStyleOptionViewItem& o, SheetColumn column) {
    const Inks& k = inks();
    if (column == SheetColumn::Exercise)
        return {scaled(o.font, 1.2, QFont::DemiBold), k.ink, Qt::AlignLeft | Qt::AlignBottom};
    Pen pen{scaled(o.font, 0.92), k.quiet, Qt::AlignLeft | Qt::AlignBottom};
    if (column == SheetColumn::Options) {
        pen.font = scaled(o.font, 1.05, QFont::DemiBold);
        pen.colour = k.ink;
        pen.align = Qt::AlignRight | Qt::AlignBottom;
    }
    return pen;
}

Pen slotPen(const QStyleOptionViewItem& o, const QModelIndex& i, SheetColumn column) {
    const Inks& k = inks();
    switch (column) {
    case SheetColumn::Mark:
        return {scaled(o.font, 0.92), k.quiet, Qt::AlignLeft | Qt::AlignVCenter};
    case SheetColumn::Exercise:
        return {scaled(o.font, 1.0,
                       i.data(SheetModel::MainRole).toBool() ? QFont::DemiBold : QFont::Normal),
                i.data(SheetModel::OpenRole).toBool() ? k.accent : k.ink};
    case SheetColumn::Dose: return {o.font, k.ink};
    case SheetColumn::Tempo:
    case SheetColumn::Effort: return {o.font, k.ink};
    case SheetColumn::Kit:
    case SheetColumn::Options: return {scaled(o.font, 0.9), k.quiet};
    case SheetColumn::Findings: break;
    }
    return {o.font, k.ink};
}

Pen penFor(const QStyleOptionViewItem& o, const QModelIndex& i) {
    const auto column = static_cast<SheetColumn>(i.column());
    Pen pen;
    switch (kindAt(i)) {
    case Kind::Section: pen = sectionPen(o, column); break;
    case Kind::Slot: pen = slotPen(o, i, column); break;
    case Kind::Foot:
        pen = {scaled(o.font, 0.92), inks().accent, Qt::AlignLeft | Qt::AlignTop};
        break;
    case Kind::Empty: pen = {scaled(o.font, 0.92), inks().quiet}; break;
    }
    if (i.data(SheetModel::OfferedRole).toBool()) {
        pen.font.setItalic(true);
        pen.colour = inks().accent;
    }
    if (i.data(SheetModel::UnreadRole).toBool()) pen.colour = inks().level[0];
    return pen;
}

// The bracket that holds the slots of a group together.
void paintBracket(QPainter& p, const QRect& r, const QModelIndex& i) {
    const int x = r.right() - 9;
    const bool first = i.row() == 0 || kindAt(i.siblingAtRow(i.row() - 1)) != Kind::Slot;
    const bool last = kindAt(i.siblingAtRow(i.row() + 1)) == Kind::Foot;
    p.setPen(QPen(inks().accent, 2.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    const int top = first ? r.top() + 3 : r.top();
    const int bottom = last ? r.bottom() - 2 : r.bottom() + 1;
    p.drawLine(x, top, x, bottom);
    if (first) p.drawLine(x - 1, top, x + 6, top);
    if (last) p.drawLine(x - 1, bottom, x + 6, bottom);
}

void paintLevels(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const QString shapes = i.data(SheetModel::LevelsRole).toString();
    QRect r = o.rect.adjusted(0, 0, -8, 0);
    p.setFont(scaled(o.font, 0.95));
    for (qsizetype n = shapes.size(); n-- > 0;) {
        const QString shape = shapes.mid(n, 1);
        for (const Level level : {Level::Stop, Level::Look, Level::Note})
            if (shape == levelShape(level)) p.setPen(inks().level[static_cast<std::size_t>(level)]);
        p.drawText(r, Qt::AlignRight | Qt::AlignVCenter, shape);
        r.setRight(r.right() - p.fontMetrics().horizontalAdvance(shape) - 2);
    }
}

// What a marked line brings, where it leaves room for its shapes.
void paintMark(QPainter& p, const QStyleOptionViewItem& o, const QString& mark) {
    p.setFont(scaled(o.font, 0.92, QFont::DemiBold));
    p.setPen(inks().accent);
    p.drawText(o.rect.adjusted(2, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, mark);
}

void paintGround(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const bool marked = !i.data(SheetModel::MarkRole).isNull();
    const bool now = o.state & QStyle::State_Selected;
    p.fillRect(o.rect, now || marked ? inks().wash : inks().paper);
    if (marked && i.column() == 0)
        p.fillRect(QRect(o.rect.topLeft(), QSize(4, o.rect.height())), inks().accent);
    if (kindAt(i) == Kind::Section && i.column() > 0) {
        p.setPen(QPen(inks().line, inks().stroke));
        p.drawLine(o.rect.left(), o.rect.bottom(), o.rect.right(), o.rect.bottom());
    }
    if (i.column() == static_cast<int>(SheetColumn::Exercise) &&
        (i.data(SheetModel::OpenRole).toBool() || i.data(SheetModel::OfferedRole).toBool())) {
        p.setPen(QPen(inks().accent, 1, Qt::DashLine));
        p.drawRoundedRect(QRectF(o.rect).adjusted(1.5, 2.5, -6.5, -2.5), 3, 3);
    }
    if (o.state & QStyle::State_HasFocus) {
        p.setPen(QPen(inks().accent, inks().stroke + 1));
        p.drawRect(o.rect.adjusted(1, 1, -2, -2));
    }
}
} // namespace

void paintSheetCell(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    paintGround(p, o, i);
    const auto column = static_cast<SheetColumn>(i.column());
    if (column == SheetColumn::Findings) {
        paintLevels(p, o, i);
        paintMark(p, o, i.data(SheetModel::MarkRole).toString());
    } else {
        if (column == SheetColumn::Mark && kindAt(i) == Kind::Slot) paintBracket(p, o.rect, i);
        const Pen pen = penFor(o, i);
        const QRect r = o.rect.adjusted(column == SheetColumn::Mark ? 12 : 5, 2, -4, -3);
        p.setFont(pen.font);
        p.setPen(pen.colour);
        QString text = i.data(Qt::DisplayRole).toString();
        if (column == SheetColumn::Exercise && i.data(SheetModel::LockedRole).toBool())
            text += QStringLiteral("  ⚿");
        p.drawText(r, static_cast<int>(pen.align) | Qt::TextSingleLine,
                   p.fontMetrics().elidedText(text, Qt::ElideRight, r.width()));
    }
    p.restore();
}

} // namespace bw
