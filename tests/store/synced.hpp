// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <filesystem>
#include <vector>

namespace bw::test {

// Notes what this program asks the system to make lasting by fsync, while it lives. One at a time.
class Synced {
public:
    Synced();
    ~Synced();
    Synced(const Synced&) = delete;
    Synced& operator=(const Synced&) = delete;
    [[nodiscard]] const std::vector<std::filesystem::path>& paths() const { return paths_; }
    void note(std::filesystem::path path) { paths_.push_back(std::move(path)); }

private:
    std::vector<std::filesystem::path> paths_;
};

} // namespace bw::test
