// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_model.hpp"

#include <algorithm>

namespace bw {

namespace {
// Less than 0: a first. What says nothing comes last, whichever way round the others are.
int compared(const ShelfLine& a, const ShelfLine& b, int column) {
    const auto at = static_cast<std::size_t>(column);
    switch (column) {
    case ShelfLine::Last: return a.last == b.last ? 0 : *a.last < *b.last ? -1 : 1;
    case ShelfLine::Months: return a.months - b.months;
    case ShelfLine::Pattern:
        return static_cast<int>(a.entry->patterns.largest()) -
               static_cast<int>(b.entry->patterns.largest());
    default: return QString::compare(a.cells[at], b.cells[at], Qt::CaseInsensitive);
    }
}
} // namespace

ShelfModel::ShelfModel(QObject* parent) : QAbstractTableModel(parent), uses_(Gym{}) {}

void ShelfModel::refresh(const Gym& gym) {
    std::unordered_map<const Exercise*, ShelfLine*> before; // those that are as they were
    if (gym.kit == kit_)
        for (ShelfLine& line : lines_) before.emplace(line.entry.get(), &line);
    uses_ = ShelfUses(gym);
    std::vector<ShelfLine> lines;
    lines.reserve(gym.shelf.size());
    for (const Shelf::Entry& entry : gym.shelf.entries()) {
        const auto it = before.find(entry.get());
        lines.push_back(it != before.end() ? std::move(*it->second) : shelfLine(gym, entry));
        const auto& uses = uses_.of(entry->id);
        lines.back().setUse(uses.empty() ? std::nullopt : std::optional(uses.back().month),
                            static_cast<int>(uses.size()));
    }
    const auto latest = gym.latest();
    beginResetModel();
    kit_ = gym.kit;
    latest_ = latest ? std::optional(latest->month) : std::nullopt;
    lines_ = std::move(lines);
    arrange();
    choose();
    endResetModel();
}

void ShelfModel::choose(const QString& filter) {
    if (filter == typed_) return;
    beginResetModel();
    typed_ = filter;
    choose();
    endResetModel();
}

std::vector<std::size_t> ShelfModel::fitting(const ShelfFilter& filter) const {
    std::vector<std::size_t> rows;
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (filter.fits(lines_[i])) rows.push_back(i);
    return rows;
}

// A last word that finds nothing, but could become one of the filter's own, is waited for.
void ShelfModel::choose() {
    filter_ = ShelfFilter::parse(typed_, latest_);
    shown_ = fitting(filter_);
    if (!shown_.empty() || !isUnfinished(typed_)) return;
    filter_ = ShelfFilter::parse(typed_.section(u' ', 0, -2), latest_);
    shown_ = fitting(filter_);
}

void ShelfModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= ShelfLine::kColumns || (column == column_ && order == order_))
        return;
    beginResetModel();
    column_ = column;
    order_ = order;
    arrange();
    choose();
    endResetModel();
}

void ShelfModel::arrange() {
    const auto at = static_cast<std::size_t>(column_);
    const bool up = order_ == Qt::AscendingOrder;
    std::sort(lines_.begin(), lines_.end(), [&](const ShelfLine& a, const ShelfLine& b) {
        if (a.cells[at].isEmpty() != b.cells[at].isEmpty()) return b.cells[at].isEmpty();
        const int ab = a.cells[at].isEmpty() ? 0 : compared(a, b, column_);
        if (ab != 0) return up ? ab < 0 : ab > 0;
        const int named = compared(a, b, ShelfLine::Name);
        return named != 0 ? named < 0 : a.entry->id < b.entry->id;
    });
}

const ShelfLine& ShelfModel::lineAt(int row) const {
    return lines_[shown_[static_cast<std::size_t>(row)]];
}

const Exercise* ShelfModel::exerciseAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : lineAt(row).entry.get();
}

int ShelfModel::rowOf(const ExerciseId& id) const {
    const auto it = std::find_if(shown_.begin(), shown_.end(),
                                 [&](std::size_t i) { return lines_[i].entry->id == id; });
    return it == shown_.end() ? -1 : static_cast<int>(it - shown_.begin());
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}
int ShelfModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ShelfLine::kColumns;
}

QVariant ShelfModel::data(const QModelIndex& i, int role) const {
    if (!checkIndex(i, CheckIndexOption::IndexIsValid)) return {};
    const ShelfLine& line = lineAt(i.row());
    const QString& text = line.cells[static_cast<std::size_t>(i.column())];
    switch (role) {
    case Qt::DisplayRole: return text;
    case Qt::AccessibleTextRole: {
        const QString said =
            tr("%1: %2", "column, what stands in it")
                .arg(headerData(i.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                     text.isEmpty() ? tr("none") : text);
        return line.entry->retired ? tr("%1, retired").arg(said) : said;
    }
    case Qt::TextAlignmentRole:
        return static_cast<int>(i.column() == ShelfLine::Months ? Qt::AlignRight : Qt::AlignLeft);
    case kRetiredRole: return line.entry->retired;
    default: return {};
    }
}

QVariant ShelfModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    const QStringList names{tr("exercise"), tr("pattern"), tr("for"),       tr("kit"),
                            tr("demands"),  tr("load"),    tr("last used"), tr("months")};
    return names.value(section);
}

} // namespace bw
