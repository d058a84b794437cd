// SPDX-License-Identifier: GPL-3.0-or-later
// Looks for proposals in the background, for a few seconds at most: what was found by then counts.
// Then the classes of the best are played, which may put others first.
#pragma once
#include "blockwright/propose/propose.hpp"
#include "desk/floor/background_work.hpp"

#include <QObject>
#include <QTimer>

#include <chrono>
#include <memory>

namespace bw {

class ProposeRunner : public QObject {
    Q_OBJECT
public:
    static constexpr std::chrono::milliseconds kLongest{5000};
    static constexpr int kKeep = 3, kPlayed = 6; // answers

    explicit ProposeRunner(std::chrono::milliseconds longest = kLongest);

    // A question before it is dropped. options.answers and threads are not looked at.
    void ask(std::shared_ptr<const Gym> gym, Gym::BlockPtr block, ProposeOptions options);
    void enough(); // the best that was found so far is the answer, and comes soon
    void drop();   // no answer comes any more
    [[nodiscard]] bool looking() const { return looking_; }

    using Found = std::shared_ptr<const Result<Proposal>>;

Q_SIGNALS:
    void progressed(double best, double bound);         // penalties
    void told(const bw::ProposeRunner::Found& found);   // on paper, the best kKeep
    void played(const bw::ProposeRunner::Found& found); // later, if there was an answer

private:
    struct Ask;
    void look(const Ask& ask, const std::stop_token& dropped);
    void play(const Ask& ask, Proposal proposal, const std::stop_token& dropped);
    template <class F> void post(const Ask& ask, F take);

    QTimer deadline_;
    std::stop_source enough_;
    std::uint64_t asked_ = 0; // an answer to an older question is dropped
    bool looking_ = false;
    BackgroundWork work_; // the last member: it uses this
};

} // namespace bw
