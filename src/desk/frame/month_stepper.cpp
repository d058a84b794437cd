// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/month_stepper.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/words.hpp"

#include <QAction>
#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>
#include <QToolButton>

namespace bw {

MonthStepper::MonthStepper(Draft& draft, const Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft), start_(actions.find(QStringLiteral("start-next"))),
      name_(new QToolButton(this)), list_(new QMenu(name_)) {
    name_->setMenu(list_);
    name_->setPopupMode(QToolButton::InstantPopup);
    name_->setProperty("bare", true);
    name_->setFocusPolicy(Qt::TabFocus);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    name_->setFont(large);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(arrow(actions.find(QStringLiteral("previous-month")), QStringLiteral("‹")));
    layout->addWidget(name_);
    layout->addWidget(arrow(actions.find(QStringLiteral("next-month")), QStringLiteral("›")));
    connect(list_, &QMenu::aboutToShow, this, &MonthStepper::fill);
    connect(&draft_, &Draft::changed, this, &MonthStepper::follow);
    follow();
}

QToolButton* MonthStepper::arrow(QAction* action, const QString& sign) {
    auto* button = new QToolButton(this);
    button->setText(sign);
    button->setProperty("bare", true);
    button->setFont([this] {
        QFont large = font();
        large.setPointSizeF(large.pointSizeF() * 1.4);
        return large;
    }());
    button->setFocusPolicy(Qt::TabFocus);
    button->setAccessibleName(action->iconText());
    button->setToolTip(action->toolTip());
    connect(button, &QToolButton::clicked, action, &QAction::trigger);
    const auto follow = [button, action] { button->setEnabled(action->isEnabled()); };
    connect(action, &QAction::changed, button, follow);
    follow();
    return button;
}

void MonthStepper::follow() {
    const auto month = draft_.month();
    name_->setText(month ? monthName(*month) : tr("No month yet"));
    name_->setAccessibleName(month ? tr("Month: %1. All months").arg(monthName(*month))
                                   : tr("No month yet. Start one"));
}

void MonthStepper::addMonth(const Block& block) {
    QString text = monthName(block.month);
    if (!block.title.empty()) text += QStringLiteral(" · ") + plain(block.title);
    if (block.format) text += QStringLiteral(" · ") + formatName(*block.format);
    QAction* show = list_->addAction(text.replace(QLatin1Char('&'), QLatin1String("&&")));
    show->setCheckable(true);
    show->setChecked(block.month == draft_.month());
    connect(show, &QAction::triggered, this,
            [this, month = block.month] { draft_.showMonth(month); });
    if (show->isChecked()) list_->setActiveAction(show);
}

void MonthStepper::fill() {
    list_->clear();
    list_->addAction(start_);
    list_->addSeparator();
    const auto& blocks = draft_.gym().gym().blocks;
    for (auto it = blocks.rbegin(); it != blocks.rend(); ++it) addMonth(*it->second);
}

} // namespace bw
