// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/writer_lock.hpp"

#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fcntl.h>
#include <sstream>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace bw::store {

namespace fs = std::filesystem;

namespace {
constexpr std::size_t kMostLockBytes = 1'000;

std::string hostName() {
    std::array<char, 256> name{};
    ::gethostname(name.data(), name.size() - 1);
    return name.data();
}

struct Holder {
    std::string host, process, program;

    static Holder read(const fs::path& path) {
        Holder h;
        std::istringstream lines(readStart(path, kMostLockBytes));
        std::getline(lines, h.host);
        std::getline(lines, h.process);
        std::getline(lines, h.program);
        return h;
    }
    static Holder us() { return {hostName(), std::to_string(::getpid()), "Blockwright"}; }

    [[nodiscard]] bool any() const { return !host.empty(); }
    [[nodiscard]] bool elsewhere() const { return any() && host != hostName(); }
    [[nodiscard]] bool alive() const {
        pid_t pid = 0;
        std::from_chars(process.data(), process.data() + process.size(), pid);
        return pid > 0 && (::kill(pid, 0) == 0 || errno == EPERM);
    }
    [[nodiscard]] std::string words() const {
        if (!any())
            return "Another program"; // it has the lock, and is just about to write its name
        return program + " on " + host + ", process " + process;
    }
    [[nodiscard]] std::string lines() const {
        return host + "\n" + process + "\n" + program + "\n";
    }
};

enum class Grip { Ours, Taken, Unknown };

Grip grip(int fd) {
    if (::flock(fd, LOCK_EX | LOCK_NB) == 0) return Grip::Ours;
    return errno == EWOULDBLOCK ? Grip::Taken
                                : Grip::Unknown; // unknown: no flock on this file system
}

// The last holder takes the file away as it leaves; a lock on a file without a name is worth
// nothing.
bool stillNamed(int fd, const fs::path& path) {
    struct stat held {
    }, named{};
    return ::fstat(fd, &held) == 0 && ::stat(path.c_str(), &named) == 0 &&
           held.st_ino == named.st_ino && held.st_dev == named.st_dev;
}

[[noreturn]] void fail(const fs::path& path) {
    throw std::system_error(errno, std::generic_category(), path.string());
}

void write(int fd, const fs::path& path, const std::string& text) {
    if (::ftruncate(fd, 0) != 0 ||
        ::pwrite(fd, text.data(), text.size(), 0) != static_cast<ssize_t>(text.size()))
        fail(path);
}
} // namespace

WriterLock::Attempt WriterLock::take(const fs::path& gymFile) {
    const fs::path path = beside(gymFile, ".lock");
    for (;;) {
        Descriptor fd(::open(path.c_str(), O_CREAT | O_RDWR | O_CLOEXEC, 0600));
        if (!fd.any()) fail(path);
        const Grip g = grip(fd.get());
        if (!stillNamed(fd.get(), path)) continue;
        const Holder holder = Holder::read(path);
        const bool taken = g == Grip::Taken || holder.elsewhere() ||
                           (g == Grip::Unknown && holder.any() && holder.alive());
        if (taken) return {nullptr, holder.words(), holder.elsewhere()};
        std::unique_ptr<WriterLock> lock(new WriterLock(path, std::move(fd)));
        write(lock->fd_.get(), path, Holder::us().lines());
        return {std::move(lock), {}, false};
    }
}

WriterLock::Attempt WriterLock::look(const fs::path& gymFile) {
    const fs::path path = beside(gymFile, ".lock");
    const Descriptor fd(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!fd.any()) return {};
    const Holder holder = Holder::read(path);
    // A shared lock, let go with the descriptor, is not in a writer's way for long.
    const bool held = ::flock(fd.get(), LOCK_SH | LOCK_NB) != 0;
    if (!held && !holder.elsewhere()) return {};
    return {nullptr, holder.words(), holder.elsewhere()};
}

WriterLock::~WriterLock() {
    if (stillNamed(fd_.get(), path_)) ::unlink(path_.c_str()); // not one that another made since
}

} // namespace bw::store
