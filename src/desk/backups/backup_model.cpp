// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backup_model.hpp"

#include "desk/backups/backup_words.hpp"

#include <algorithm>

namespace bw {

bool BackupModel::show(std::vector<Backup> backups) {
    const auto same = [](const Backup& a, const Backup& b) { return a.file == b.file; };
    if (std::equal(backups.begin(), backups.end(), backups_.begin(), backups_.end(), same))
        return false;
    beginResetModel();
    backups_ = std::move(backups);
    endResetModel();
    return true;
}

const Backup* BackupModel::at(int row) const {
    return row >= 0 && row < rowCount() ? &backups_[static_cast<std::size_t>(row)] : nullptr;
}

int BackupModel::rowOf(const std::filesystem::path& file) const {
    const auto it = std::find_if(backups_.begin(), backups_.end(),
                                 [&](const Backup& b) { return b.file == file; });
    return it == backups_.end() ? -1 : static_cast<int>(it - backups_.begin());
}

int BackupModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(backups_.size());
}
int BackupModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant BackupModel::data(const QModelIndex& index, int role) const {
    const Backup* backup = at(index.row());
    if (!backup) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::AlignVCenter |
                                   (index.column() == Size ? Qt::AlignRight : Qt::AlignLeft));
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case Made: return backupTime(backup->at);
    case Why: return backupReason(backup->reason);
    case Size: return backupSize(backup->bytes);
    default: return {};
    }
}

QVariant BackupModel::headerData(int section, Qt::Orientation way, int role) const {
    if (way != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case Made: return tr("made");
    case Why: return tr("why");
    case Size: return tr("size");
    default: return {};
    }
}

} // namespace bw
