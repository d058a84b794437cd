// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of print. No ink carries a meaning of its own.
#pragma once
#include "sheets/page.hpp"

#include <QColor>

namespace bw {

// Black and white turns every ink black, but for the tint, which leaves the paper white.
[[nodiscard]] QColor colourOf(Ink ink, bool blackAndWhite);
// Contrast of two colours, 1 to 21 (WCAG 2.1, "contrast ratio").
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace bw
