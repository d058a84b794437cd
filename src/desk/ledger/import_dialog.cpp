// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/import_dialog.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/import_preview.hpp"
#include "interchange/bundle.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace bw {

namespace {
QString number(std::size_t n) { return QLocale().toString(static_cast<qulonglong>(n)); }
} // namespace

ImportDialog::ImportDialog(OpenGym& gym, const QString& name, std::string text, QWidget* parent)
    : QDialog(parent), gym_(gym), text_(std::move(text)), preview_(new ImportPreview(text_, this)),
      table_(new QTableView(this)), summary_(new QLabel(this)), undo_(new QLabel(this)),
      faults_(new QPlainTextEdit(this)) {
    setWindowTitle(tr("Bring in a table of results"));
    assemble(name);
    addMeanings();
    dressAsFrame(this);
    resize(860, 560);
    tryOut();
}

void ImportDialog::assemble(const QString& name) {
    auto* lead =
        new QLabel(tr("%1: does each column mean what stands above its rows?").arg(name), this);
    lead->setWordWrap(true);
    table_->setModel(preview_);
    table_->setAccessibleName(tr("The first rows of the table"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter);
    summary_->setObjectName(QStringLiteral("summary"));
    summary_->setWordWrap(true);
    faults_->setObjectName(QStringLiteral("faults"));
    faults_->setReadOnly(true);
    faults_->setTabChangesFocus(true);
    faults_->setAccessibleName(tr("What is wrong, line by line"));
    undo_->setObjectName(QStringLiteral("undo"));
    undo_->setWordWrap(true);
    undo_->setProperty("quiet", true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    bring_ = buttons->addButton(tr("Bring in"), QDialogButtonBox::AcceptRole);
    bring_->setObjectName(QStringLiteral("bring-in"));
    bring_->setDefault(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(lead);
    column->addWidget(table_, 2);
    column->addWidget(summary_);
    column->addWidget(faults_, 1);
    column->addWidget(undo_);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void ImportDialog::addMeanings() {
    for (int c = 0; c < preview_->columnCount(); ++c) {
        auto* box = new QComboBox(table_);
        for (const std::string& word : ImportPreview::meanings())
            box->addItem(ImportPreview::meaningName(word));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(12);
        box->setAccessibleName(
            tr("Meaning of the column “%1”")
                .arg(preview_->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString()));
        const QModelIndex at = preview_->index(0, c);
        box->setCurrentIndex(at.data(Qt::EditRole).toInt());
        table_->setIndexWidget(at, box);
        meanings_.push_back(box);
        connect(box, &QComboBox::activated, this, [this, c](int chosen) {
            preview_->setData(preview_->index(0, c), chosen, Qt::EditRole);
            tryOut();
        });
    }
    table_->resizeColumnsToContents();
    for (int c = 0; c < preview_->columnCount(); ++c)
        table_->setColumnWidth(
            c, std::max(table_->columnWidth(c),
                        meanings_[static_cast<std::size_t>(c)]->sizeHint().width()));
    if (preview_->rowCount() > 0)
        table_->setRowHeight(0,
                             meanings_.empty() ? 24 : meanings_.front()->sizeHint().height() + 4);
}

void ImportDialog::tryOut() {
    for (std::size_t c = 0; c < meanings_.size(); ++c)
        meanings_[c]->setCurrentIndex(
            preview_->index(0, static_cast<int>(c)).data(Qt::EditRole).toInt());
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    ResultsReading read =
        readResultsCsv(text_, gym_.gym(), meanings_.empty() ? nullptr : &preview_->words());
    change_ = {};
    auto change = changeBy(gym_.file(), std::move(read.results));
    if (change)
        change_ = std::move(change).value();
    else
        read.faults.push_back({0, {}, change.why()});
    QGuiApplication::restoreOverrideCursor();
    tell(read);
}

void ImportDialog::tell(const ResultsReading& read) {
    const std::size_t some = change_.fresh.size() + change_.changed.size();
    QStringList parts;
    parts << tr("%1 sets are new").arg(number(change_.fresh.size()))
          << tr("%1 replace other figures").arg(number(change_.changed.size()))
          << tr("%1 are there already").arg(number(change_.same));
    if (read.twice > 0) parts << tr("%1 are said twice").arg(number(read.twice));
    if (read.faultyRows > 0)
        parts << tr("%1 of %2 rows are faulty").arg(number(read.faultyRows), number(read.rows));
    summary_->setText(read.rows == 0 ? QString()
                                     : parts.join(QStringLiteral(", ")) + QLatin1Char('.'));
    if (const QString twice = preview_->twice(); !twice.isEmpty())
        summary_->setText(tr("Two columns mean “%1”: the first counts. ").arg(twice) +
                          summary_->text());
    faults_->setPlainText(faultLines(read));
    faults_->setVisible(!read.faults.empty());
    bring_->setEnabled(some > 0);
    bring_->setText(some == 0 ? tr("Bring in")
                    : read.faultyRows > 0
                        ? tr("Bring in %1 sets, leave the faulty rows out").arg(number(some))
                        : tr("Bring in %1 sets").arg(number(some)));
    undo_->setText(some > kMostUndoableSets
                       ? tr("So many sets can't be undone, and what was done before can't be "
                            "undone after it.")
                   : some > 0 ? tr("This is one step, which can be undone.")
                   : read.rows > 0
                       ? tr("There is nothing to bring in.")
                       : tr("Choose above the rows which columns hold what is missing."));
}

QString ImportDialog::faultLines(const ResultsReading& read) const {
    QStringList lines;
    for (const CsvFault& f : read.faults) {
        QString where;
        if (f.line > 0) where = tr("Line %1").arg(f.line);
        if (!f.column.empty()) where += QStringLiteral(", ") + ImportPreview::meaningName(f.column);
        lines << (where.isEmpty() ? say(f.text) : where + QStringLiteral(": ") + say(f.text));
    }
    if (read.faults.size() >= kMostFaults) lines << tr("…and more; these are the first.");
    return lines.join(QLatin1Char('\n'));
}

Result<bool> ImportDialog::store() { return importResults(gym_, change_); }

} // namespace bw
