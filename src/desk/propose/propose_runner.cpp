// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/propose/propose_runner.hpp"

namespace bw {

namespace {
Result<Proposal> bestOf(const Result<Proposal>& found) {
    if (!found) return found;
    Proposal best = found.value();
    if (best.answers.size() > static_cast<std::size_t>(ProposeRunner::kKeep))
        best.answers.erase(best.answers.begin() + ProposeRunner::kKeep, best.answers.end());
    return best;
}
} // namespace

struct ProposeRunner::Ask {
    std::uint64_t number = 0;
    std::shared_ptr<const Gym> gym;
    Gym::BlockPtr block;
    ProposeOptions options;
    std::stop_source enough;
};

ProposeRunner::ProposeRunner(std::chrono::milliseconds longest) {
    deadline_.setSingleShot(true);
    deadline_.setInterval(longest);
    connect(&deadline_, &QTimer::timeout, this, &ProposeRunner::enough);
}

void ProposeRunner::ask(std::shared_ptr<const Gym> gym, Gym::BlockPtr block,
                        ProposeOptions options) {
    enough_ = {};
    options.threads = spareThreads();
    options.answers = kPlayed;
    options.floor.emplace();
    options.floor->threads = options.threads;
    const Ask ask{++asked_, std::move(gym), std::move(block), std::move(options), enough_};
    looking_ = true;
    deadline_.start();
    work_.start([this, ask](const std::stop_token& dropped) { look(ask, dropped); });
}

void ProposeRunner::enough() { enough_.request_stop(); }

void ProposeRunner::drop() {
    ++asked_;
    looking_ = false;
    deadline_.stop();
    work_.stop();
}

// Below here: on the thread of the work. Everything goes through post() to the window's thread.

template <class F> void ProposeRunner::post(const Ask& ask, F take) {
    QMetaObject::invokeMethod(
        this,
        [this, number = ask.number, take = std::move(take)] {
            if (number == asked_) take();
        },
        Qt::QueuedConnection);
}

void ProposeRunner::look(const Ask& ask, const std::stop_token& dropped) {
    using Clock = std::chrono::steady_clock;
    constexpr std::chrono::milliseconds kBlink{60};
    std::stop_source enough = ask.enough;
    const std::stop_callback ended(dropped, [&enough] { enough.request_stop(); });
    auto last = Clock::now();
    const auto progress = [&](double best, double bound) {
        if (Clock::now() - last < kBlink) return;
        last = Clock::now();
        post(ask, [this, best, bound] { Q_EMIT progressed(best, bound); });
    };
    auto all = propose(*ask.gym, *ask.block, ask.options, enough.get_token(), progress);
    post(ask, [this, found = std::make_shared<const Result<Proposal>>(bestOf(all))] {
        looking_ = false;
        Q_EMIT told(found);
    });
    if (all) // until the deadline ends the looking for others
        play(ask, std::move(all).value(), dropped);
}

void ProposeRunner::play(const Ask& ask, Proposal proposal, const std::stop_token& dropped) {
    FloorPlay play;
    play.options = *ask.options.floor;
    play.keep = kKeep;
    play.drop = dropped;
    play.enough = ask.enough.get_token();
    const auto found = std::make_shared<const Result<Proposal>>(
        onFloor(*ask.gym, *ask.block, ask.options, std::move(proposal), play));
    post(ask, [this, found] {
        deadline_.stop();
        Q_EMIT played(found);
    });
}

} // namespace bw
