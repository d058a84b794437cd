// SPDX-License-Identifier: GPL-3.0-or-later
// The exercises of the Shelf that fit the filter, as a table in the order asked for: an adapter.
#pragma once
#include "desk/shelf/shelf_filter.hpp"
#include "desk/shelf/shelf_uses.hpp"

#include <QAbstractTableModel>

#include <unordered_map>

namespace bw {

class ShelfModel : public QAbstractTableModel {
    Q_OBJECT
public:
    static constexpr int kRetiredRole = Qt::UserRole + 1; // bool

    explicit ShelfModel(QObject* parent);

    void refresh(const Gym& gym); // what it shows lives on when the gym changes
    void choose(const QString& filter);
    [[nodiscard]] const QString& trouble() const { return filter_.trouble; }
    [[nodiscard]] const ShelfUses& uses() const { return uses_; }
    [[nodiscard]] const Exercise* exerciseAt(int row) const; // null: no such row
    [[nodiscard]] int rowOf(const ExerciseId& id) const;     // -1: not among those shown

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order) override;

private:
    [[nodiscard]] const ShelfLine& lineAt(int row) const;
    [[nodiscard]] std::vector<std::size_t> fitting(const ShelfFilter& filter) const;
    void arrange();
    void choose();

    std::vector<ShelfLine> lines_;   // in the order asked for
    std::vector<std::size_t> shown_; // of lines_
    std::vector<KitItem> kit_;       // that the lines were written with
    ShelfUses uses_;
    std::optional<Month> latest_;
    QString typed_;
    ShelfFilter filter_;
    int column_ = ShelfLine::Name;
    Qt::SortOrder order_ = Qt::AscendingOrder;
};

} // namespace bw
