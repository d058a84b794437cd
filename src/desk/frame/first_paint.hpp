// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

#include <functional>

class QWidget;

namespace bw {

// Milliseconds since the kernel started this process; its clock for that counts in hundredths.
[[nodiscard]] double millisSinceStart();

// Calls once, when the window has painted itself with all that is in it.
void afterFirstPaint(QWidget* window, std::function<void()> then);

} // namespace bw
