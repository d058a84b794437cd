// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/crew.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <vector>

namespace bw {

namespace {
constexpr int kChunk = 16;

// Runs handed out, a chunk at a time.
class Queue {
public:
    Queue(int from, int to) : next_(from), to_(to) {}
    template <class Each> void drain(Each each) {
        for (int from = next_.fetch_add(kChunk); from < to_; from = next_.fetch_add(kChunk))
            each(from, std::min(from + kChunk, to_));
    }
    void close() { next_ = to_; }

private:
    std::atomic<int> next_;
    int to_;
};
} // namespace

void Crew::tell(int done) const {
    if (progress_) progress_(stage_, std::min(done, total_), total_);
}

void Crew::work(int from, int to, const Job& job) const {
    Queue queue(from, to);
    std::vector<std::exception_ptr> failed(static_cast<std::size_t>(threads_));
    const auto help = [&](int worker) {
        try {
            queue.drain([&](int first, int last) {
                if (stopped()) return queue.close();
                if (worker == 0) tell(first);
                for (int run = first; run < last; ++run) job(worker, run);
            });
        } catch (...) {
            failed[static_cast<std::size_t>(worker)] = std::current_exception();
            queue.close();
        }
    };
    {
        std::vector<std::jthread> others;
        const int useful = std::min(threads_, (to - from + kChunk - 1) / kChunk);
        for (int worker = 1; worker < useful; ++worker) others.emplace_back(help, worker);
        help(0);
    }
    for (const auto& e : failed)
        if (e) std::rethrow_exception(e);
    if (!stopped()) tell(to);
}

} // namespace bw
