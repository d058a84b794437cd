// SPDX-License-Identifier: GPL-3.0-or-later
// How the parts around the pages look: ink on the desk, thin lines, one accent, and a focus that
// can be seen.
#pragma once
#include "desk/frame/theme.hpp"

class QWidget;

namespace bw {

[[nodiscard]] QString frameStyle(const Inks& inks);
// Gives the widget that look, now and whenever the colours change.
void dressAsFrame(QWidget* part);

} // namespace bw
