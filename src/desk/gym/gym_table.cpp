// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/gym_table.hpp"

#include "desk/gym/gym_lines.hpp"

#include <QHeaderView>

namespace bw {

GymTable::GymTable(GymLines& lines, QWidget* parent)
    : TypedTable(
          lines,
          [&lines](const QModelIndex& i, const QString& text) { return lines.fault(i, text); },
          parent) {
    setObjectName(QStringLiteral("gym-table"));
    setAccessibleName(tr("The gym"));
    setAccessibleDescription(tr("Enter, or typing, opens what a line says."));
    horizontalHeader()->hide();
    for (int row = 0; row < lines.rowCount(); ++row)
        if (lines.index(row, 0).data(kHeadRole).toBool()) setSpan(row, 0, 1, GymLines::kColumns);
    connect(&lines, &GymLines::refused, this, &GymTable::tell);
    setCurrentIndex(lines.index(1, GymLines::Value));
    layOut();
}

void GymTable::layOut() {
    constexpr double kLabel = 0.52;
    const int label = static_cast<int>(viewport()->width() * kLabel);
    setColumnWidth(GymLines::Label, label);
    setColumnWidth(GymLines::Value, viewport()->width() - label);
}

QModelIndex GymTable::cellFor(const QModelIndex& now, const QString& key) const {
    return TypedTable::cellFor(now.siblingAtColumn(GymLines::Value), key);
}

} // namespace bw
