// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/shelf.hpp"

namespace bw::book {

// How many of the two ways, easier and harder, the Shelf has or says why not.
[[nodiscard]] int waysOpen(const Shelf& shelf, const Exercise& e);

} // namespace bw::book
