// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with members and results beside typing: by the menus of the Ledger's line
// and of the window.
#pragma once
#include "edit/open_gym.hpp"

#include <QObject>

class QAction;

namespace bw {

class Actions;
class LedgerPage;
class Notice;
class WorkLine;

class LedgerActions : public QObject {
    Q_OBJECT
public:
    // All must outlive it.
    LedgerActions(OpenGym& gym, LedgerPage& page, Actions& actions, Notice& notice, WorkLine& work);

private:
    void addMembers(Actions& actions);
    void addResults(Actions& actions);
    void follow(); // the attention is on another member
    void addMember();
    void editMember();
    void writeMember();
    void eraseMember();
    void bringIn();
    void writeTable();

    OpenGym& gym_;
    LedgerPage& page_;
    Notice& notice_;
    WorkLine& work_;
    QAction *edit_ = nullptr, *write_ = nullptr, *erase_ = nullptr;
};

} // namespace bw
