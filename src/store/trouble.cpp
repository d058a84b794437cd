// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/trouble.hpp"

#include <cerrno>
#include <sqlite3.h>

namespace bw::store {

namespace {
// Each source has %1 the file and perhaps %2 the detail.
const char* const kFull =
    "The disk is full, so nothing was stored: “%1” holds what it held before. Free some space on "
    "that disk, then do it again.";
const char* const kReadOnly =
    "“%1” may not be changed where it is, so nothing was stored: it holds what it held before. "
    "Allow writing to the file and its folder, or save a copy in a folder of your own.";
const char* const kBusy = "Another program is busy with “%1”, so nothing was stored: it holds what "
                          "it held before. Wait a "
                          "moment or close that program, then do it again.";
const char* const kDisk =
    "The disk could not read or write “%1” (%2). Nothing was stored: the file holds what it held "
    "before. Check that the disk is connected, then do it again; if this comes back, save a copy "
    "on "
    "another disk.";
const char* const kNotReadable = "“%1” may not be read by you. Nothing was changed. Ask its owner "
                                 "to allow it, or open another file.";
const char* const kCantOpen =
    "“%1” could not be opened (%2). Nothing was changed. If the program was stopped while writing "
    "to it, "
    "copy the file and the one named “-wal” beside it to a folder of your own, and open the copy.";
const char* const kMemory = "There is not enough memory for “%1”. Nothing was stored: it holds "
                            "what it held before. Close other "
                            "programs, then do it again.";
const char* const kUnfit = "A change does not fit the rest of “%1” (%2), so nothing was stored: it "
                           "holds what it held before. "
                           "Leave that change out, then do it again.";
const char* const kOther = "“%1” could not be used (%2). Nothing was stored: it holds what it held "
                           "before. Close it and open it "
                           "again; if this comes back, restore the latest good backup.";
const char* const kMissing =
    "“%1” is not there. Nothing was changed. Check the name and the folder.";

std::string detailOf(const sqlite::Failure& failure) {
    std::string detail = failure.what();
    if (failure.systemError() != 0)
        detail += ": " + std::generic_category().message(failure.systemError());
    return detail;
}
} // namespace

Message trouble(const std::filesystem::path& file, const sqlite::Failure& failure) {
    const auto say = [&](const char* source) {
        return Message{source, {file.string(), detailOf(failure)}};
    };
    switch (failure.code()) {
    case SQLITE_FULL: return say(kFull);
    case SQLITE_READONLY:
    case SQLITE_PERM: return say(kReadOnly);
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return say(kBusy);
    case SQLITE_IOERR:
        return say(failure.systemError() == ENOSPC || failure.systemError() == EDQUOT ? kFull
                                                                                      : kDisk);
    case SQLITE_CANTOPEN: return say(kCantOpen);
    case SQLITE_NOMEM: return say(kMemory);
    case SQLITE_CONSTRAINT:
    case SQLITE_TOOBIG: return say(kUnfit);
    case SQLITE_CORRUPT: return damaged(file, failure.what());
    case SQLITE_NOTADB: return notAGymFile(file);
    default: return say(kOther);
    }
}

Message trouble(const std::filesystem::path& file, const std::system_error& error) {
    const auto say = [&](const char* source) {
        return Message{source, {file.string(), error.code().message()}};
    };
    switch (error.code().value()) {
    case ENOSPC:
    case EDQUOT: return say(kFull);
    case EROFS:
    case EPERM: return say(kReadOnly);
    case EACCES: return say(kNotReadable);
    case EEXIST: return alreadyThere(file);
    case ENOENT:
    case ENOTDIR: return say(kMissing);
    default: return say(kDisk);
    }
}

Message damaged(const std::filesystem::path& file, const std::string& detail) {
    return {
        "“%1” is damaged (%2). It was left exactly as it is. Keep it, and restore the latest good "
        "backup.",
        {file.string(), detail}};
}
Message unreadable(const std::filesystem::path& file, const std::string& detail) {
    return {
        "“%1” holds something that this Blockwright cannot read (%2). It was left exactly as it "
        "is. Restore the latest good backup.",
        {file.string(), detail}};
}
Message notAGymFile(const std::filesystem::path& file) {
    return {
        "“%1” is not a gym file. It was left exactly as it is. Choose a file that ends in .bwgym.",
        {file.string()}};
}
Message alreadyThere(const std::filesystem::path& file) {
    return {"“%1” is there already, and was left as it is. Choose another name.", {file.string()}};
}

} // namespace bw::store
