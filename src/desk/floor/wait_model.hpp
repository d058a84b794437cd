// SPDX-License-Identifier: GPL-3.0-or-later
// Kit, how long a member waits for it, and how much of the time it is taken: an adapter. The
// longest wait first.
#pragma once
#include "desk/floor/floor_view.hpp"

#include <QAbstractTableModel>

namespace bw {

enum class WaitColumn { Kit, Bar, Mean, P90, Busy };

class WaitModel : public QAbstractTableModel {
    Q_OBJECT
public:
    // Of the Bar column: mean and p90 as shares of the longest p90, a QPointF.
    static constexpr int kBarRole = Qt::UserRole;

    using QAbstractTableModel::QAbstractTableModel;
    void show(const FloorView& view);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(const FloorKitUse& use, WaitColumn column) const;
    [[nodiscard]] QString sentence(const FloorKitUse& use) const;

    std::shared_ptr<const Gym> gym_;
    std::vector<FloorKitUse> rows_;
    double longest_ = 1; // milliseconds
};

} // namespace bw
