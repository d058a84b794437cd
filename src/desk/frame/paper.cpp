// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/paper.hpp"

#include <QFrame>

namespace bw {

void lookLikePaper(QFrame& frame) {
    frame.setObjectName(QStringLiteral("paper"));
    frame.setFrameShape(QFrame::StyledPanel);
    frame.setAutoFillBackground(true);
    frame.setBackgroundRole(QPalette::Base);
}

} // namespace bw
