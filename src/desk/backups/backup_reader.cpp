// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backup_reader.hpp"

namespace bw {

BackupLook lookAt(const std::filesystem::path& gymFile, const std::filesystem::path& backup,
                  const std::stop_token& stop) {
    BackupLook look{lookIntoBackup(backup), lookIntoBackup(gymFile), {}};
    if (!look.in || !look.now || stop.stop_requested()) return look;
    if (auto would = compareWithBackup(gymFile, backup)) look.would = std::move(would).value();
    return look;
}

void BackupReader::read(const std::filesystem::path& gymFile, const std::filesystem::path& backup) {
    if (!work_) work_ = std::make_unique<BackgroundWork>();
    work_->start([this, gymFile, backup, now = ++asked_](const std::stop_token& stop) {
        if (stop.stop_requested()) return;
        QMetaObject::invokeMethod(
            this,
            [this, now, look = lookAt(gymFile, backup, stop)] {
                if (now == asked_) Q_EMIT seen(look);
            },
            Qt::QueuedConnection);
    });
}

void BackupReader::rest() {
    ++asked_;
    work_.reset();
}

} // namespace bw
