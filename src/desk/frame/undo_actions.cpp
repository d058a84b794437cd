// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/undo_actions.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/words.hpp"

namespace bw {

UndoActions::UndoActions(OpenGym& gym, Actions& actions, Notice& notice, QObject* parent)
    : QObject(parent), gym_(gym),
      undo_(actions.add(tr("Everywhere"), QStringLiteral("undo"), tr("&Undo"),
                        {Qt::CTRL | Qt::Key_Z}, nullptr, [&] { notice.hear(gym.undo()); })),
      redo_(actions.add(tr("Everywhere"), QStringLiteral("redo"), tr("&Redo"),
                        {Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y}, nullptr,
                        [&] { notice.hear(gym.redo()); })),
      listening_(gym.changed.connect([this](const auto&) { follow(); })) {
    Actions::explain(undo_, tr("there is nothing to undo"));
    Actions::explain(redo_, tr("there is nothing to redo"));
    follow();
}

void UndoActions::follow() {
    const Message* undo = gym_.undoText();
    const Message* redo = gym_.redoText();
    undo_->setEnabled(undo);
    redo_->setEnabled(redo);
    undo_->setText(undo ? tr("&Undo: %1").arg(say(*undo)) : tr("&Undo"));
    redo_->setText(redo ? tr("&Redo: %1").arg(say(*redo)) : tr("&Redo"));
}

} // namespace bw
