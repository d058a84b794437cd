// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/opening.hpp"

#include "store/making.hpp"
#include "store/sqlite_gym_file.hpp"
#include "store/trouble.hpp"

namespace bw::store {

namespace fs = std::filesystem;
using sqlite::Database;

namespace {
// Bytes of the database header (https://www.sqlite.org/fileformat2.html#the_database_header).
constexpr std::size_t kHeaderBytes = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kUserVersionAt = 60, kApplicationIdAt = 68;

std::int64_t bigEndian32(const std::string& bytes, std::size_t at) {
    std::int64_t n = 0;
    for (std::size_t i = at; i < at + 4; ++i) n = n << 8 | static_cast<unsigned char>(bytes[i]);
    return n;
}

bool leftOver(const fs::path& path, const char* ending) {
    std::error_code none;
    const auto size = fs::file_size(beside(path, ending), none);
    return !none && size > 0;
}

// How to look at a file without any right to change it.
Database::Mode lookingMode(const fs::path& path) {
    std::error_code ignored;
    const bool sideFiles =
        fs::exists(beside(path, "-wal"), ignored) || fs::exists(beside(path, "-journal"), ignored);
    return sideFiles ? Database::Mode::Read : Database::Mode::Frozen;
}

std::string programThatReads(const fs::path& path) {
    try {
        Database db(path, lookingMode(path), false);
        if (const auto r = db.query("SELECT program FROM readable_by"); r.any())
            return r->string(0);
    } catch (const sqlite::Failure&) { // a file from the future may say it elsewhere
    }
    return "?";
}

[[noreturn]] void refuseNewer(const fs::path& path, std::int64_t version, std::size_t known) {
    throw Refusal{
        {"“%1” was written by a newer Blockwright: it needs version %2 or later (it is a "
         "gym file of version %3, this program reads up to %4). It was left exactly as it "
         "is. Update Blockwright, then open it again.",
         {path.string(), programThatReads(path), std::to_string(version), std::to_string(known)}}};
}

// Judged by its first bytes, so that SQLite never touches what is not ours.
void refuseForeign(const fs::path& path, const Migrations& steps) {
    if (!fs::is_regular_file(path)) throw Refusal{notAGymFile(path)};
    const std::string header = readStart(path, kHeaderBytes);
    if (header.size() < kHeaderBytes || header.compare(0, kMagic.size(), kMagic) != 0 ||
        bigEndian32(header, kApplicationIdAt) != kApplicationId)
        throw Refusal{notAGymFile(path)};
    const auto version = bigEndian32(header, kUserVersionAt);
    if (version > static_cast<std::int64_t>(steps.size())) refuseNewer(path, version, steps.size());
}

int soundVersion(Database& db, const fs::path& path, const Migrations& steps) {
    const auto version = db.number("PRAGMA user_version").value_or(0);
    if (version > static_cast<std::int64_t>(steps.size())) refuseNewer(path, version, steps.size());
    if (version < 1) throw Refusal{damaged(path, "it has no version")};
    const auto r = db.query("PRAGMA quick_check(1)");
    if (r.any() && r->text(0) != "ok") throw Refusal{damaged(path, r->string(0))};
    return static_cast<int>(version);
}

WriterLock::Attempt claim(const fs::path& path, GymFile::Access access) {
    if (access == GymFile::Access::Read || !mayChange(path)) return WriterLock::look(path);
    try {
        return WriterLock::take(path);
    } catch (const std::system_error&) { // no room for a lock file: then we read
        return {};
    }
}

void prepare(Database& db, const fs::path& path, bool ours, const Migrations& steps) {
    const int version = soundVersion(db, path, steps);
    if (version < static_cast<int>(steps.size())) {
        if (!ours)
            throw Refusal{
                {"“%1” was written by an older Blockwright and can't be brought up to date "
                 "where it is. It was left exactly as it is. Close it elsewhere, or copy it "
                 "to a folder of your own; then open it again.",
                 {path.string()}}};
        bringUpToDate(db, path, version, steps);
    }
    if (ours) db.script("PRAGMA journal_mode = WAL");
    db.foldOnClose(true);
}

std::unique_ptr<GymFile> opened(const fs::path& given, GymFile::Access access,
                                const Migrations& steps) {
    const fs::path path = fs::canonical(given); // one file has one lock, whatever it is called
    refuseForeign(path, steps);
    WriterLock::Attempt attempt = claim(path, access);
    const bool ours = attempt.lock != nullptr;
    // A reader that may write to the folder lets SQLite make its side files, and take them away
    // again.
    const auto mode = ours || mayChange(path) ? Database::Mode::Write : lookingMode(path);
    // Looking into a damaged file must not fold a log into it; a log of our own may go as it comes.
    Database db(path, mode, !leftOver(path, "-wal"));
    prepare(db, path, ours, steps);
    return std::make_unique<SqliteGymFile>(given, path, std::move(attempt), std::move(db));
}
} // namespace

Result<std::unique_ptr<GymFile>> createGymFile(const fs::path& path, const Migrations& steps) {
    return answered<Result<std::unique_ptr<GymFile>>>(path, [&] {
        makeGymFile(path, steps);
        return opened(path, GymFile::Access::Write, steps);
    });
}

Result<std::unique_ptr<GymFile>> openGymFile(const fs::path& path, GymFile::Access access,
                                             const Migrations& steps) {
    return answered<Result<std::unique_ptr<GymFile>>>(path,
                                                      [&] { return opened(path, access, steps); });
}

} // namespace bw::store
