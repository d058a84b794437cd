// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/accepted_fold.hpp"

#include "desk/bench/fold_head.hpp"

#include <QEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace bw {

AcceptedFold::AcceptedFold(QWidget* parent)
    : QWidget(parent), model_(new FindingsModel(this)), list_(new FindingsList(*model_, this)),
      head_(new FoldHead({}, this)) {
    list_->setAccessibleName(tr("Accepted findings"));
    list_->setAccessibleDescription(tr("Enter goes to the rows, A takes the acceptance back, L "
                                       "shows its limit, R its rule."));
    head_->setObjectName(QStringLiteral("accepted-head"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 2, 4, 4);
    column->setSpacing(0);
    column->addWidget(head_, 0, Qt::AlignLeft);
    column->addWidget(list_);
    connect(head_, &FoldHead::toggled, this, &AcceptedFold::fold);
    connect(list_, &FindingsList::chosen, this, &AcceptedFold::chosen);
    connect(list_, &FindingsList::goWanted, this, &AcceptedFold::goWanted);
    connect(list_, &FindingsList::acceptWanted, this, &AcceptedFold::takeBackWanted);
    connect(list_, &FindingsList::limitWanted, this, &AcceptedFold::limitWanted);
    connect(list_, &FindingsList::ruleWanted, this, &AcceptedFold::ruleWanted);
    connect(list_->itemDelegate(), &QAbstractItemDelegate::sizeHintChanged, this,
            &AcceptedFold::fit, Qt::QueuedConnection);
    parent->installEventFilter(this);
    fold();
}

void AcceptedFold::renew(const std::vector<AcceptedFinding>& accepted, const Block* block) {
    const bool here = list_->hasFocus();
    list_->renew([&] {
        if (block)
            model_->showAccepted(accepted, *block);
        else
            model_->clear();
    });
    const int n = model_->rowCount();
    head_->setText(tr("Accepted: %1").arg(n));
    head_->updateGeometry();
    if (n == 0 && here) parentWidget()->setFocus();
    setVisible(n > 0);
    fit();
}

void AcceptedFold::fold() {
    const bool open = head_->isChecked();
    list_->setVisible(open);
    fit();
}

// As high as its rows, up to two fifths of the panel: the others are what there is to do.
void AcceptedFold::fit() {
    constexpr int kLeast = 40;
    int rows = 0;
    QStyleOptionViewItem option;
    option.initFrom(list_);
    option.widget = list_;
    for (int row = 0; row < model_->rowCount(); ++row)
        rows += list_->itemDelegate()->sizeHint(option, model_->index(row)).height();
    list_->setMaximumHeight(
        std::clamp(rows, kLeast, std::max(kLeast, parentWidget()->height() * 2 / 5)));
}

bool AcceptedFold::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) fit();
    return QWidget::eventFilter(watched, event);
}

} // namespace bw
