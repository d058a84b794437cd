// SPDX-License-Identifier: GPL-3.0-or-later
// Looks into a backup and the gym file beside it, in the background: a large one takes a while.
#pragma once
#include "desk/floor/background_work.hpp"
#include "store/backup_difference.hpp"

#include <QObject>

#include <memory>

namespace bw {

struct BackupLook {
    Result<BackupContents> in;             // of the backup; why(): can't be restored
    Result<BackupContents> now;            // of the gym file; why(): damaged, or not there
    std::optional<BackupDifference> would; // none: the two can't be compared
};
[[nodiscard]] BackupLook lookAt(const std::filesystem::path& gymFile,
                                const std::filesystem::path& backup,
                                const std::stop_token& stop = {});

class BackupReader : public QObject {
    Q_OBJECT
public:
    explicit BackupReader(QObject* parent) : QObject(parent) {}

    // What was being read before is not told any more.
    void read(const std::filesystem::path& gymFile, const std::filesystem::path& backup);
    void rest(); // waits: afterwards it has no file open

Q_SIGNALS:
    void seen(const bw::BackupLook& look);

private:
    int asked_ = 0;
    std::unique_ptr<BackgroundWork> work_; // the last member: it uses this
};

} // namespace bw
