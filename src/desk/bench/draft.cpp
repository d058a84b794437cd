// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/draft.hpp"

#include <algorithm>

namespace bw {

namespace {
// A study of a draft with other sections or groups says nothing of this one.
bool speaksOf(const FloorStudy& study, const Block& block) {
    return std::ranges::all_of(study.weeks, [&](const FloorWeek& week) {
        return std::ranges::equal(week.answer->sections, block.sections,
                                  [](const FloorSectionEnd& end, const Section& section) {
                                      return end.kind == section.kind &&
                                             end.groups.size() == section.groups.size();
                                  });
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
    Q_EMIT placeChanged(place_);
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
    measure();
    Q_EMIT changed();
}

void Draft::follow(const std::optional<Spot>& spot) {
    previewing_ = false;
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
    const bool heard = study_ && speaksOf(*study_, *block_);
    verdict_ = check(gym, *block_, {}, heard ? study_.get() : nullptr);
}

} // namespace bw
