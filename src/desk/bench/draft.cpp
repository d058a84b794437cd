// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/draft.hpp"

#include <algorithm>

namespace bw {

namespace {
// Every place of one is a place of the other.
bool sameRows(const Block& a, const Block& b) {
    const auto group = [](const Group& x, const Group& y) {
        return x.slots.size() == y.slots.size();
    };
    return std::ranges::equal(a.sections, b.sections, [&](const Section& x, const Section& y) {
        return std::ranges::equal(x.groups, y.groups, group);
    });
}
} // namespace

Draft::Draft(OpenGym& gym, QObject* parent)
    : QObject(parent), gym_(gym), week_(Week::of(2).value()) {
    listening_ = gym_.changed.connect([this](const std::optional<Spot>& spot) { follow(spot); });
    if (const auto latest = gym_.gym().latest()) month_ = latest->month;
    measure();
}

std::optional<Month> Draft::month() const { return month_; }

Spot Draft::spot() const { return {*month_, place_}; }

void Draft::showMonth(Month month) {
    if (month == month_ || !gym_.gym().block(month)) return;
    month_ = month;
    place_ = {};
    previewing_ = false;
    unmark();
    study_.reset();
    measure();
    Q_EMIT changed();
    Q_EMIT placeChanged(place_);
}

void Draft::showWeek(Week week) {
    if (week == week_) return;
    week_ = week;
    measure();
    Q_EMIT changed();
}

void Draft::setPlace(Place place) {
    if (place == place_) return;
    place_ = place;
    unmark();
    Q_EMIT placeChanged(place_);
}

void Draft::mark(std::map<Place, QString> rows, Place first) {
    if (!rows.empty()) setPlace(first);
    if (rows == marks_) return;
    marks_ = std::move(rows);
    Q_EMIT marksChanged();
}

void Draft::unmark() {
    if (marks_.empty()) return;
    marks_.clear();
    Q_EMIT marksChanged();
}

void Draft::preview(const std::function<void(Block&)>& edit) {
    if (!month_) return;
    auto trial = std::make_shared<Block>(*gym_.gym().block(*month_));
    edit(*trial);
    if (*trial == *block_) return;
    block_ = std::move(trial);
    previewing_ = true;
    measure();
    Q_EMIT changed();
}

void Draft::endPreview() {
    if (!previewing_) return;
    previewing_ = false;
    measure();
    Q_EMIT changed();
}

void Draft::takeStudy(std::shared_ptr<const FloorStudy> study) {
    study_ = std::move(study);
    studied_ = block_;
    measure();
    Q_EMIT changed();
}

void Draft::follow(const std::optional<Spot>& spot) {
    if (gym_.gymRevision() == measured_ && !spot && !previewing_)
        return Q_EMIT changed(); // results
    previewing_ = false;
    unmark(); // places may mean other rows now
    const Place before = place_;
    if (spot) {
        if (spot->month != month_) study_.reset();
        month_ = spot->month;
        place_ = spot->place;
    }
    measure();
    Q_EMIT changed();
    if (place_ != before) Q_EMIT placeChanged(place_);
}

void Draft::measure() {
    const Gym& gym = gym_.gym();
    measured_ = gym_.gymRevision();
    if (month_ && !gym.block(*month_)) {
        month_.reset();
        study_.reset();
    }
    if (!month_)
        if (const auto latest = gym.latest()) month_ = latest->month;
    if (!month_) {
        block_.reset();
        time_ = {};
        verdict_ = {};
        study_.reset();
        return;
    }
    if (!previewing_) block_ = gym.block(*month_);
    time_ = timeSession(gym.settings, gym.shelf, *block_, week_);
    // Until the class is played again, places of the study may mean rows that are not there.
    const bool fits = study_ && sameRows(*studied_, *block_);
    verdict_ = check(gym, *block_, {}, fits ? study_.get() : nullptr);
}

} // namespace bw
