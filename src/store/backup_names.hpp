// SPDX-License-Identifier: GPL-3.0-or-later
// What the name of a backup says: 0042-2026-11-25-1830-daily-9f3a1c2b.bwgym is the 42nd, made on
// that day at 18:30, with the checksum of all its bytes. The name is the only place where this is
// kept, so that it comes to be, and goes, with the file.
#pragma once
#include "store/backups.hpp"

namespace bw::store {

struct BackupName {
    int number = 0;
    WallTime at;
    BackupReason reason = BackupReason::Daily;
    std::optional<std::uint32_t> checksum; // none: set aside as it was

    [[nodiscard]] std::string text() const;
    static std::optional<BackupName> parse(std::string_view text); // none: not made by us
};

[[nodiscard]] std::chrono::local_days dayOf(WallTime at);

} // namespace bw::store
