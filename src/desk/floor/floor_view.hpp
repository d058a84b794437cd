// SPDX-License-Identifier: GPL-3.0-or-later
// One simulated class with all that is needed to show it: the places in an answer are those of the
// block that was played, which is not always the one on the Bench by now.
#pragma once
#include "blockwright/floor/floor.hpp"

#include <memory>
#include <optional>

namespace bw {

struct FloorView {
    std::shared_ptr<const Gym> gym;
    Gym::BlockPtr block;
    FloorOptions asked;
    std::shared_ptr<const FloorAnswer> answer; // null: not yet, or why says why not
    std::optional<Message> why;
    bool whole = false; // with what buys the most; else that is still being worked out
};

} // namespace bw
