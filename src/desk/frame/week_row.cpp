// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/week_row.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/words.hpp"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace bw {

WeekRow::WeekRow(Draft& draft, const Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft), label_(new QLabel(tr("&Week"), this)) {
    setAccessibleName(tr("Week of the month"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3);
    layout->addWidget(label_);
    layout->addSpacing(4);
    new QButtonGroup(this); // the first of its kind: the buttons find it in add()
    for (int n = 1; n <= Week::kMost; ++n) add(actions.find(QStringLiteral("week-%1").arg(n)), n);
    connect(&draft_, &Draft::changed, this, &WeekRow::follow);
    follow();
}

void WeekRow::add(QAction* show, int number) {
    auto* button = new QToolButton(this);
    button->setText(QString::number(number));
    button->setCheckable(true);
    button->setFocusPolicy(Qt::TabFocus);
    button->setToolTip(show->toolTip());
    findChild<QButtonGroup*>()->addButton(button, number);
    connect(button, &QToolButton::clicked, show, &QAction::trigger);
    layout()->addWidget(button);
    buttons_ << button;
}

void WeekRow::follow() {
    const Block* block = draft_.block();
    const auto steps = block ? static_cast<qsizetype>(block->stair.size()) : 0;
    for (qsizetype i = 0; i < buttons_.size(); ++i) {
        QToolButton* button = buttons_[i];
        button->setVisible(i < steps);
        button->setChecked(block && i == draft_.week().index());
        if (button->isChecked()) label_->setBuddy(button);
        if (i < steps)
            button->setAccessibleName(
                tr("Week %1: %2")
                    .arg(i + 1)
                    .arg(weekIntent(block->stair[static_cast<std::size_t>(i)].intent)));
    }
    label_->setVisible(steps > 0);
}

} // namespace bw
