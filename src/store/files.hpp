// SPDX-License-Identifier: GPL-3.0-or-later
// The few things asked of the file system besides SQLite. All throw std::system_error on failure.
#pragma once
#include <filesystem>
#include <string>
#include <string_view>

namespace bw::store {

// Owns a file descriptor.
class Descriptor {
public:
    explicit Descriptor(int fd = -1) : fd_(fd) {}
    ~Descriptor();
    Descriptor(Descriptor&& other) noexcept : fd_(other.fd_) { other.fd_ = -1; }
    Descriptor& operator=(Descriptor&& other) noexcept;
    [[nodiscard]] int get() const { return fd_; }
    [[nodiscard]] bool any() const { return fd_ >= 0; }

private:
    int fd_;
};

// A new, empty file beside `target` that only its owner may read. Removed, with what SQLite puts
// beside it, when this goes, unless it was put in place.
class FileInTheMaking {
public:
    explicit FileInTheMaking(const std::filesystem::path& target);
    ~FileInTheMaking();
    FileInTheMaking(const FileInTheMaking&) = delete;
    FileInTheMaking& operator=(const FileInTheMaking&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    // Makes it last on the disk and gives it the name of the target, which must not exist (EEXIST).
    void putInPlace() { putInPlace(target_); }
    // The same under another name in that folder.
    void putInPlace(const std::filesystem::path& name);
    // Makes it last and gives it the name of the target in one step, whatever had that name.
    void takePlace();

private:
    void placed();
    std::filesystem::path target_, path_;
    bool placed_ = false;
};

// NAME-wal, NAME.lock and the like.
[[nodiscard]] std::filesystem::path beside(const std::filesystem::path& file,
                                           std::string_view ending);
// Makes missing folders, for the owner alone.
void makeFolders(const std::filesystem::path& folder);
// May we change this file, and put files beside it?
[[nodiscard]] bool mayChange(const std::filesystem::path& file);
// A second name for a file, in a folder of the same disk; where the disk knows no such thing the
// file moves there. `to` must not exist.
void setAside(const std::filesystem::path& from, const std::filesystem::path& to);
// Removes what programs that were ended while they made this file have left beside it.
void clearLeftovers(const std::filesystem::path& target);
[[nodiscard]] std::string readStart(const std::filesystem::path& file, std::size_t bytes);

} // namespace bw::store
