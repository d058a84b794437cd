// SPDX-License-Identifier: GPL-3.0-or-later
// The hour to scale along the bottom of the Bench. Left and Right walk over the sections, or over
// the groups once Down has led into them; Up leads back; Enter goes to the rows of a piece, as a
// click does.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/bench/minute_rail_paint.hpp"

#include <QWidget>

namespace bw {

class MinuteRail : public QWidget {
    Q_OBJECT
public:
    MinuteRail(Draft& draft, QWidget* parent); // the draft must outlive it

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] const RailPlan& plan() const { return plan_; }
    [[nodiscard]] Place cursor() const { return cursor_; }
    // Above the bar, room for what is laid over it to the same scale.
    [[nodiscard]] QRectF stripRect() const { return geometryNow().strip; }
    [[nodiscard]] double xOf(ExactTime time) const { return geometryNow().x(time); }
    // How late the simulated class may end, for the scale to hold; and that in words, for the head.
    void showFloor(ExactTime latest, const QString& words);
    // The piece under a point of this widget; the session where there is none.
    [[nodiscard]] Place placeAt(QPointF point) const;

Q_SIGNALS:
    void picked(bw::Place place); // after Draft::setPlace: show these rows

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void refresh();
    void follow(Place place);
    void moveCursor(Place place);
    void pick(Place place);
    [[nodiscard]] Place keyTarget(int key) const;
    [[nodiscard]] RailGeometry geometryNow() const;
    [[nodiscard]] QString tipAt(QPointF point) const;
    [[nodiscard]] QString sentenceFor(Place place) const; // empty: no piece there

    Draft& draft_;
    RailPlan plan_;
    ExactTime latest_{}; // of the simulated class
    QString floorWords_;
    Place cursor_;
};

} // namespace bw
