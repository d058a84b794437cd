// SPDX-License-Identifier: GPL-3.0-or-later
// One thread that does the newest piece of work. A new piece asks the one that runs to stop, and
// takes the place of one that still waits.
#pragma once
#include <condition_variable>
#include <functional>
#include <mutex>
#include <stop_token>
#include <thread>

namespace bw {

// How many threads a piece may use, so that one core is left to the window; at least 1.
[[nodiscard]] int spareThreads();

class BackgroundWork {
public:
    // Must not throw; ends soon once it is asked to stop.
    using Piece = std::function<void(std::stop_token)>;

    BackgroundWork();
    ~BackgroundWork(); // asks what runs to stop and waits until it has
    BackgroundWork(const BackgroundWork&) = delete;
    BackgroundWork& operator=(const BackgroundWork&) = delete;

    void start(Piece piece);
    void stop(); // does not wait

private:
    void loop(const std::stop_token& closing);

    std::mutex mutex_;
    std::condition_variable_any wake_;
    Piece next_;
    std::stop_source running_; // of next_ too, from the moment it is handed in
    std::jthread thread_;      // the last member: it uses the others
};

} // namespace bw
