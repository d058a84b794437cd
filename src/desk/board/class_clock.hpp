// SPDX-License-Identifier: GPL-3.0-or-later
// When each section of a class was started. A pause stops all of them.
#pragma once
#include "blockwright/model/quantity.hpp"

#include <map>
#include <optional>

namespace bw {

// Every `now` is of one steady clock.
class ClassClock {
public:
    void start(int section, Millis now); // one that was started goes on
    void restart(int section, Millis now) { starts_[section] = running(now); }
    void togglePause(Millis now);

    [[nodiscard]] bool paused() const { return pausedAt_.has_value(); }
    [[nodiscard]] std::optional<Millis> elapsed(int section, Millis now) const;

private:
    [[nodiscard]] Millis running(Millis now) const { return pausedAt_.value_or(now) - paused_; }

    std::map<int, Millis> starts_;
    std::optional<Millis> pausedAt_;
    Millis paused_{0}; // in all, but for the pause that lasts
};

} // namespace bw
