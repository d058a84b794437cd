// SPDX-License-Identifier: GPL-3.0-or-later
// Backups that the window makes by itself. One that fails is told and stops nothing.
#pragma once
#include "desk/floor/background_work.hpp"
#include "store/backups.hpp"

#include <QObject>
#include <QTimer>

namespace bw {

class GymFile;

// Before much is changed at once. True when there was nothing to copy.
[[nodiscard]] Result<bool> backUpBefore(const GymFile& file, BackupReason reason);

// The one of the day, in the background, soon after a gym file was opened for writing.
class DailyBackup : public QObject {
    Q_OBJECT
public:
    static constexpr std::chrono::milliseconds kLater{3000}; // the window comes first

    DailyBackup(const GymFile& file, QObject* parent, std::chrono::milliseconds later = kLater);

Q_SIGNALS:
    void failed(const bw::Message& why);
    void done(bool made); // false: there was one of today

private:
    void begin();

    std::filesystem::path path_;
    QTimer later_;
    BackgroundWork work_; // the last member: it uses this
};

} // namespace bw
