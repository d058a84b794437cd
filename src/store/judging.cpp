// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/judging.hpp"

#include "store/files.hpp"
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
} // namespace

bool leftOver(const fs::path& path, const char* ending) {
    std::error_code none;
    const auto size = fs::file_size(beside(path, ending), none);
    return !none && size > 0;
}

Database::Mode lookingMode(const fs::path& path) {
    std::error_code ignored;
    const bool sideFiles =
        fs::exists(beside(path, "-wal"), ignored) || fs::exists(beside(path, "-journal"), ignored);
    return sideFiles ? Database::Mode::Read : Database::Mode::Frozen;
}

void refuseForeign(const fs::path& path, const Migrations& steps) {
    if (!fs::is_regular_file(path)) throw Refusal{notAGymFile(path)};
    const std::string header = readStart(path, kHeaderBytes);
    if (header.size() < kHeaderBytes || header.compare(0, kMagic.size(), kMagic) != 0 ||
        bigEndian32(header, kApplicationIdAt) != kApplicationId)
        throw Refusal{notAGymFile(path)};
    const auto version = bigEndian32(header, kUserVersionAt);
    if (version > static_cast<std::int64_t>(steps.size())) refuseNewer(path, version, steps.size());
}

int versionOf(Database& db, const fs::path& path, const Migrations& steps) {
    const auto version = db.number("PRAGMA user_version").value_or(0);
    if (version > static_cast<std::int64_t>(steps.size())) refuseNewer(path, version, steps.size());
    if (version < 1) throw Refusal{damaged(path, "it has no version")};
    return static_cast<int>(version);
}

int soundVersion(Database& db, const fs::path& path, const Migrations& steps) {
    const int version = versionOf(db, path, steps);
    requireSound(db, path);
    return version;
}

void requireSoundGym(Database& db, const fs::path& path) {
    const auto r = db.query("SELECT quick_check FROM sqlite_schema, pragma_quick_check(name) "
                            "WHERE type = 'table' AND name <> 'result' AND quick_check <> 'ok'");
    if (r.any()) throw Refusal{damaged(path, r->string(0))};
}

void requireSound(Database& db, const fs::path& path) {
    const auto r = db.query("PRAGMA quick_check(1)");
    if (r.any() && r->text(0) != "ok") throw Refusal{damaged(path, r->string(0))};
}

} // namespace bw::store
