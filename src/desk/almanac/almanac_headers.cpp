// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_headers.hpp"

#include "desk/almanac/almanac_model.hpp"
#include "desk/almanac/almanac_words.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

namespace {
constexpr int kSide = 10, kIndent = 12;

const AlmanacModel& almanacOf(const QHeaderView& header) {
    return *static_cast<const AlmanacModel*>(header.model());
}

QFont small(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 0.88);
    return font;
}

// Kept free at the right for the month of last use.
int lastUsedWidth(const QFont& font) {
    return QFontMetrics(small(font)).horizontalAdvance(QStringLiteral("0000-00-0")) + kSide;
}

// What stands at the right of the name.
QString asideOf(const AlmanacLine& line) {
    using Kind = AlmanacLine::Kind;
    if (line.last) return shortMonthAndYear(*line.last);
    if (line.kind == Kind::Format) return NamesHeader::tr("never");
    if (line.kind == Kind::Ratio && line.band.band) return bandText(line.band);
    return {};
}
} // namespace

MonthsHeader::MonthsHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionResizeMode(Fixed);
    setSectionsClickable(true);
    setHighlightSections(false);
    setMinimumSectionSize(10);
    setAccessibleName(tr("Months"));
    setCursor(Qt::PointingHandCursor);
}

void MonthsHeader::setCurrent(int column) {
    if (current_ == column) return;
    current_ = column;
    viewport()->update();
}

QSize MonthsHeader::sizeHint() const { return {0, fontMetrics().height() * 2 + 10}; }

void MonthsHeader::paintEvent(QPaintEvent* event) {
    QHeaderView::paintEvent(event);
    const int end = length() - offset();
    QPainter(viewport()).fillRect(end, 0, width() - end, height(), inks().paper);
}

void MonthsHeader::paintSection(QPainter* p, const QRect& r, int column) const {
    const AlmanacModel& model = almanacOf(*this);
    const AlmanacMonth& m = model.month(column);
    const bool shown = model.isShown(column), leftmost = logicalIndexAt(r.width() / 2) == column;
    p->save();
    p->fillRect(r, shown ? inks().wash : m.block ? inks().paper : inks().desk);
    p->setPen(QPen(inks().line, inks().stroke));
    if (m.month.month() == 1) p->drawLine(r.topLeft(), r.bottomLeft());
    p->drawLine(r.bottomLeft(), r.bottomRight());
    const QRect year = r.adjusted(0, 3, 0, -r.height() / 2),
                name = r.adjusted(0, r.height() / 2, 0, -3);
    p->setFont(small(font()));
    p->setPen(inks().quiet);
    if (leftmost || m.month.month() == 1)
        p->drawText(year, Qt::AlignCenter | Qt::TextDontClip, QString::number(m.month.year()));
    QFont label = font();
    label.setBold(shown || column == current_);
    p->setFont(label);
    p->setPen(m.block ? inks().ink : inks().quiet);
    p->drawText(name, Qt::AlignCenter, shortMonth(m.month));
    if (shown) p->fillRect(QRect(r.left() + 3, r.bottom() - 2, r.width() - 6, 3), inks().accent);
    p->restore();
}

NamesHeader::NamesHeader(QWidget* parent) : QHeaderView(Qt::Vertical, parent) {
    setSectionResizeMode(Fixed);
    setSectionsClickable(false);
    setHighlightSections(false);
    setMinimumSectionSize(8);
    setAccessibleName(tr("Names"));
}

void NamesHeader::setCurrent(int row) {
    if (current_ == row) return;
    current_ = row;
    viewport()->update();
}

void NamesHeader::paintEvent(QPaintEvent* event) {
    QHeaderView::paintEvent(event);
    const int end = length() - offset();
    QPainter(viewport()).fillRect(0, end, width(), height() - end, inks().paper);
}

void NamesHeader::paintSection(QPainter* p, const QRect& r, int row) const {
    const AlmanacLine& line = almanacOf(*this).line(row);
    const bool heading = line.kind == AlmanacLine::Kind::Heading;
    const QString aside = asideOf(line);
    p->save();
    p->fillRect(r, inks().paper);
    p->setPen(QPen(inks().line, inks().stroke));
    p->drawLine(r.topRight(), r.bottomRight());
    if (heading) p->drawLine(r.bottomLeft(), r.bottomRight());
    QFont label = font();
    label.setBold(heading || row == current_);
    p->setFont(label);
    p->setPen(heading ? inks().accent : inks().ink);
    const bool indented = line.kind == AlmanacLine::Kind::Exercise;
    const int wide = heading ? 0 : lastUsedWidth(font());
    const QRect room = r.adjusted(kSide + (indented ? kIndent : 0), 0, -wide - kSide, 0);
    p->drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                p->fontMetrics().elidedText(line.name, Qt::ElideRight, room.width()));
    p->setFont(small(font()));
    p->setPen(inks().quiet);
    p->drawText(r.adjusted(0, 0, -kSide, 0), Qt::AlignRight | Qt::AlignVCenter, aside);
    p->restore();
}

void NamesCorner::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.fillRect(rect(), inks().paper);
    p.setFont(small(font()));
    p.setPen(inks().quiet);
    const QRect room = rect().adjusted(kSide, 0, -kSide, -4);
    p.drawText(room, Qt::AlignLeft | Qt::AlignBottom, tr("format"));
    p.drawText(room, Qt::AlignRight | Qt::AlignBottom, tr("last used"));
}

} // namespace bw
