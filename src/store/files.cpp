// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/files.hpp"

#include <atomic>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace bw::store {

namespace fs = std::filesystem;

namespace {
[[noreturn]] void fail(const fs::path& where) {
    throw std::system_error(errno, std::generic_category(), where.string());
}

fs::path folderOf(const fs::path& file) {
    return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

std::string startInTheMaking(const fs::path& target) {
    return "." + target.filename().string() + ".new-";
}

void sync(const fs::path& path, int flags) {
    const Descriptor fd(::open(path.c_str(), flags | O_CLOEXEC));
    // A folder that can't be synced (EINVAL on some file systems) has nothing to wait for.
    if (!fd.any() || (::fsync(fd.get()) != 0 && errno != EINVAL)) fail(path);
}

// File systems that know no rename without overwriting (EINVAL) can mostly link, which never
// overwrites.
void renameToNew(const fs::path& from, const fs::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return;
    if (errno != EINVAL && errno != ENOSYS) fail(to);
    if (::link(from.c_str(), to.c_str()) != 0) fail(to);
    ::unlink(from.c_str());
}
} // namespace

Descriptor::~Descriptor() {
    if (any()) ::close(fd_);
}
Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
    std::swap(fd_, other.fd_);
    return *this;
}

FileInTheMaking::FileInTheMaking(const fs::path& target) : target_(target) {
    static std::atomic<int> count{0};
    path_ = folderOf(target) /
            (startInTheMaking(target) + std::to_string(::getpid()) + "-" + std::to_string(++count));
    const Descriptor fd(::open(path_.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600));
    if (!fd.any()) fail(path_);
}

FileInTheMaking::~FileInTheMaking() {
    if (placed_) return;
    for (const char* ending : {"", "-journal", "-wal", "-shm"})
        ::unlink(beside(path_, ending).c_str());
}

void FileInTheMaking::putInPlace(const fs::path& name) {
    sync(path_, O_RDONLY);
    renameToNew(path_, name);
    placed();
}

void FileInTheMaking::takePlace() {
    sync(path_, O_RDONLY);
    if (::rename(path_.c_str(), target_.c_str()) != 0) fail(target_);
    placed();
}

void FileInTheMaking::placed() {
    placed_ = true;
    sync(folderOf(target_), O_RDONLY | O_DIRECTORY);
}

fs::path beside(const fs::path& file, std::string_view ending) {
    fs::path out = file;
    out += ending;
    return out;
}

void makeFolders(const fs::path& folder) {
    if (folder.empty() || fs::exists(folder)) return;
    makeFolders(folder.parent_path());
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) fail(folder);
}

bool mayChange(const fs::path& file) {
    return ::access(file.c_str(), R_OK | W_OK) == 0 &&
           ::access(folderOf(file).c_str(), W_OK | X_OK) == 0;
}

void setAside(const fs::path& from, const fs::path& to) {
    if (::link(from.c_str(), to.c_str()) != 0) renameToNew(from, to);
    sync(folderOf(to), O_RDONLY | O_DIRECTORY);
}

// The name of a file in the making says who makes it.
void clearLeftovers(const fs::path& target) {
    const std::string start = startInTheMaking(target);
    std::error_code ignored;
    for (const auto& entry : fs::directory_iterator(folderOf(target), ignored)) {
        const std::string name = entry.path().filename().string();
        if (!name.starts_with(start)) continue;
        pid_t maker = 0;
        std::from_chars(name.data() + start.size(), name.data() + name.size(), maker);
        if (maker > 0 && ::kill(maker, 0) != 0 && errno == ESRCH) fs::remove(entry.path(), ignored);
    }
}

std::string readStart(const fs::path& file, std::size_t bytes) {
    const Descriptor fd(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (!fd.any()) fail(file);
    std::string out(bytes, '\0');
    std::size_t got = 0;
    while (got < bytes) {
        const auto n = ::read(fd.get(), out.data() + got, bytes - got);
        if (n < 0 && errno == EINTR) continue;
        if (n < 0) fail(file);
        if (n == 0) break;
        got += static_cast<std::size_t>(n);
    }
    out.resize(got);
    return out;
}

} // namespace bw::store
