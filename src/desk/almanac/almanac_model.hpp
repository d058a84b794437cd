// SPDX-License-Identifier: GPL-3.0-or-later
// Lines and months as a table: an adapter, no rules of its own. Columns are months; a row's header
// is the line's name.
#pragma once
#include "desk/almanac/almanac_line.hpp"

#include <QAbstractTableModel>

#include <memory>

namespace bw {

class AlmanacModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using Months = std::shared_ptr<const Almanac>;
    using QAbstractTableModel::QAbstractTableModel;

    // Every line has a cell for each month of the almanac, or none at all. `shown` is the month
    // that the top line of the window speaks of; its column is marked.
    void show(Months almanac, std::vector<AlmanacLine> lines, std::optional<Month> shown);

    [[nodiscard]] const AlmanacLine& line(int row) const {
        return lines_.at(static_cast<std::size_t>(row));
    }
    [[nodiscard]] const std::vector<AlmanacLine>& lines() const { return lines_; }
    [[nodiscard]] const AlmanacMonth& month(int column) const {
        return almanac_->months.at(static_cast<std::size_t>(column));
    }
    [[nodiscard]] bool isShown(int column) const { return month(column).month == shown_; }
    // What stands in a cell, in a sentence; empty where nothing does.
    [[nodiscard]] QString sentence(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    Months almanac_;
    std::vector<AlmanacLine> lines_;
    std::optional<Month> shown_;
};

} // namespace bw
