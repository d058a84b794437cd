// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/week_models.hpp"

#include <algorithm>

namespace bw {

namespace {
const QVariant kLeft = static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
const QVariant kRight = static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
} // namespace

int WeekModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kFirstWeek + weeks_;
}

QVariant WeekModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return section == kName ? kLeft : kRight;
    if (role != Qt::DisplayRole) return {};
    if (section == kName) return tr("exercise");
    return section == kDose ? tr("dose") : tr("week %1").arg(section - kFirstWeek + 1);
}

void LoadModel::show(std::vector<LoadRow> rows, int weeks) {
    beginResetModel();
    rows_ = std::move(rows);
    setWeeks(weeks);
    endResetModel();
}

int LoadModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant LoadModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const LoadRow& row = rows_[static_cast<std::size_t>(index.row())];
    const auto week = static_cast<std::size_t>(index.column() - kFirstWeek);
    const QString text = index.column() == kName   ? row.name
                         : week < row.weeks.size() ? row.weeks[week]
                                                   : QString();
    switch (role) {
    case Qt::DisplayRole: return text;
    case Qt::ToolTipRole: return row.tip;
    case Qt::TextAlignmentRole: return index.column() == kName ? kLeft : kRight;
    case Marked: return row.done;
    case Qt::AccessibleTextRole:
        if (index.column() < kFirstWeek) return tr("%1: %2").arg(row.name, row.tip);
        return tr("week %1, %2 %3").arg(index.column() - kFirstWeek + 1).arg(row.name, text);
    default: return {};
    }
}

void SlotModel::show(std::vector<StairRow> rows, int weeks) {
    const bool same = kFirstWeek + weeks == columnCount() &&
                      std::ranges::equal(rows, rows_, {}, &StairRow::place, &StairRow::place);
    if (!same) beginResetModel();
    rows_ = std::move(rows);
    setWeeks(weeks);
    if (!same) return endResetModel();
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

int SlotModel::rowOf(Place place) const {
    const auto at = std::ranges::find(rows_, place, &StairRow::place);
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int SlotModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant SlotModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const StairRow& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Divider) return !row.section.isEmpty() ? 2 : row.startsGroup ? 1 : 0;
    if (role == Qt::TextAlignmentRole) return index.column() == kName ? kLeft : kRight;
    if (index.column() >= kFirstWeek) return weekData(row, index.column() - kFirstWeek, role);
    switch (role) {
    case Qt::DisplayRole:
        if (index.column() == kDose) return row.dose;
        return QString(row.label + QLatin1String("  ") + row.name);
    case Qt::ToolTipRole: return row.ruled ? tr("%1, for a flag").arg(row.name) : row.name;
    case Qt::AccessibleTextRole:
        if (index.column() == kDose) return tr("dose %1").arg(row.dose);
        return QString(row.label + QLatin1Char(' ') + row.name +
                       (row.main ? tr(", main lift") : QString()) +
                       (row.ruled ? tr(", for a flag") : QString()));
    case Section: return row.section;
    case Main: return row.main;
    case Marked: return row.ruled;
    default: return {};
    }
}

QVariant SlotModel::weekData(const StairRow& row, int week, int role) const {
    const StairCell& cell = row.weeks.at(static_cast<std::size_t>(week));
    switch (role) {
    case Qt::DisplayRole: return cell.plan;
    case Target: return cell.target;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: return cell.spoken;
    default: return {};
    }
}

} // namespace bw
