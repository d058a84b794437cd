// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_model.hpp"

#include "desk/almanac/almanac_words.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

namespace bw {

void AlmanacModel::show(Months almanac, std::vector<AlmanacLine> lines,
                        std::optional<Month> shown) {
    beginResetModel();
    almanac_ = std::move(almanac);
    lines_ = std::move(lines);
    shown_ = shown;
    endResetModel();
}

QString AlmanacModel::sentence(const QModelIndex& index) const {
    const AlmanacLine& at = line(index.row());
    const AlmanacMonth& m = month(index.column());
    QString text =
        cellSentence(at, static_cast<std::size_t>(index.column()), m.month, m.block != nullptr);
    if (at.mark && isShown(index.column()))
        text += QStringLiteral(" %1 %2: %3")
                    .arg(levelShape(at.mark->level), levelWord(at.mark->level), at.mark->text);
    return text;
}

int AlmanacModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}
int AlmanacModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || !almanac_ ? 0 : static_cast<int>(almanac_->months.size());
}

QVariant AlmanacModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index)) return {};
    if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) return sentence(index);
    if (role != Qt::DisplayRole) return {};
    const AlmanacLine& at = line(index.row());
    const auto column = static_cast<std::size_t>(index.column());
    if (column < at.cells.size() && at.cells[column].used())
        return QString::number(at.cells[column].streak);
    if (column < at.figures.size()) return at.figures[column];
    if (column < at.ratios.size() && at.ratios[column]) return ratioText(*at.ratios[column]);
    return {};
}

QVariant AlmanacModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const int most = orientation == Qt::Horizontal ? columnCount() : rowCount();
    if (section < 0 || section >= most) return {};
    const bool spoken = role == Qt::AccessibleTextRole || role == Qt::ToolTipRole;
    if (orientation == Qt::Vertical) {
        if (role == Qt::DisplayRole) return line(section).name;
        return spoken ? lineSentence(line(section)) : QVariant();
    }
    const AlmanacMonth& m = month(section);
    if (role == Qt::DisplayRole) return shortMonth(m.month);
    if (!spoken) return {};
    QString text = monthName(m.month);
    if (!m.block) return tr("%1: no block").arg(text);
    if (!m.block->title.empty()) text += QStringLiteral(" · ") + plain(m.block->title);
    if (m.block->format) text += QStringLiteral(" · ") + formatName(*m.block->format);
    return text;
}

Qt::ItemFlags AlmanacModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || !checkIndex(index)) return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace bw
