// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of the board, on a light and on a dark ground.
#pragma once
#include "sheets/page.hpp"

#include <QColor>

namespace bw {

[[nodiscard]] QColor boardGround(bool dark);
[[nodiscard]] QColor boardColour(Ink ink, bool dark);

} // namespace bw
