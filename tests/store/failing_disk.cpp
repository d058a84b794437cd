// SPDX-License-Identifier: GPL-3.0-or-later
#include "failing_disk.hpp"

#include <new>
#include <optional>
#include <sqlite3.h>

namespace bw::test {

namespace {
constexpr int kLasting = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL;

sqlite3_vfs* real = nullptr;
sqlite3_vfs ours;
std::optional<int> left;
int failure = SQLITE_OK;
int waiting = 0;

// What SQLite takes for the file; the real one's state follows it in memory.
struct File {
    sqlite3_file base;
    bool lasting;
    int unsynced;
    sqlite3_file* under() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
File& of(sqlite3_file* f) { return *reinterpret_cast<File*>(f); }
sqlite3_file* under(sqlite3_file* f) { return of(f).under(); }
const sqlite3_io_methods& methods(sqlite3_file* f) { return *under(f)->pMethods; }

int allowed() {
    if (!left) return SQLITE_OK;
    if (*left == 0) return failure;
    --*left;
    return SQLITE_OK;
}

int close(sqlite3_file* f) {
    waiting -= of(f).unsynced;
    return methods(f).xClose(under(f));
}
int write(sqlite3_file* f, const void* bytes, int count, sqlite3_int64 at) {
    if (const int code = allowed(); code != SQLITE_OK) return code;
    if (of(f).lasting) ++of(f).unsynced, ++waiting;
    return methods(f).xWrite(under(f), bytes, count, at);
}
int truncate(sqlite3_file* f, sqlite3_int64 size) {
    if (const int code = allowed(); code != SQLITE_OK) return code;
    return methods(f).xTruncate(under(f), size);
}
int sync(sqlite3_file* f, int flags) {
    if (const int code = allowed(); code != SQLITE_OK) return code;
    const int code = methods(f).xSync(under(f), flags);
    if (code == SQLITE_OK) waiting -= of(f).unsynced, of(f).unsynced = 0;
    return code;
}

int read(sqlite3_file* f, void* to, int count, sqlite3_int64 at) {
    return methods(f).xRead(under(f), to, count, at);
}
int size(sqlite3_file* f, sqlite3_int64* s) { return methods(f).xFileSize(under(f), s); }
int lock(sqlite3_file* f, int level) { return methods(f).xLock(under(f), level); }
int unlock(sqlite3_file* f, int level) { return methods(f).xUnlock(under(f), level); }
int reserved(sqlite3_file* f, int* out) { return methods(f).xCheckReservedLock(under(f), out); }
int control(sqlite3_file* f, int op, void* arg) {
    return methods(f).xFileControl(under(f), op, arg);
}
int sector(sqlite3_file* f) { return methods(f).xSectorSize(under(f)); }
int traits(sqlite3_file* f) { return methods(f).xDeviceCharacteristics(under(f)); }
int shmMap(sqlite3_file* f, int page, int bytes, int extend, void volatile** out) {
    return methods(f).xShmMap(under(f), page, bytes, extend, out);
}
int shmLock(sqlite3_file* f, int at, int n, int flags) {
    return methods(f).xShmLock(under(f), at, n, flags);
}
void shmBarrier(sqlite3_file* f) { methods(f).xShmBarrier(under(f)); }
int shmUnmap(sqlite3_file* f, int remove) { return methods(f).xShmUnmap(under(f), remove); }

// Version 2: with shared memory, without memory-mapped reading.
const sqlite3_io_methods kMethods{2,       close,      read,     write,   truncate, sync,   size,
                                  lock,    unlock,     reserved, control, sector,   traits, shmMap,
                                  shmLock, shmBarrier, shmUnmap, nullptr, nullptr};

int open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* outFlags) {
    auto* file = new (f) File{};
    file->lasting = (flags & kLasting) != 0;
    const int code = real->xOpen(real, name, file->under(), flags, outFlags);
    file->base.pMethods = file->under()->pMethods ? &kMethods : nullptr;
    return code;
}
} // namespace

FailingDisk::FailingDisk() {
    real = sqlite3_vfs_find(nullptr);
    ours = *real;
    ours.zName = "failing-disk";
    ours.szOsFile = static_cast<int>(sizeof(File)) + real->szOsFile;
    ours.xOpen = open;
    waiting = 0;
    sqlite3_vfs_register(&ours, 1);
}
FailingDisk::~FailingDisk() {
    mend();
    sqlite3_vfs_unregister(&ours);
    sqlite3_vfs_register(real, 1);
}
void FailingDisk::failAfter(int count, int code) {
    left = count;
    failure = code;
}
void FailingDisk::mend() { left.reset(); }
int FailingDisk::unsynced() const { return waiting; }

} // namespace bw::test
