// SPDX-License-Identifier: GPL-3.0-or-later
// How the parts around the pages look: ink on the desk, thin lines, one accent, and a focus that
// can be seen.
#pragma once
#include "desk/frame/theme.hpp"

class QWidget;

namespace bw {

[[nodiscard]] QString frameStyle(const Inks& inks);
void dressAsFrame(QWidget* part);
// After a change of colours: Qt tells the window of it, but no widget that has a style sheet.
void dressAgain(QWidget* window);

} // namespace bw
