// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who looks on while a section is played. Times count from the section's start.
#pragma once
#include "core/floor/floor_plan.hpp"

namespace bw {

class FloorWatch {
public:
    virtual ~FloorWatch() = default;
    // A set, a wait or a rest of a member, when its end is known. Slot: index into the plan; of a
    // rest that of the group's first slot. Round from 0.
    virtual void did(FloorDoing what, int member, Ticks from, Ticks to, Place place, int round) = 0;
    // The kit that was short when a wait began; told before the wait itself, kit by kit.
    virtual void lacked(int /*member*/, int /*kit*/) {}
    // Load: -1 where loads are not looked at.
    virtual void took(int /*member*/, int /*kit*/, int /*load*/, int /*count*/, Ticks) {}
    virtual void gaveBack(int /*member*/, int /*kit*/, int /*load*/, int /*count*/, Ticks) {}
    virtual void joinedLine(int /*member*/, Ticks) {}
    virtual void leftLine(int /*member*/, Ticks) {}
};

} // namespace bw
