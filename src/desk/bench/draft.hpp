// SPDX-License-Identifier: GPL-3.0-or-later
// What the Bench shows: one month's block in one week, judged. While a cell is being typed in, a
// preview stands for the block: everything is measured with it, nothing of it is stored.
#pragma once
#include "blockwright/floor/study.hpp"
#include "blockwright/rules/check.hpp"
#include "blockwright/time/timing.hpp"
#include "edit/open_gym.hpp"

#include <QObject>

#include <functional>
#include <map>
#include <optional>

namespace bw {

class Draft : public QObject {
    Q_OBJECT
public:
    explicit Draft(OpenGym& gym, QObject* parent = nullptr); // shows the latest month, week 2

    [[nodiscard]] OpenGym& gym() const { return gym_; }
    [[nodiscard]] const Block* block() const { return block_.get(); } // null: the gym has no month
    [[nodiscard]] Gym::BlockPtr shown() const { return block_; }      // likewise
    [[nodiscard]] std::optional<Month> month() const;
    [[nodiscard]] Week week() const { return week_; }
    [[nodiscard]] const SessionTime& time() const { return time_; }       // of week()
    [[nodiscard]] const CheckResult& verdict() const { return verdict_; } // of all weeks
    [[nodiscard]] Place place() const { return place_; }
    [[nodiscard]] Spot spot() const; // only when there is a block

    void showMonth(Month month); // no such month: nothing changes
    void showWeek(Week week);
    void setPlace(Place place);
    // Rows that something beside the sheet speaks of, and a word on each: "1.5". The place becomes
    // the first of them; they stay marked until it changes, or the block does. None: no marks.
    void mark(std::map<Place, QString> rows, Place first);
    [[nodiscard]] const std::map<Place, QString>& marks() const { return marks_; }

    // The block as it would be if what is being typed were already entered.
    void preview(const std::function<void(Block&)>& edit);
    void endPreview();

    // What the simulated class says of this month. While the block changes it stays as it is, until
    // the next one; another month begins without one.
    void takeStudy(std::shared_ptr<const FloorStudy> study);
    [[nodiscard]] const FloorStudy* study() const { return study_.get(); } // null: none yet

Q_SIGNALS:
    void changed(); // block, month, week or verdict
    void placeChanged(bw::Place place);
    void marksChanged();

private:
    void follow(const std::optional<Spot>& spot);
    void measure();
    void unmark();

    OpenGym& gym_;
    Connection listening_;
    std::optional<Month> month_;
    Week week_;
    Place place_;
    std::map<Place, QString> marks_;
    std::uint64_t measured_ = 0; // gymRevision() of the gym that was measured
    Gym::BlockPtr block_;
    bool previewing_ = false;
    SessionTime time_;
    std::shared_ptr<const FloorStudy> study_;
    std::shared_ptr<const Block> studied_; // the rows that the study is about
    CheckResult verdict_;
};

} // namespace bw
