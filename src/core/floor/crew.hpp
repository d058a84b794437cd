// SPDX-License-Identifier: GPL-3.0-or-later
// Several threads that share out runs by the chunk. The calling thread works along and tells
// progress.
#pragma once
#include "blockwright/floor/options.hpp"

#include <stop_token>

namespace bw {

class Crew {
public:
    Crew(int threads, std::stop_token stop, const FloorProgress& progress)
        : threads_(threads), stop_(std::move(stop)), progress_(progress) {}

    [[nodiscard]] int size() const { return threads_; }
    [[nodiscard]] bool stopped() const { return stop_.stop_requested(); }

    // Calls job(worker, run) for each run from..to - 1; never two at once for one worker. Returns
    // early when stopped. What a job throws is thrown here. Progress is told as done + runs done,
    // of total.
    using Job = std::function<void(int worker, int run)>;
    void work(int from, int to, const Job& job) const;

    void tellAs(FloorStage stage, int total) {
        stage_ = stage;
        total_ = total;
    }

private:
    void tell(int done) const;

    int threads_;
    std::stop_token stop_;
    const FloorProgress& progress_;
    FloorStage stage_ = FloorStage::Classes;
    int total_ = 0;
};

} // namespace bw
