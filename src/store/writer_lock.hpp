// SPDX-License-Identifier: GPL-3.0-or-later
// Who may write to a gym file: whoever holds NAME.lock beside it. The file says host, process and
// program, one a line; the lock itself is the kernel's (flock), so a killed writer leaves none
// behind. A lock file written on another host is respected as long as it is there: from here nobody
// can tell whether that writer still lives.
#pragma once
#include "store/files.hpp"

#include <memory>

namespace bw::store {

class WriterLock {
public:
    struct Attempt {
        std::unique_ptr<WriterLock> lock; // null: not given
        std::string holder;               // "Blockwright on HOST, process 123" when another has it
        bool elsewhere = false;           // that other is on another host
    };
    // Throws std::system_error when no lock file can be made.
    static Attempt take(const std::filesystem::path& gymFile);
    // Who writes just now, without trying for it.
    static Attempt look(const std::filesystem::path& gymFile);
    ~WriterLock();
    WriterLock(const WriterLock&) = delete;
    WriterLock& operator=(const WriterLock&) = delete;

private:
    WriterLock(std::filesystem::path path, Descriptor fd)
        : path_(std::move(path)), fd_(std::move(fd)) {}
    std::filesystem::path path_;
    Descriptor fd_;
};

} // namespace bw::store
