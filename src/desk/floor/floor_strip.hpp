// SPDX-License-Identifier: GPL-3.0-or-later
// Above the bar of the Minute rail, to its scale: when the simulated class ends each section and
// itself, with a thread from where the plan has it. Left and Right walk over the ends; Enter, or a
// click, leads to the Floor.
#pragma once
#include "desk/bench/minute_rail.hpp"
#include "desk/floor/floor_runner.hpp"

#include <QWidget>

namespace bw {

class FloorStrip : public QWidget {
    Q_OBJECT
public:
    // A child of the rail, where that leaves room for it. Draft, runner and rail must outlive it.
    FloorStrip(Draft& draft, FloorRunner& runner, MinuteRail& rail);

    struct End {
        Place place; // the session: the class
        QString words;
        ExactTime planned{};
        FloorTimes times;
    };
    [[nodiscard]] const std::vector<End>& ends() const { return ends_; }

Q_SIGNALS:
    void floorWanted();

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // the rail's size
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void refresh();
    void place();
    void readEnds();
    void describe();
    [[nodiscard]] QRectF markRect(std::size_t index) const;
    [[nodiscard]] QString tipAt(QPointF point) const;
    void paintEnd(QPainter& painter, std::size_t index) const;
    void paintBeyond(QPainter& painter) const;

    Draft& draft_;
    FloorRunner& runner_;
    MinuteRail& rail_;
    std::vector<End> ends_;
    int now_ = 0; // where the keyboard is
};

} // namespace bw
