// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/paper.hpp"

#include <QFrame>
#include <QLabel>

#include <algorithm>

namespace bw {

void lookLikePaper(QFrame& frame) {
    frame.setObjectName(QStringLiteral("paper"));
    frame.setFrameShape(QFrame::StyledPanel);
    frame.setAutoFillBackground(true);
    frame.setBackgroundRole(QPalette::Base);
}

QFont smallFont(QFont font) {
    font.setPointSizeF(std::max(7.5, font.pointSizeF() * 0.85));
    return font;
}

QLabel* makeWords(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QLabel* makeSentence(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    return label;
}

} // namespace bw
