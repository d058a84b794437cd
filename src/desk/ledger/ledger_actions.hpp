// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with members and results beside typing: by the menus of the Ledger's line.
#pragma once
#include "edit/open_gym.hpp"

#include <QObject>

class QAction;
class QMenu;

namespace bw {

class LedgerPage;
class Notice;
class WorkLine;

class LedgerActions : public QObject {
    Q_OBJECT
public:
    // All must outlive it.
    LedgerActions(OpenGym& gym, LedgerPage& page, Notice& notice, WorkLine& work);

private:
    QAction* add(QMenu& menu, const char* name, const QString& text, void (LedgerActions::*run)(),
                 bool writes);
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
};

} // namespace bw
