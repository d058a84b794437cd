// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/background_work.hpp"

#include "blockwright/floor/options.hpp"

#include <algorithm>
#include <utility>

namespace bw {

int spareThreads() {
    const auto cores = static_cast<int>(std::thread::hardware_concurrency());
    return std::clamp(cores - 1, 1, FloorOptions::kMostThreads);
}

BackgroundWork::BackgroundWork()
    : thread_([this](const std::stop_token& closing) { loop(closing); }) {}

BackgroundWork::~BackgroundWork() {
    stop();
    thread_.request_stop();
    thread_.join();
}

void BackgroundWork::start(Piece piece) {
    const std::lock_guard lock(mutex_);
    running_.request_stop();
    running_ = std::stop_source();
    next_ = std::move(piece);
    wake_.notify_one();
}

void BackgroundWork::stop() {
    const std::lock_guard lock(mutex_);
    running_.request_stop();
    next_ = nullptr;
}

void BackgroundWork::loop(const std::stop_token& closing) {
    std::unique_lock lock(mutex_);
    while (wake_.wait(lock, closing, [this] { return next_ != nullptr; })) {
        const Piece piece = std::exchange(next_, nullptr);
        const std::stop_token stop = running_.get_token();
        lock.unlock();
        piece(stop);
        lock.lock();
    }
}

} // namespace bw
