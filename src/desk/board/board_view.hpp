// SPDX-License-Identifier: GPL-3.0-or-later
// The month's session over the whole screen, for a display on the wall: one section at a time and
// its clock. Right and Space start the class and lead on, Left leads back, P pauses, R starts the
// section's clock anew, L shows the loads, Esc and F11 leave.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/board/class_clock.hpp"
#include "desk/sheets/sheet_maker.hpp"
#include "sheets/board_sheet.hpp"

#include <QTimer>
#include <QWidget>

#include <functional>

namespace bw {

class BoardView : public QWidget {
    Q_OBJECT
public:
    using Clock = std::function<Millis()>; // steady
    // The draft must outlive it.
    BoardView(Draft& draft, QWidget* parent, Clock clock = {});

    [[nodiscard]] const Board& board() const { return board_; }
    [[nodiscard]] BoardMoment moment() const; // what is on show now

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    void goOn();
    void goBack();
    void pause();
    void restart();
    void toggleLoads();
    [[nodiscard]] bool readLoads(); // false: could not be read, which was told
    [[nodiscard]] int pages() const;
    [[nodiscard]] bool empty() const { return board_.sections.empty(); }
    [[nodiscard]] int section() const; // of the block
    void showNow();
    void tick();

    Draft& draft_;
    Clock clock_;
    SheetMaker maker_;
    Board board_;
    ClassClock class_;
    std::optional<Month> month_;
    int at_ = 0, page_ = 0;
    bool loads_ = false;
    QString told_; // the clock's words when the screen was last painted
    QTimer timer_;
};

} // namespace bw
