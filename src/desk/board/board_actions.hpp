// SPDX-License-Identifier: GPL-3.0-or-later
// The entry that opens the board.
#pragma once
#include "desk/bench/draft.hpp"

#include <QPointer>

class QWidget;

namespace bw {

class Actions;
class BoardView;

class BoardActions : public QObject {
    Q_OBJECT
public:
    // Belongs to the parent, as does the board. The draft must outlive it.
    BoardActions(Draft& draft, Actions& actions, QWidget* parent);

private:
    void show();

    Draft& draft_;
    QWidget* parent_;
    QPointer<BoardView> board_; // null while it is not on show
};

} // namespace bw
