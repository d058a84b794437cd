// SPDX-License-Identifier: GPL-3.0-or-later
// The stair to be worked on. Left and Right walk over the weeks, Up and Down move the step, a
// number types what is left in reserve; a step can be dragged, its words clicked. While it is
// dragged or typed the draft is previewed; one step is stored at the end.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/stair/stair_paint.hpp"

#include <QWidget>

namespace bw {

class Actions;
class CellEditor;

class StairView : public QWidget {
    Q_OBJECT
public:
    StairView(Draft& draft, Actions& actions, QWidget* parent); // both must outlive it

    void setColumns(int left, int week);
    void finishTyping(); // keeps what is typed, if it can be read
    [[nodiscard]] StairGeometry geometryNow() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void refused(const bw::Message& why); // a change could not be stored
    void trouble(const QString& why);     // what is typed is no effort; empty: it is again

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // of what is typed

private:
    void addActions(Actions& actions);
    void refresh();
    [[nodiscard]] int week() const { return picture_.week; }
    [[nodiscard]] Rir rir(int week) const;
    [[nodiscard]] bool usable() const; // there is a month, and it can be written
    void showWeek(int week);
    void change(const std::function<void(StairStep&)>& edit); // of the week on show
    void preview(Rir rir);
    void moveBy(int tenths);
    void startTyping(const QString& text);
    void typed();
    void endTyping(bool keep);
    void endDrag(bool keep);
    void letGo();
    void popUp(StairGeometry::Line line, QPoint at);
    void hover(QPointF point);

    struct Drag {
        double grip = 0; // from the tread to the mouse
        QPointF from;
        bool moved = false;
        Rir rir;
    };
    Draft& draft_;
    StairPicture picture_;
    int left_ = 240, week_ = 120;
    std::optional<Drag> drag_;
    std::optional<std::pair<Month, int>> held_; // the week that is dragged or typed
    CellEditor* editor_ = nullptr;              // while typing
};

} // namespace bw
