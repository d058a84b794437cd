// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/class_headers.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/ledger/class_model.hpp"

#include <QPainter>

#include <algorithm>

namespace bw {

namespace {
constexpr int kSide = 8;
}

SlotsHeader::SlotsHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionResizeMode(Fixed);
    setSectionsClickable(false);
    setHighlightSections(false);
    setAccessibleName(tr("Exercises"));
}

QSize SlotsHeader::sizeHint() const { return {0, fontMetrics().height() * 3 + 8}; }

void SlotsHeader::paintEvent(QPaintEvent* event) {
    QHeaderView::paintEvent(event);
    const int end = length() - offset();
    QPainter(viewport()).fillRect(end, 0, width() - end, height(), inks().paper);
}

void SlotsHeader::paintSection(QPainter* p, const QRect& r, int column) const {
    const QStringList words = model()
                                  ->headerData(column, Qt::Horizontal, Qt::DisplayRole)
                                  .toString()
                                  .split(QLatin1Char('\n'));
    const int line = fontMetrics().height();
    p->save();
    p->fillRect(r, inks().paper);
    p->setPen(QPen(inks().line, inks().stroke));
    p->drawLine(r.bottomLeft(), r.bottomRight());
    const QRect room = r.adjusted(kSide, 4, -kSide, -4);
    p->setFont(smallFont(font()));
    p->setPen(inks().quiet);
    p->drawText(room, Qt::AlignLeft | Qt::AlignTop, words.value(0));
    p->setFont(font());
    p->setPen(inks().ink);
    p->drawText(room.adjusted(0, line, 0, 0),
                static_cast<int>(Qt::AlignLeft | Qt::AlignTop) | Qt::TextWordWrap, words.value(1));
    p->restore();
}

MembersHeader::MembersHeader(QWidget* parent) : QHeaderView(Qt::Vertical, parent) {
    setSectionResizeMode(Fixed);
    setSectionsClickable(false);
    setHighlightSections(false);
    setAccessibleName(tr("Members"));
}

void MembersHeader::setCurrent(int row) {
    if (current_ == row) return;
    current_ = row;
    viewport()->update();
}

void MembersHeader::fit() {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    const int digit = metrics.horizontalAdvance(QLatin1Char('0'));
    int wide = 0;
    for (int row = 0; model() && row < model()->rowCount(); ++row)
        wide =
            std::max(wide, metrics.horizontalAdvance(
                               model()->headerData(row, Qt::Vertical, Qt::DisplayRole).toString()));
    const int marks = 2 * metrics.horizontalAdvance(QStringLiteral("✓ "));
    setFixedWidth(std::clamp(wide + marks + 2 * kSide + 4, 14 * digit, 28 * digit));
}

void MembersHeader::paintEvent(QPaintEvent* event) {
    QHeaderView::paintEvent(event);
    const int end = length() - offset();
    QPainter(viewport()).fillRect(0, end, width(), height() - end, inks().paper);
}

void MembersHeader::paintSection(QPainter* p, const QRect& r, int row) const {
    const auto said = [&](int role) { return model()->headerData(row, Qt::Vertical, role); };
    const Inks& k = inks();
    const int tick = fontMetrics().horizontalAdvance(QStringLiteral("✓ "));
    p->save();
    p->fillRect(r, row == current_ ? k.wash : k.paper);
    p->setPen(QPen(k.line, k.stroke));
    p->drawLine(r.bottomLeft(), r.bottomRight());
    p->drawLine(r.topRight(), r.bottomRight());
    const QRect room = r.adjusted(kSide, 0, -kSide, 0);
    const auto side = static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    p->setPen(k.accent);
    if (said(ClassModel::CameRole).toBool()) p->drawText(room, side, QStringLiteral("✓"));
    p->setPen(k.level[2]);
    if (said(ClassModel::FlaggedRole).toBool())
        p->drawText(room, static_cast<int>(Qt::AlignRight | Qt::AlignVCenter), QStringLiteral("⚑"));
    QFont label = font();
    label.setBold(row == current_);
    p->setFont(label);
    p->setPen(k.ink);
    const QRect name = room.adjusted(tick + 2, 0, -tick, 0);
    p->drawText(name, side,
                p->fontMetrics().elidedText(said(Qt::DisplayRole).toString(), Qt::ElideRight,
                                            name.width()));
    p->restore();
}

} // namespace bw
