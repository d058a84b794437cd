// SPDX-License-Identifier: GPL-3.0-or-later
// The tallies by pattern as a list: an adapter. What the month trains, and the window beside it.
#pragma once
#include "blockwright/balance/balance.hpp"

#include <QAbstractListModel>

namespace bw {

class TallyModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { MonthRole = Qt::UserRole + 1, WindowRole, MostRole }; // double, in sets

    using QAbstractListModel::QAbstractListModel;

    // `months` of the window; 1: it is not shown.
    void show(const Balances& balances, int months);
    [[nodiscard]] static Pattern patternOf(int row) { return static_cast<Pattern>(row); }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    [[nodiscard]] QString spoken(int row) const;

    std::array<double, kCount<Pattern>> month_{}, window_{};
    int months_ = 1;
};

} // namespace bw
