// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/backups.hpp"

#include <QAbstractTableModel>

namespace bw {

// A row a backup, the last made first.
class BackupModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Made, Why, Size, kColumns };
    explicit BackupModel(QObject* parent) : QAbstractTableModel(parent) {}

    // False, and nothing is told, when they are those that are shown.
    bool show(std::vector<Backup> backups);
    [[nodiscard]] const Backup* at(int row) const;                    // null: no such row
    [[nodiscard]] int rowOf(const std::filesystem::path& file) const; // -1: none

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation way, int role) const override;

private:
    std::vector<Backup> backups_;
};

} // namespace bw
