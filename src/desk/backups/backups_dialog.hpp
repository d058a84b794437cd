// SPDX-License-Identifier: GPL-3.0-or-later
// The backups of one gym file, whether that is open or not, and what each of them holds. It asks
// for what is to be done and shows what came of it.
#pragma once
#include "desk/backups/backup_reader.hpp"

#include <QDialog>
#include <QFileSystemWatcher>

class QLabel;
class QPushButton;
class QSplitter;
class QTableView;

namespace bw {

class BackupModel;
class BackupPreview;

class BackupsDialog : public QDialog {
    Q_OBJECT
public:
    BackupsDialog(std::filesystem::path gymFile, QWidget* parent);

    void refresh();                 // the list; the line stays where it is
    void rest();                    // until refresh() no file is open
    void allowBackUp(bool allowed); // the gym file is open here, for writing
    void tell(const QString& what); // that something was done
    void tellTrouble(const QString& what);

    [[nodiscard]] const std::filesystem::path& gymFile() const { return gymFile_; }
    [[nodiscard]] const std::optional<BackupLook>& look() const { return look_; } // none: not yet

Q_SIGNALS:
    void restoreWanted(const bw::Backup& backup);
    void backUpWanted();

private:
    void assemble();
    QWidget* makeTable();
    QWidget* makeSide();
    QWidget* makeFoot();
    void follow();
    void showEmpty(bool empty);
    void readLine();
    void take(const BackupLook& look);
    [[nodiscard]] const Backup* chosen() const; // null: none

    std::filesystem::path gymFile_;
    BackupModel* model_;
    QTableView* table_;
    BackupPreview* preview_;
    QSplitter* across_;
    QLabel *empty_, *notice_;
    QPushButton *restore_, *backUp_;
    QFileSystemWatcher folder_; // one may be made meanwhile
    std::optional<BackupLook> look_;
    BackupReader reader_;
};

} // namespace bw
