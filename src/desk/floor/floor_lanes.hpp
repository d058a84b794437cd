// SPDX-License-Identifier: GPL-3.0-or-later
// The median class, one lane a member, or by kit. Left and Right walk over the pieces of a lane, Up
// and Down from lane to lane at the same time, Home and End to a lane's ends; W goes to the next
// wait, Enter to the piece's rows on the Bench; + and - change how wide a minute is, 0 fits the
// class.
#pragma once
#include "desk/floor/lane_paint.hpp"

#include <QAbstractScrollArea>

namespace bw {

class FloorLanes : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit FloorLanes(QWidget* parent);

    void show(FloorView view); // the keyboard stays at its lane and time
    void setOrder(LaneOrder order);
    [[nodiscard]] const LanePlan& plan() const { return plan_; }
    [[nodiscard]] const LanePiece* piece() const; // where the keyboard is; null: nowhere
    [[nodiscard]] int lane() const { return marks_.lane; }
    [[nodiscard]] QString words() const; // of that piece
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom); // 1 to 12

Q_SIGNALS:
    void moved(); // to another piece
    void picked(bw::Place place);

protected:
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Spot {
        int lane = -1, piece = -1;
        bool operator==(const Spot&) const = default;
    };
    [[nodiscard]] LaneGeometry geometryNow() const;
    [[nodiscard]] Spot spotAt(QPointF point) const;
    [[nodiscard]] const LanePiece* at(Spot spot) const;
    [[nodiscard]] QString wordsAt(Spot spot) const;
    [[nodiscard]] Spot beside(int step) const;
    [[nodiscard]] Spot above(int step) const;
    [[nodiscard]] Spot nextWait() const;
    bool walk(int key);
    void moveTo(Spot spot);
    void bringIntoView();
    void pick();
    void measure();
    void describe();

    void layOut();

    FloorView view_;
    LanePlan plan_;
    LaneOrder order_ = LaneOrder::Members;
    double names_ = 0; // the widest name of a lane
    LaneMarks marks_;
    double zoom_ = 1;
};

} // namespace bw
