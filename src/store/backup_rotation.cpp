// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup_rotation.hpp"

#include "store/backup_names.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace bw::store {

namespace {
using std::chrono::local_days;

local_days day(const Backup& b) { return dayOf(b.at); }
local_days week(const Backup& b) {
    return day(b) - (std::chrono::weekday(day(b)) - std::chrono::Monday);
}
local_days month(const Backup& b) {
    const std::chrono::year_month_day d(day(b));
    return local_days(d.year() / d.month() / 1);
}

class Rotation {
public:
    Rotation(const std::vector<Backup>& backups, const std::function<bool(const Backup&)>& good)
        : backups_(backups), good_(good), stays_(backups.size(), false) {}

    // One for each of the last `most` periods.
    void keepOnePer(local_days (*period)(const Backup&), std::size_t most) {
        std::vector<std::pair<local_days, std::vector<std::size_t>>> periods;
        for (std::size_t i = 0; i < backups_.size(); ++i) {
            if (backups_[i].reason != BackupReason::Daily) continue;
            const auto when = period(backups_[i]);
            const auto at = std::find_if(periods.begin(), periods.end(),
                                         [&](const auto& p) { return p.first == when; });
            if (at != periods.end())
                at->second.push_back(i);
            else if (periods.size() < most)
                periods.emplace_back(when, std::vector{i});
        }
        for (const auto& [when, rivals] : periods) stays_[best(rivals)] = true;
    }
    void keepLast(BackupReason reason, std::size_t most) {
        for (std::size_t i = 0; i < backups_.size() && most > 0; ++i)
            if (backups_[i].reason == reason) {
                stays_[i] = true;
                --most;
            }
    }
    [[nodiscard]] std::vector<Backup> out() const {
        std::vector<Backup> out;
        for (std::size_t i = 0; i < backups_.size(); ++i)
            if (!stays_[i] && backups_[i].reason != BackupReason::Damaged)
                out.push_back(backups_[i]);
        return out;
    }

private:
    [[nodiscard]] std::size_t best(const std::vector<std::size_t>& rivals) {
        if (rivals.size() == 1) return rivals.front();
        const auto it =
            std::find_if(rivals.begin(), rivals.end(), [&](std::size_t i) { return isGood(i); });
        return it == rivals.end() ? rivals.front() : *it;
    }
    bool isGood(std::size_t i) {
        const auto [it, fresh] = known_.try_emplace(i, false);
        if (fresh) it->second = good_(backups_[i]);
        return it->second;
    }

    const std::vector<Backup>& backups_;
    const std::function<bool(const Backup&)>& good_;
    std::vector<bool> stays_;
    std::map<std::size_t, bool> known_;
};
} // namespace

std::vector<Backup> outOfRotation(const std::vector<Backup>& backups,
                                  const std::function<bool(const Backup&)>& good) {
    Rotation rotation(backups, good);
    rotation.keepLast(BackupReason::Daily, kDaysKept);
    rotation.keepOnePer(week, kWeeksKept);
    rotation.keepOnePer(month, kMonthsKept);
    for (const auto reason :
         {BackupReason::Update, BackupReason::Import, BackupReason::Restore, BackupReason::Asked})
        rotation.keepLast(reason, kOthersKept);
    return rotation.out();
}

} // namespace bw::store
