// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"

#include <string>

namespace bw::cli {

// "Saltmarsh Boathouse · 2026-09 · Low tide · heavy-then-long", what is empty left out.
[[nodiscard]] std::string headingOf(const Gym& gym, const Block& block);

} // namespace bw::cli
