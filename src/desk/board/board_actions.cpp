// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/board/board_actions.hpp"

#include "desk/board/board_view.hpp"
#include "desk/frame/actions.hpp"

#include <QCoreApplication>

namespace bw {

BoardActions::BoardActions(Draft& draft, Actions& actions, QWidget* parent)
    : QObject(parent), draft_(draft), parent_(parent) {
    actions.add(QCoreApplication::translate("bw::Workspace", "Everywhere"), QStringLiteral("board"),
                tr("Show on the wa&ll"), {Qt::Key_F11}, nullptr, [this] { show(); });
}

void BoardActions::show() {
    if (!draft_.block()) return;
    if (!board_) {
        board_ = new BoardView(draft_, parent_);
        board_->setAttribute(Qt::WA_DeleteOnClose);
    }
    board_->showFullScreen();
    board_->activateWindow();
}

} // namespace bw
