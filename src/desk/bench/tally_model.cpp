// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/tally_model.hpp"

#include "desk/bench/beam_scale.hpp"
#include "desk/frame/words.hpp"

#include <algorithm>

namespace bw {

void TallyModel::show(const Balances& balances, int months) {
    if (month_ == balances.block.patterns && window_ == balances.window.patterns &&
        months_ == months)
        return;
    month_ = balances.block.patterns;
    window_ = balances.window.patterns;
    months_ = months;
    Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

int TallyModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(kCount<Pattern>);
}

QString TallyModel::spoken(int row) const {
    const auto i = static_cast<std::size_t>(row);
    QString text =
        tr("%1: %2 sets a session").arg(patternName(patternOf(row)), setsText(month_[i]));
    if (months_ > 1) text += tr(", %1 over %2 months").arg(setsText(window_[i])).arg(months_);
    return text;
}

QVariant TallyModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid)) return {};
    const auto i = static_cast<std::size_t>(at.row());
    switch (role) {
    case Qt::DisplayRole: return patternName(patternOf(at.row()));
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: return spoken(at.row());
    case MonthRole: return month_[i];
    case WindowRole: return months_ > 1 ? QVariant(window_[i]) : QVariant();
    case MostRole:
        return std::max(*std::max_element(month_.begin(), month_.end()),
                        *std::max_element(window_.begin(), window_.end()));
    default: return {};
    }
}

} // namespace bw
