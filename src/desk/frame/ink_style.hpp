// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QProxyStyle>

namespace bw {

// The plain style, with boxes to tick that can be seen on light and on dark paper.
class InkStyle : public QProxyStyle {
    Q_OBJECT
public:
    InkStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;

private:
    static void drawFocus(const QStyleOption& option, QPainter& painter);
    static void drawBox(const QStyleOption& option, QPainter& painter);
};

} // namespace bw
