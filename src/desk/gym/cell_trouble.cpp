// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/cell_trouble.hpp"

#include "desk/frame/theme.hpp"

#include <QAbstractItemView>
#include <QAccessible>
#include <QEvent>

#include <algorithm>

namespace bw {

namespace {
constexpr int kWide = 380, kGap = 3;
}

CellTrouble::CellTrouble(QAbstractItemView& view) : QLabel(view.viewport()), view_(view) {
    setObjectName(QStringLiteral("cell-trouble"));
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setContentsMargins(8, 4, 8, 5);
    setFrameShape(QFrame::Box);
    setAutoFillBackground(true);
    setAccessibleName(tr("What can't be taken"));
    dress();
    hide();
}

void CellTrouble::dress() {
    QPalette p = palette();
    p.setColor(QPalette::Window, inks().wash);
    p.setColor(QPalette::WindowText, inks().level[static_cast<std::size_t>(Level::Look)]);
    setPalette(p);
}

void CellTrouble::tell(const QRect& cell, const QString& sentence) {
    setText(levelShape(Level::Look) + QLatin1Char(' ') + sentence);
    const QRect paper = view_.viewport()->rect();
    const int wide = std::min(kWide, paper.width() - 2 * kGap);
    const int high = heightForWidth(wide);
    const bool below = cell.bottom() + kGap + high <= paper.bottom();
    setGeometry(std::clamp(cell.left(), kGap, std::max(kGap, paper.right() - wide - kGap)),
                below ? cell.bottom() + kGap : std::max(0, cell.top() - kGap - high), wide, high);
    show();
    raise();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void CellTrouble::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::ApplicationPaletteChange) dress();
}

} // namespace bw
