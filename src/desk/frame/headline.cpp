// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/headline.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/block_fields.hpp"
#include "desk/frame/finding_counts.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/month_stepper.hpp"
#include "desk/frame/week_row.hpp"

#include <QHBoxLayout>
#include <QPushButton>

namespace bw {

namespace {
constexpr int kSpacing = 14;
}

Headline::Headline(Draft& draft, const Actions& actions, Notice& notice, QWidget* parent)
    : QWidget(parent), month_(monthPart(draft, actions, notice)), stand_(standPart(draft, actions)),
      layout_(new QBoxLayout(QBoxLayout::LeftToRight, this)) {
    layout_->setContentsMargins(10, 6, 12, 2);
    layout_->setSpacing(kSpacing);
    layout_->setSizeConstraint(QLayout::SetNoConstraint); // minimumSizeHint() says it
    layout_->addWidget(month_, 1);
    layout_->addWidget(stand_, 0);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    dressAsFrame(this);
}

QWidget* Headline::monthPart(Draft& draft, const Actions& actions, Notice& notice) {
    auto* part = new QWidget(this);
    auto* layout = new QHBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(kSpacing);
    layout->addWidget(new MonthStepper(draft, actions, part));
    layout->addWidget(new BlockFields(draft, notice, part), 1);
    return part;
}

QWidget* Headline::standPart(Draft& draft, const Actions& actions) {
    auto* part = new QWidget(this);
    auto* layout = new QHBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(kSpacing);
    layout->addWidget(new WeekRow(draft, actions, part));
    layout->addStretch(1);
    auto* counts = new FindingCounts(draft, part);
    connect(counts, &FindingCounts::clicked, actions.find(QStringLiteral("next-finding")),
            &QAction::trigger);
    layout->addWidget(counts);
    const auto button = [&](const QString& text, const char* id) {
        QAction* action = actions.find(QLatin1String(id));
        auto* made = new QPushButton(text, part); // no Alt key: a page may have its own
        made->setToolTip(action->toolTip());
        made->setAccessibleName(action->iconText());
        connect(made, &QPushButton::clicked, action, &QAction::trigger);
        layout->addWidget(made);
    };
    button(tr("Propose"), "propose");
    button(tr("Print…"), "print");
    return part;
}

bool Headline::fitsOneLine(int width) const {
    const QMargins m = layout_->contentsMargins();
    return width >= month_->minimumSizeHint().width() + kSpacing +
                        stand_->minimumSizeHint().width() + m.left() + m.right();
}

QSize Headline::minimumSizeHint() const {
    const QSize a = month_->minimumSizeHint(), b = stand_->minimumSizeHint();
    const QMargins m = layout_->contentsMargins();
    const bool one = layout_->direction() == QBoxLayout::LeftToRight;
    const int height = one ? std::max(a.height(), b.height()) : a.height() + 4 + b.height();
    return {std::max(a.width(), b.width()) + m.left() + m.right(), height + m.top() + m.bottom()};
}

void Headline::resizeEvent(QResizeEvent* event) {
    const bool one = fitsOneLine(width());
    layout_->setDirection(one ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    layout_->setSpacing(one ? kSpacing : 4);
    updateGeometry();
    QWidget::resizeEvent(event);
}

} // namespace bw
