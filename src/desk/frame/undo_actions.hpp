// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "edit/open_gym.hpp"

#include <QObject>

class QAction;

namespace bw {

class Actions;
class Notice;

// Undo and Redo, each saying what of.
class UndoActions : public QObject {
    Q_OBJECT
public:
    UndoActions(OpenGym& gym, Actions& actions, Notice& notice, QObject* parent);

private:
    void follow();
    OpenGym& gym_;
    QAction *undo_, *redo_;
    Connection listening_;
};

} // namespace bw
