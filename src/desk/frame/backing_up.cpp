// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/backing_up.hpp"

#include "store/gym_file.hpp"

namespace bw {

namespace {
bool onDisk(const GymFile& file) {
    std::error_code unknown;
    return file.writable() && std::filesystem::exists(file.path(), unknown);
}
} // namespace

Result<bool> backUpBefore(const GymFile& file, BackupReason reason) {
    if (!onDisk(file)) return true;
    const auto made = backUp(file.path(), reason, wallTime());
    if (!made) return made.why();
    return true;
}

DailyBackup::DailyBackup(const GymFile& file, QObject* parent, std::chrono::milliseconds later)
    : QObject(parent), path_(file.path()) {
    later_.setSingleShot(true);
    connect(&later_, &QTimer::timeout, this, &DailyBackup::begin);
    if (onDisk(file)) later_.start(later);
}

void DailyBackup::begin() {
    work_.start([this](const std::stop_token&) {
        const auto made = backUpDaily(path_, wallTime());
        QMetaObject::invokeMethod(
            this,
            [this, made] {
                if (!made)
                    Q_EMIT failed(made.why());
                else
                    Q_EMIT done(made->has_value());
            },
            Qt::QueuedConnection);
    });
}

} // namespace bw
