// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

class QWidget;

namespace bw {

class Actions;

// The sheet of keys, the cautions, and what program this is.
void addHelpActions(Actions& actions, QWidget* window);

// Program, Qt, system: to be copied into a report.
[[nodiscard]] QString versionBlock();
[[nodiscard]] QString cautions();

} // namespace bw
