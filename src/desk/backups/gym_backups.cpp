// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/gym_backups.hpp"

#include "desk/backups/backup_words.hpp"
#include "desk/backups/backups_dialog.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/workspace.hpp"

#include <QDate>
#include <QGuiApplication>

namespace bw {

namespace fs = std::filesystem;

namespace {
struct Waiting {
    Waiting() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Waiting() { QGuiApplication::restoreOverrideCursor(); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
};

// "gym 2026-11-25.bwgym" in the same folder, for the coach to put elsewhere.
QString copyName(const fs::path& gymFile) {
    return pathText(gymFile.parent_path() / gymFile.stem()) + QLatin1Char(' ') +
           QDate::currentDate().toString(Qt::ISODate) + QStringLiteral(".bwgym");
}
} // namespace

GymBackups::GymBackups(MainWindow& window) : QObject(&window), window_(window) {}

void GymBackups::addActions(Actions& actions) {
    const QString group = tr("Gym");
    actions.add(group, QStringLiteral("backups"), tr("Ba&ckups…"), {}, nullptr, [this] {
        if (Workspace* work = window_.workspace()) show(work->gym().file().path());
    });
    actions.add(group, QStringLiteral("save-copy"), tr("Save &a copy…"), {}, nullptr,
                [this] { saveCopy(); });
}

void GymBackups::show(const fs::path& gymFile) {
    delete screen_;
    screen_ = new BackupsDialog(gymFile, &window_);
    connect(screen_, &BackupsDialog::restoreWanted, this, &GymBackups::restore);
    connect(screen_, &BackupsDialog::backUpWanted, this, &GymBackups::backUpNow);
    allow();
    screen_->open();
}

bool GymBackups::worthALook(const fs::path& gymFile) {
    if (gymFile.empty()) return false;
    std::error_code ignored;
    if (gymFile.extension() == ".bwgym" && fs::exists(gymFile, ignored)) return true;
    const auto list = listBackups(gymFile);
    return list && !list->empty();
}

bool GymBackups::isOpen(const fs::path& gymFile) const {
    return window_.workspace() && sameFile(window_.workspace()->gym().file().path(), gymFile);
}

void GymBackups::allow() {
    screen_->allowBackUp(isOpen(screen_->gymFile()) &&
                         window_.workspace()->gym().file().writable());
}

bool GymBackups::sure(const Backup& backup) {
    const auto& look = screen_->look();
    const QString effect = look && look->would ? differenceSentence(*look->would) : QString();
    return prompts().choose(
               screen_, tr("Restore a backup"),
               tr("The backup of %1 takes the place of the gym file.").arg(backupTime(backup.at)) +
                   QLatin1Char(' ') + effect +
                   tr("\n\nWhat is in place now is kept first, so you can come back to it. What "
                      "you did before can't be undone by Ctrl+Z afterwards."),
               {tr("Restore this one")}) == 0;
}

void GymBackups::restore(const Backup& backup) {
    if (!sure(backup)) return;
    const fs::path gymFile = screen_->gymFile();
    const bool open = isOpen(gymFile);
    const Waiting waiting;
    screen_->rest();
    if (open) window_.closeGym();
    const auto done = restoreBackup(gymFile, backup.file, wallTime());
    if (open || done) window_.openFile(gymFile); // where the coach was
    allow();
    screen_->refresh();
    if (!done) return screen_->tellTrouble(say(done.why()));
    screen_->tell(tr("The gym file holds what the backup of %1 holds.").arg(backupTime(backup.at)) +
                  (done->before ? QLatin1Char(' ') + tr("What was in place before is kept as %1.")
                                                         .arg(pathText(done->before->filename()))
                                : QString()));
}

void GymBackups::backUpNow() {
    const Waiting waiting;
    const auto made = backUp(screen_->gymFile(), BackupReason::Asked, wallTime());
    screen_->refresh();
    if (!made) return screen_->tellTrouble(say(made.why()));
    screen_->tell(tr("Backed up as %1.").arg(pathText(made->backup.file.filename())));
}

void GymBackups::saveCopy() {
    Workspace* work = window_.workspace();
    if (!work) return;
    GymFile& file = work->gym().file();
    const auto chosen = prompts().saveFile(&window_, tr("Save a copy"), copyName(file.path()),
                                           tr("Gym files (*.bwgym);;All files (*)"));
    if (!chosen) return;
    fs::path path = pathOf(*chosen);
    if (!path.has_extension()) path += ".bwgym";
    const Waiting waiting;
    if (work->notice().hear(file.copyTo(path)))
        work->notice().tell({"“%1” holds all of this gym as it is now. You go on in “%2”.",
                             {path.string(), file.path().string()}});
}

} // namespace bw
