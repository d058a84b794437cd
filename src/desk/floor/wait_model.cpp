// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/wait_model.hpp"

#include "desk/floor/floor_words.hpp"

#include <QPointF>

#include <algorithm>

namespace bw {

void WaitModel::show(const FloorView& view) {
    beginResetModel();
    gym_ = view.gym;
    rows_ = view.answer ? view.answer->kit : std::vector<FloorKitUse>{};
    std::ranges::stable_sort(rows_, [](const FloorKitUse& a, const FloorKitUse& b) {
        return a.wait.mean != b.wait.mean ? a.wait.mean > b.wait.mean : a.busy > b.busy;
    });
    longest_ = 1;
    for (const FloorKitUse& use : rows_)
        longest_ =
            std::max({longest_, static_cast<double>(use.wait.p90.count()), use.wait.mean.count()});
    endResetModel();
}

int WaitModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WaitModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 5; }

QString WaitModel::text(const FloorKitUse& use, WaitColumn column) const {
    switch (column) {
    case WaitColumn::Kit: return kitName(*gym_, use.kit);
    case WaitColumn::Mean: return floorClock(use.wait.mean);
    case WaitColumn::P90: return floorClock(use.wait.p90);
    case WaitColumn::Busy: return percent(use.busy);
    case WaitColumn::Bar: break;
    }
    return {};
}

QString WaitModel::sentence(const FloorKitUse& use) const {
    const KitItem* item = gym_->findKit(use.kit);
    return tr("%1, %2 in the gym: a member waits %3 on average, 9 in 10 at most %4; in use %5 of "
              "the time")
        .arg(kitName(*gym_, use.kit))
        .arg(item ? item->units : 0)
        .arg(floorClock(use.wait.mean), floorClock(use.wait.p90), percent(use.busy));
}

QVariant WaitModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const FloorKitUse& use = rows_[static_cast<std::size_t>(index.row())];
    const auto column = static_cast<WaitColumn>(index.column());
    switch (role) {
    case Qt::DisplayRole: return text(use, column);
    case Qt::ToolTipRole: return sentence(use);
    case Qt::AccessibleTextRole:
        return column == WaitColumn::Kit || column == WaitColumn::Bar
                   ? sentence(use)
                   : headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() +
                         QLatin1Char(' ') + text(use, column);
    case Qt::TextAlignmentRole:
        return column == WaitColumn::Kit ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                                         : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case kBarRole:
        if (column != WaitColumn::Bar) return {};
        return QPointF(use.wait.mean.count() / longest_,
                       static_cast<double>(use.wait.p90.count()) / longest_);
    default: return {};
    }
}

QVariant WaitModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return section == 0 ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                            : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<WaitColumn>(section)) {
    case WaitColumn::Kit: return tr("kit");
    case WaitColumn::Mean: return tr("mean");
    case WaitColumn::P90: return tr("90 %");
    case WaitColumn::Busy: return tr("in use");
    case WaitColumn::Bar: break;
    }
    return QString();
}

} // namespace bw
