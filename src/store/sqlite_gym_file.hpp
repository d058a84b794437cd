// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/late_check.hpp"
#include "store/sqlite/database.hpp"
#include "store/writer_lock.hpp"

#include <sys/types.h>

namespace bw::store {

class SqliteGymFile final : public GymFile {
public:
    // `path` as the caller calls it, `real` without symbolic links. `check` goes on; null: the file
    // was looked through.
    SqliteGymFile(std::filesystem::path path, const std::filesystem::path& real,
                  WriterLock::Attempt attempt, sqlite::Database db,
                  std::unique_ptr<const LateCheck> check);

    [[nodiscard]] const std::filesystem::path& path() const override { return path_; }
    [[nodiscard]] bool writable() const override { return attempt_.lock != nullptr; }
    [[nodiscard]] std::string writer() const override { return attempt_.holder; }
    [[nodiscard]] Result<Gym> load() override;
    [[nodiscard]] Result<bool> apply(const std::vector<Change>& changes) override;
    [[nodiscard]] Result<bool>
    eachResult(const std::function<bool(const LiftResult&)>& visit) override;
    [[nodiscard]] Result<std::vector<LiftResult>> resultsOf(const MemberId& member) override;
    [[nodiscard]] Result<bool>
    eachResultOf(const ResultQuery& query,
                 const std::function<bool(const LiftResult&)>& visit) override;
    [[nodiscard]] Result<std::optional<Date>> newestResult() override;
    [[nodiscard]] Result<bool> copyTo(const std::filesystem::path& path) override;
    [[nodiscard]] std::optional<Result<bool>> lookedThrough() const;

private:
    // What is written to a file without its name is lost when it closes.
    void requireWritable() const;
    void requireLookedThrough(); // waits for it
    [[nodiscard]] Message othersTurn() const;

    std::filesystem::path path_;
    WriterLock::Attempt attempt_; // let go after the database is closed
    sqlite::Database db_;
    dev_t device_ = 0;
    ino_t inode_ = 0;
    std::unique_ptr<const LateCheck> check_; // null: it ended well
};

} // namespace bw::store
