// SPDX-License-Identifier: GPL-3.0-or-later
// Looking a large gym file through for damage takes longer than a coach should wait for the window,
// so it goes on behind it. Nothing is stored in the file before it has ended well.
#pragma once
#include "store/gym_file.hpp"

#include <future>

namespace bw::store {

class LateCheck {
public:
    // Begins, with a connection of its own to the open file; going away waits for the end.
    explicit LateCheck(const std::filesystem::path& path);

    [[nodiscard]] bool ended() const;
    [[nodiscard]] const Result<bool>& wait() const { return sound_.get(); } // why(): the damage

private:
    std::shared_future<Result<bool>> sound_;
};

// None while the file is still looked through; why(): the damage, for which nothing is stored.
[[nodiscard]] std::optional<Result<bool>> lookedThrough(const GymFile& file);

} // namespace bw::store
