// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/cell_editor.hpp"

#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

CellEditor::CellEditor(QWidget* parent) : QLineEdit(parent) {
    setFrame(false);
    setTextMargins(4, 0, 2, 0);
    setAutoFillBackground(true);
}

void CellEditor::setTrouble(const QString& trouble) {
    if (trouble == trouble_) return;
    trouble_ = trouble;
    setAccessibleDescription(trouble);
    update();
}

void CellEditor::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    QPainter p(this);
    p.setPen(QPen(inTrouble() ? inks().level[0] : inks().accent, 2,
                  inTrouble() ? Qt::DashLine : Qt::SolidLine));
    p.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace bw
