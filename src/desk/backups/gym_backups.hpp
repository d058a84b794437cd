// SPDX-License-Identifier: GPL-3.0-or-later
// The screen of backups over the window, and what is done from it: a restore closes the gym file
// and opens it again, whatever came of it.
#pragma once
#include "store/backups.hpp"

#include <QObject>
#include <QPointer>

namespace bw {

class Actions;
class BackupsDialog;
class MainWindow;

class GymBackups : public QObject {
    Q_OBJECT
public:
    explicit GymBackups(MainWindow& window);

    void addActions(Actions& actions); // for the gym that is open
    void show(const std::filesystem::path& gymFile);
    // May its backups be the way back to a file that could not be opened?
    [[nodiscard]] static bool worthALook(const std::filesystem::path& gymFile);

private:
    [[nodiscard]] bool isOpen(const std::filesystem::path& gymFile) const;
    void restore(const Backup& backup);
    [[nodiscard]] bool sure(const Backup& backup);
    void backUpNow();
    void saveCopy();
    void allow();

    MainWindow& window_;
    QPointer<BackupsDialog> screen_; // null: not on show
};

} // namespace bw
