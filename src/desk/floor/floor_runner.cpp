// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_runner.hpp"

#include "blockwright/rules/floor_search.hpp"

#include <algorithm>
#include <chrono>

namespace bw {

namespace {
bool shows(const FloorView& view, const Gym::BlockPtr& block, const std::shared_ptr<const Gym>& gym,
           const FloorOptions& options) {
    return view.block == block && view.gym == gym && view.asked == options;
}
} // namespace

struct FloorRunner::Ask {
    std::uint64_t revision = 0;
    std::shared_ptr<const Gym> gym;
    Gym::BlockPtr block;
    FloorOptions usual;
    std::optional<FloorOptions> want;
    bool needUsual = false, needWanted = false, needStudy = false, needWhole = false;
    bool first = false; // there is no study of this month yet

    [[nodiscard]] bool nothing() const {
        return !needUsual && !needWanted && !needStudy && !needWhole;
    }
};

FloorRunner::FloorRunner(Draft& draft, int runs) : draft_(draft), runs_(runs) {
    soon_.setSingleShot(true);
    connect(&soon_, &QTimer::timeout, this, &FloorRunner::begin);
    connect(&draft_, &Draft::changed, this, &FloorRunner::follow);
    follow();
}

void FloorRunner::want(std::optional<FloorOptions> options) {
    if (options) {
        options->week = week_;
        options->runs = runs_;
        options->timeline = true;
        options->buys = false;
    }
    if (options == want_) return;
    want_ = std::move(options);
    if (block_ && !halted_) soon_.start(soon_.isActive() ? kDelay : 0);
}

// A change that is the answer's own arrival is none.
void FloorRunner::follow() {
    const Gym::BlockPtr block = draft_.shown();
    const std::uint64_t gym = draft_.gym().gymRevision();
    const bool sameDraft = gym_ && block == block_ && gym == gymRevision_;
    if (sameDraft && draft_.week() == week_) return;
    const bool otherMonth = !block || !block_ || block->month != block_->month;
    if (!gym_ || gym != gymRevision_) gym_ = std::make_shared<const Gym>(draft_.gym().gym());
    gymRevision_ = gym;
    block_ = block;
    week_ = draft_.week();
    if (want_) want_->week = week_;
    if (!sameDraft) studied_ = false;
    ++revision_;
    work_.stop();
    soon_.stop();
    setState(block_ && !studied_, false, false);
    if (block_) soon_.start(sameDraft || otherMonth ? 0 : kDelay);
    if (!otherMonth) return;
    usual_ = wanted_ = {};
    Q_EMIT told();
}

FloorOptions FloorRunner::usualOptions() const {
    FloorOptions options;
    options.week = week_;
    options.runs = runs_;
    options.timeline = true;
    return options;
}

FloorRunner::Ask FloorRunner::missing() {
    Ask ask;
    ask.revision = ++revision_;
    ask.gym = gym_;
    ask.block = block_;
    ask.usual = usualOptions();
    ask.want = want_;
    ask.needUsual = !shows(usual_, block_, gym_, ask.usual);
    ask.needWanted = want_ && !shows(wanted_, block_, gym_, *want_);
    ask.needStudy = !studied_;
    ask.first = !draft_.study();
    ask.needWhole = want_ && (ask.needWanted || !wanted_.whole);
    return ask;
}

void FloorRunner::begin() {
    const Ask ask = missing();
    if (ask.nothing()) {
        work_.stop();
        return setState(false, false, false);
    }
    setState(ask.needStudy, true, false);
    work_.start([this, ask](const std::stop_token& stop) { play(ask, stop); });
}

void FloorRunner::halt() {
    ++revision_;
    work_.stop();
    soon_.stop();
    setState(behind_, false, true);
}

void FloorRunner::goOn() {
    if (halted_) begin();
}

void FloorRunner::setState(bool behind, bool running, bool halted) {
    if (behind == behind_ && running == running_ && halted == halted_) return;
    behind_ = behind;
    running_ = running;
    halted_ = halted;
    Q_EMIT stateChanged();
}

// Below here: on the thread of the work. Everything goes through post() to the window's thread.

template <class F> void FloorRunner::post(const Ask& ask, F take) {
    QMetaObject::invokeMethod(
        this,
        [this, revision = ask.revision, take = std::move(take)] {
            if (revision == revision_) take();
        },
        Qt::QueuedConnection);
}

FloorProgress FloorRunner::progress(const Ask& ask) {
    using Clock = std::chrono::steady_clock;
    static constexpr auto kBlink = std::chrono::milliseconds(60);
    return [this, &ask, last = Clock::now()](FloorStage stage, int done, int total) mutable {
        const auto now = Clock::now();
        if (now - last < kBlink) return;
        last = now;
        post(ask, [this, stage, done, total] { Q_EMIT progressed(stage, done, total); });
    };
}

FloorView FloorRunner::simulate(const Ask& ask, const FloorOptions& options,
                                const std::stop_token& stop) {
    FloorView view{ask.gym, ask.block, options, nullptr, std::nullopt, options.buys};
    FloorOptions played = options;
    played.threads = options.buys || std::holds_alternative<StartBest>(options.start)
                         ? spareThreads()
                         : 1; // started sooner than split up
    auto answer = simulateFloor(*ask.gym, *ask.block, played, stop, progress(ask));
    view.asked.buys = false;
    if (answer)
        view.answer = std::make_shared<const FloorAnswer>(std::move(answer).value());
    else
        view.why = answer.why();
    return view;
}

void FloorRunner::play(const Ask& ask, const std::stop_token& stop) {
    const auto show = [&](FloorView FloorRunner::*where, FloorView view) {
        if (stop.stop_requested()) return;
        post(ask, [this, where, view = std::move(view)] {
            this->*where = view;
            Q_EMIT told();
        });
    };
    if (ask.needUsual) {
        const FloorView view = simulate(ask, ask.usual, stop);
        if (ask.want == ask.usual) show(&FloorRunner::wanted_, view);
        show(&FloorRunner::usual_, view);
    }
    if (ask.needWanted && !(ask.needUsual && ask.want == ask.usual))
        show(&FloorRunner::wanted_, simulate(ask, *ask.want, stop));
    if (ask.needStudy && !stop.stop_requested()) playStudy(ask, stop);
    if (ask.needWhole && !stop.stop_requested()) {
        FloorOptions whole = *ask.want;
        whole.buys = true;
        show(&FloorRunner::wanted_, simulate(ask, whole, stop));
    }
    post(ask, [this] { setState(false, false, false); });
}

// The first study of a month is told as soon as the weeks are played; later ones only with the
// changes that help, so that what the Findings offer does not come and go while the coach types.
void FloorRunner::playStudy(const Ask& ask, const std::stop_token& stop) {
    const auto study = [&](const FloorSearch* search) {
        FloorOptions options = ask.usual;
        options.threads = spareThreads();
        auto result = studyFloor(*ask.gym, *ask.block, options, {}, stop, progress(ask), search);
        return std::make_shared<const FloorStudy>(result ? std::move(result).value()
                                                         : FloorStudy{});
    };
    const auto tell = [&](std::shared_ptr<const FloorStudy> done, bool whole) {
        if (stop.stop_requested()) return;
        post(ask, [this, done = std::move(done), whole] {
            studied_ = whole;
            setState(!whole, running_, halted_);
            draft_.takeStudy(done);
        });
    };
    if (ask.first) tell(study(nullptr), false);
    if (stop.stop_requested()) return;
    const FloorSearch search = floorSearch(*ask.gym, *ask.block);
    tell(study(&search), true);
}

} // namespace bw
