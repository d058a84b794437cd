// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/board/class_clock.hpp"

namespace bw {

void ClassClock::start(int section, Millis now) { starts_.emplace(section, running(now)); }

void ClassClock::togglePause(Millis now) {
    if (pausedAt_) {
        paused_ += now - *pausedAt_;
        pausedAt_.reset();
    } else {
        pausedAt_ = now;
    }
}

std::optional<Millis> ClassClock::elapsed(int section, Millis now) const {
    const auto found = starts_.find(section);
    if (found == starts_.end()) return std::nullopt;
    return running(now) - found->second;
}

} // namespace bw
