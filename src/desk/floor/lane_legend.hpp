// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

namespace bw {

// What the marks in the lanes mean.
class LaneLegend : public QWidget {
    Q_OBJECT
public:
    explicit LaneLegend(QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace bw
