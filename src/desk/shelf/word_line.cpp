// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/word_line.hpp"

#include "desk/frame/theme.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QRegularExpression>

namespace bw {

namespace {
constexpr qsizetype kShortest = 2;

QString lastWord(const QString& text, WordLine::Between between) {
    static const QRegularExpression comma(QStringLiteral("[,+]\\s*|\\bor\\s+"));
    if (between == WordLine::Between::Blanks) return text.section(u' ', -1);
    return text.section(comma, -1);
}
} // namespace

WordLine::WordLine(Between between, QWidget* parent) : CellEditor(parent), between_(between) {}

QString WordLine::rest() const {
    if (cursorPosition() != text().size() || hasSelectedText()) return {};
    const QString typed = lastWord(text(), between_);
    if (typed.size() < kShortest) return {};
    for (const QString& word : words_)
        if (word.startsWith(typed, Qt::CaseInsensitive)) return word.mid(typed.size());
    return {};
}

void WordLine::keyPressEvent(QKeyEvent* event) {
    const bool takes = event->key() == Qt::Key_Right || event->key() == Qt::Key_End;
    const QString more = takes && event->modifiers() == Qt::NoModifier ? rest() : QString();
    if (more.isEmpty()) return CellEditor::keyPressEvent(event);
    insert(more);
}

void WordLine::paintEvent(QPaintEvent* event) {
    CellEditor::paintEvent(event);
    const QString more = hasFocus() ? rest() : QString();
    if (more.isEmpty()) return;
    QPainter p(this);
    p.setPen(inks().quiet);
    const QRect cursor = cursorRect();
    p.drawText(QRect(cursor.center().x() + 1, cursor.top(), width(), cursor.height()),
               Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, more);
}

} // namespace bw
