// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the draft's class in the background. Soon after each change of the draft, a preview
// included, what runs is stopped and begun again, so that the last answer is always of the last
// draft: first the week on show, then what the Floor has asked for, then the whole month for the
// rule book, then what buys the most. Until an answer is there, the one before stays.
#pragma once
#include "blockwright/floor/study.hpp"
#include "desk/bench/draft.hpp"
#include "desk/floor/background_work.hpp"
#include "desk/floor/floor_view.hpp"

#include <QObject>
#include <QTimer>

namespace bw {

class FloorRunner : public QObject {
    Q_OBJECT
public:
    static constexpr int kDelay = 150; // milliseconds after a change

    // The draft must outlive it. `runs`: classes played for each answer.
    explicit FloorRunner(Draft& draft, int runs = FloorOptions{}.runs);

    // What the Floor wants to see; nothing: it is not on show.
    void want(std::optional<FloorOptions> options);

    // The class as the draft is judged by it: the gym's places, in the week on show.
    [[nodiscard]] const FloorView& usual() const { return usual_; }
    [[nodiscard]] const FloorView& wanted() const { return wanted_; }
    // An answer on show is of an older draft, or is missing.
    [[nodiscard]] bool behind() const { return behind_; }
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] bool halted() const { return halted_; }
    // Nothing runs, and nothing is about to.
    [[nodiscard]] bool settled() const { return !running_ && !soon_.isActive(); }

    void halt(); // until the next change
    void goOn();

Q_SIGNALS:
    void told();         // usual() or wanted()
    void stateChanged(); // behind(), running() or halted()
    void progressed(bw::FloorStage stage, int done, int total);

private:
    struct Ask;
    void follow();
    void begin();
    [[nodiscard]] FloorOptions usualOptions() const;
    [[nodiscard]] Ask missing();
    void play(const Ask& ask, const std::stop_token& stop);
    void playStudy(const Ask& ask, const std::stop_token& stop);
    [[nodiscard]] FloorView simulate(const Ask& ask, const FloorOptions& options,
                                     const std::stop_token& stop);
    [[nodiscard]] FloorProgress progress(const Ask& ask);
    template <class F> void post(const Ask& ask, F take);
    void setState(bool behind, bool running, bool halted);

    Draft& draft_;
    int runs_;
    QTimer soon_;
    std::shared_ptr<const Gym> gym_; // as it was at gymRevision_
    std::uint64_t gymRevision_ = 0;
    Gym::BlockPtr block_;
    Week week_ = Week::first();
    std::optional<FloorOptions> want_;
    FloorView usual_, wanted_;
    bool studied_ = false;
    std::uint64_t revision_ = 0; // of what is asked; an answer to an older one is dropped
    bool behind_ = false, running_ = false, halted_ = false;
    BackgroundWork work_; // the last member: it uses this
};

} // namespace bw
