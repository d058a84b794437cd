// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/reason_line.hpp"

#include "desk/frame/trouble.hpp"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace bw {

ReasonLine::ReasonLine(QWidget* parent)
    : QWidget(parent), question_(new QLabel(this)), trouble_(new QLabel(this)),
      answer_(new QLineEdit(this)) {
    answer_->setMaxLength(200);
    answer_->setPlaceholderText(tr("Enter keeps it, Esc leaves"));
    answer_->installEventFilter(this);
    question_->setBuddy(answer_);
    for (QLabel* words : {question_, trouble_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
    }
    trouble_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 10);
    column->setSpacing(4);
    for (QWidget* w : std::initializer_list<QWidget*>{question_, answer_, trouble_})
        column->addWidget(w);
    connect(answer_, &QLineEdit::textEdited, trouble_, &QLabel::hide);
    hide();
}

void ReasonLine::ask(const QString& of) { ask(tr("Why may this stay (%1)?").arg(of), QString()); }

void ReasonLine::ask(const QString& question, const QString& answer) {
    question_->setText(question);
    answer_->setAccessibleName(question_->text());
    answer_->setText(answer);
    answer_->selectAll();
    trouble_->hide();
    show();
    answer_->setFocus(Qt::OtherFocusReason);
}

void ReasonLine::leave() {
    if (isHidden()) return;
    const bool here = answer_->hasFocus();
    hide();
    if (here) Q_EMIT left();
}

void ReasonLine::tell(const QString& trouble) { tellTrouble(*trouble_, trouble); }

bool ReasonLine::eventFilter(QObject* watched, QEvent* event) {
    if (watched != answer_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter)
        Q_EMIT given(answer_->text());
    else if (key == Qt::Key_Escape)
        leave();
    else
        return false;
    return true;
}

} // namespace bw
