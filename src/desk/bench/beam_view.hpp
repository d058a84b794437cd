// SPDX-License-Identifier: GPL-3.0-or-later
// The beams beside each other. Left and Right go from side to side, Enter or a click marks the rows
// that a side is made of.
#pragma once
#include "desk/bench/beam_paint.hpp"

#include <QWidget>

namespace bw {

class BeamView : public QWidget {
    Q_OBJECT
public:
    explicit BeamView(QWidget* parent);

    void show(std::vector<BeamScale> scales); // of one draft
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    // The patterns of the side under the point; empty where there is none.
    [[nodiscard]] std::vector<Pattern> patternsAt(QPointF point) const;

Q_SIGNALS:
    void picked(const std::vector<bw::Pattern>& patterns, bool go); // go: by Enter

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QRectF room(std::size_t scale) const;
    [[nodiscard]] int sideAt(QPointF point) const; // -1: none; two for each scale
    [[nodiscard]] const std::vector<Pattern>& patternsOf(int side) const;
    void moveCursor(int side);

    std::vector<BeamScale> scales_;
    int cursor_ = 0;
};

} // namespace bw
