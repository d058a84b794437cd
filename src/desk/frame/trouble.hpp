// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

class QLabel;

namespace bw {

// Shows what is wrong: in the colour of a look, with its shape, and read out by a screen reader.
void tellTrouble(QLabel& label, const QString& what);

} // namespace bw
