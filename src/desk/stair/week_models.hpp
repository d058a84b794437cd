// SPDX-License-Identifier: GPL-3.0-or-later
// The two tables under the stair, as adapters: what goes before the weeks, then a column a week.
#pragma once
#include "desk/stair/stair_rows.hpp"

#include <QAbstractTableModel>

namespace bw {

class WeekModel : public QAbstractTableModel {
    Q_OBJECT
public:
    // Qt::DisplayRole of a week is what is asked of everybody; these go beside it.
    enum Role { Target = Qt::UserRole, Section, Divider, Marked, Main };
    static constexpr int kName = 0, kDose = 1, kFirstWeek = 2;

    using QAbstractTableModel::QAbstractTableModel;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

protected:
    void setWeeks(int weeks) { weeks_ = weeks; } // between begin- and endResetModel

private:
    int weeks_ = 0;
};

// Minutes, RPE and load; the second column stays empty.
class LoadModel : public WeekModel {
    Q_OBJECT
public:
    using WeekModel::WeekModel;
    void show(std::vector<LoadRow> rows, int weeks);
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<LoadRow> rows_;
};

// A row a slot.
class SlotModel : public WeekModel {
    Q_OBJECT
public:
    using WeekModel::WeekModel;
    // Only tells of changed cells where the slots are the same.
    void show(std::vector<StairRow> rows, int weeks);
    [[nodiscard]] const StairRow& row(int at) const { return rows_[static_cast<std::size_t>(at)]; }
    [[nodiscard]] int rowOf(Place place) const; // -1: none
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    [[nodiscard]] QVariant weekData(const StairRow& row, int week, int role) const;
    std::vector<StairRow> rows_;
};

} // namespace bw
