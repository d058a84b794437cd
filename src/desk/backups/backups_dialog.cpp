// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backups_dialog.hpp"

#include "desk/backups/backup_model.hpp"
#include "desk/backups/backup_preview.hpp"
#include "desk/bench/sheet_header.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

namespace bw {

namespace {
constexpr QSize kSize{980, 560};

QFrame* paper(QWidget* parent) {
    auto* frame = new QFrame(parent);
    lookLikePaper(*frame);
    return frame;
}
QPushButton* button(const QString& text, const char* name, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setObjectName(QLatin1String(name));
    made->setAutoDefault(false); // Enter in the list does nothing by surprise
    return made;
}
QVBoxLayout* columnOf(QFrame* frame) {
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    return column;
}
} // namespace

BackupsDialog::BackupsDialog(std::filesystem::path gymFile, QWidget* parent)
    : QDialog(parent), gymFile_(std::move(gymFile)), model_(new BackupModel(this)),
      table_(new QTableView(this)), preview_(new BackupPreview(this)),
      across_(new QSplitter(Qt::Horizontal, this)), empty_(makeWords(this, "no-backup")),
      notice_(makeWords(this, "notice-line")),
      restore_(button(tr("&Restore this one…"), "restore", this)),
      backUp_(button(tr("&Back up now"), "back-up", this)), reader_(nullptr) {
    setWindowTitle(tr("Backups of %1").arg(pathText(gymFile_.filename())));
    setAttribute(Qt::WA_DeleteOnClose);
    assemble();
    resize(kSize);
    connect(&reader_, &BackupReader::seen, this, &BackupsDialog::take);
    connect(&folder_, &QFileSystemWatcher::directoryChanged, this, &BackupsDialog::refresh);
    connect(restore_, &QPushButton::clicked, this, [this] {
        if (const Backup* one = chosen()) Q_EMIT restoreWanted(Backup(*one));
    });
    connect(backUp_, &QPushButton::clicked, this, &BackupsDialog::backUpWanted);
    allowBackUp(false);
    refresh();
}

void BackupsDialog::assemble() {
    auto* top = new QWidget(this); // not the notice: its colour says what kind it is
    dressAsFrame(top);
    auto* lead = makeWords(top, "lead");
    lead->setText(tr("Kept in the folder %1 beside the gym file. Choose one to see what it holds.")
                      .arg(pathText(backupFolder(gymFile_).filename())));
    lead->setProperty("quiet", true);
    auto* above = new QVBoxLayout(top);
    above->setContentsMargins(0, 0, 0, 0);
    above->addWidget(lead);
    notice_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    notice_->setAccessibleName(tr("What happened"));
    notice_->hide();
    across_->setChildrenCollapsible(false);
    across_->addWidget(makeTable());
    across_->addWidget(makeSide());
    across_->setStretchFactor(0, 4);
    across_->setStretchFactor(1, 5);
    across_->setSizes({430, 520});
    auto* column = new QVBoxLayout(this);
    column->addWidget(top);
    column->addWidget(across_, 1);
    column->addWidget(empty_, 1);
    column->addWidget(notice_);
    column->addWidget(makeFoot());
}

QWidget* BackupsDialog::makeFoot() {
    auto* foot = new QWidget(this);
    dressAsFrame(foot);
    auto* close = button(tr("&Close"), "close", foot);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout(foot);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->addWidget(backUp_);
    buttons->addStretch(1);
    buttons->addWidget(close);
    return foot;
}

QWidget* BackupsDialog::makeTable() {
    table_->setObjectName(QStringLiteral("backup-list"));
    table_->setModel(model_);
    table_->setAccessibleName(tr("Backups, the last first"));
    table_->setFrameShape(QFrame::NoFrame);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->setHorizontalHeader(new SheetHeader(table_));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(BackupModel::Why, QHeaderView::Stretch);
    table_->horizontalHeader()->setAccessibleName(tr("Columns of the backups"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &BackupsDialog::readLine);
    auto* frame = paper(this);
    columnOf(frame)->addWidget(table_);
    return frame;
}

QWidget* BackupsDialog::makeSide() {
    auto* frame = paper(this);
    dressAsFrame(frame);
    auto* line = new QHBoxLayout;
    line->setContentsMargins(12, 6, 12, 10);
    line->addWidget(restore_);
    line->addStretch(1);
    auto* column = columnOf(frame);
    column->addWidget(preview_, 1);
    column->addLayout(line);
    frame->setMinimumWidth(260);
    return frame;
}

void BackupsDialog::refresh() {
    follow();
    auto list = listBackups(gymFile_);
    if (!list) {
        tellTrouble(say(list.why()));
        list = std::vector<Backup>();
    }
    const Backup* before = chosen();
    const std::filesystem::path file = before ? before->file : std::filesystem::path();
    const bool other = model_->show(std::move(list).value());
    showEmpty(model_->rowCount() == 0);
    if (other) {
        table_->selectRow(std::max(0, model_->rowOf(file))); // which reads it
    } else if (!look_) {
        readLine();
    }
}

void BackupsDialog::rest() {
    reader_.rest();
    look_.reset();
}

// The folder of backups comes to be with the first one.
void BackupsDialog::follow() {
    const auto folder = backupFolder(gymFile_);
    std::error_code ignored;
    const QString at =
        pathText(std::filesystem::exists(folder, ignored) ? folder : folder.parent_path());
    if (folder_.directories() == QStringList{at}) return;
    if (!folder_.directories().isEmpty()) folder_.removePaths(folder_.directories());
    folder_.addPath(at);
}

void BackupsDialog::showEmpty(bool empty) {
    across_->setVisible(!empty);
    empty_->setVisible(empty);
}

void BackupsDialog::allowBackUp(bool allowed) {
    backUp_->setEnabled(allowed);
    empty_->setText(
        allowed ? tr("There is no backup yet. The first of a day is made soon after the gym file "
                     "is opened. Back up now makes one at once.")
                : tr("There is no backup of this file. If you saved a copy elsewhere, close this "
                     "and open the copy: Gym, Open a gym file."));
}

const Backup* BackupsDialog::chosen() const { return model_->at(table_->currentIndex().row()); }

void BackupsDialog::readLine() {
    look_.reset();
    restore_->setEnabled(false);
    const Backup* one = chosen();
    if (!one) {
        rest();
        return preview_->showNothing();
    }
    preview_->showReading(*one);
    reader_.read(gymFile_, one->file);
}

void BackupsDialog::take(const BackupLook& look) {
    const Backup* one = chosen();
    if (!one) return;
    look_ = look;
    preview_->show(*one, look);
    restore_->setEnabled(look.in.ok());
}

void BackupsDialog::tell(const QString& what) {
    notice_->setPalette({});
    notice_->setText(what);
    notice_->show();
}

void BackupsDialog::tellTrouble(const QString& what) { bw::tellTrouble(*notice_, what); }

} // namespace bw
