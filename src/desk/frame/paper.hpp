// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QFrame;

namespace bw {

// The look of a sheet of paper on the desk.
void lookLikePaper(QFrame& frame);

} // namespace bw
