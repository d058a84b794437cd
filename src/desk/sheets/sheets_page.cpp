// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheets_page.hpp"

#include "desk/frame/prompts.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/sheets/preview_bar.hpp"
#include "desk/sheets/sheet_choices.hpp"
#include "desk/sheets/sheet_printing.hpp"
#include "desk/sheets/sheet_report.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/wall_sheet.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>

namespace bw {

namespace {
constexpr SheetKind kSheets[] = {SheetKind::Wall};
constexpr int kColumn = 260;

QLabel* makeLabel(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}
} // namespace

SheetsPage::SheetsPage(Draft& draft, QWidget* parent) : QWidget(parent), draft_(draft) {
    preview_ = new SheetPreview(this);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(makeColumn());
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(preview_, 1);
    right->addWidget(new PreviewBar(*preview_, this));
    across->addLayout(right, 1);
    setFocusProxy(sheets_);
    connect(&draft_, &Draft::changed, this, &SheetsPage::draftChanged);
    showChoices();
}

QWidget* SheetsPage::makeColumn() {
    auto* column = new QWidget(this);
    column->setFixedWidth(kColumn);
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(16, 14, 16, 14);
    layout->setSpacing(10);
    auto* title = new QLabel(tr("&Sheets"), column);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    sheets_ = new QListWidget(column);
    sheets_->setAccessibleName(tr("Sheets"));
    for (const SheetKind kind : kSheets) sheets_->addItem(sheetLabel(kind));
    sheets_->setCurrentRow(0);
    sheets_->setFixedHeight(sheets_->sizeHintForRow(0) * sheets_->count() +
                            2 * sheets_->frameWidth());
    title->setBuddy(sheets_);
    connect(sheets_, &QListWidget::currentRowChanged, this, &SheetsPage::showChoices);
    layout->addWidget(title);
    layout->addWidget(sheets_);
    auto* form = new QFormLayout;
    addChoices(form);
    layout->addLayout(form);
    report_ = makeLabel(column, "report");
    layout->addWidget(report_);
    layout->addStretch(1);
    told_ = makeLabel(column, "told");
    layout->addWidget(told_);
    layout->addWidget(makeButtons());
    return column;
}

void SheetsPage::addChoices(QFormLayout* form) {
    paper_ = new QComboBox(this);
    paper_->setObjectName(QStringLiteral("paper"));
    for (const auto word : Spelling<Paper>::words) paper_->addItem(plain(word));
    turned_ = new QComboBox(this);
    turned_->setObjectName(QStringLiteral("turned"));
    turned_->addItems({tr("upright"), tr("on its side")});
    blackAndWhite_ = new QCheckBox(tr("&Black and white"), this);
    largePrint_ = new QCheckBox(tr("&Larger print"), this);
    form->addRow(tr("P&aper"), paper_);
    form->addRow(tr("Hel&d"), turned_);
    form->addRow(blackAndWhite_);
    form->addRow(largePrint_);
    for (auto* box : {paper_, turned_})
        connect(box, &QComboBox::currentIndexChanged, this, &SheetsPage::keepChoices);
    for (auto* box : {blackAndWhite_, largePrint_})
        connect(box, &QCheckBox::toggled, this, &SheetsPage::keepChoices);
}

QWidget* SheetsPage::makeButtons() {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    print_ = new QPushButton(tr("&Print…"), row);
    pdf_ = new QPushButton(tr("PD&F…"), row);
    for (auto* button : {print_, pdf_}) {
        button->setAutoDefault(true);
        layout->addWidget(button);
    }
    connect(print_, &QPushButton::clicked, this, &SheetsPage::print);
    connect(pdf_, &QPushButton::clicked, this, &SheetsPage::savePdf);
    return row;
}

SheetKind SheetsPage::kind() const {
    return kSheets[static_cast<std::size_t>(std::max(0, sheets_->currentRow()))];
}

SheetOptions SheetsPage::options() const {
    SheetOptions options = usualOptions(draft_.gym().gym().settings);
    options.paper = static_cast<Paper>(paper_->currentIndex());
    options.orientation = static_cast<Orientation>(turned_->currentIndex());
    options.blackAndWhite = blackAndWhite_->isChecked();
    options.largePrint = largePrint_->isChecked();
    return options;
}

void SheetsPage::showChoices() {
    const SheetOptions kept = rememberedOptions(kind(), draft_.gym().gym().settings);
    const QSignalBlocker quiet[] = {QSignalBlocker(paper_), QSignalBlocker(turned_),
                                    QSignalBlocker(blackAndWhite_), QSignalBlocker(largePrint_)};
    paper_->setCurrentIndex(static_cast<int>(kept.paper));
    turned_->setCurrentIndex(static_cast<int>(kept.orientation));
    blackAndWhite_->setChecked(kept.blackAndWhite);
    largePrint_->setChecked(kept.largePrint);
    draftChanged();
}

void SheetsPage::keepChoices() {
    rememberOptions(kind(), options());
    draftChanged();
}

void SheetsPage::draftChanged() {
    stale_ = true;
    if (isVisible()) layOut();
}

void SheetsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) layOut();
}

void SheetsPage::layOut() {
    stale_ = false;
    tell({});
    const Block* block = draft_.block();
    print_->setEnabled(block);
    pdf_->setEnabled(block);
    if (!block) {
        layout_ = {};
        preview_->clear(tr("There is no month yet. Start one on the Bench, and its sheets will "
                           "lie here."));
    } else {
        layout_ = layoutWall(draft_.gym().gym(), *block, options());
        preview_->show(layout_, sheetTitle(kind(), *block));
    }
    report();
}

void SheetsPage::report() {
    const SheetReport said = reportOn(layout_);
    QPalette palette = report_->palette();
    palette.setColor(QPalette::WindowText, said.trouble ? inks().level[0] : inks().quiet);
    report_->setPalette(palette);
    report_->setText(said.text);
}

void SheetsPage::tell(const QString& what) {
    told_->setText(what);
    told_->setVisible(!what.isEmpty());
}

void SheetsPage::print() {
    if (stale_) layOut();
    if (layout_.pages.empty()) return;
    const Result<bool> printed = printSheet(layout_, this);
    if (!printed) return prompts().tell(this, tr("Print"), say(printed.why()));
    if (*printed) tell(tr("Sent to the printer."));
}

void SheetsPage::savePdf() {
    if (stale_) layOut();
    if (layout_.pages.empty()) return;
    const QString name = sheetFileName(kind(), *draft_.block());
    auto path = prompts().saveFile(this, tr("Keep as PDF"), QDir(rememberedFolder()).filePath(name),
                                   tr("PDF (*.pdf)"));
    if (!path) return;
    if (QFileInfo(*path).suffix().isEmpty()) *path += QStringLiteral(".pdf");
    const Result<bool> written = writePdf(*path, layout_);
    if (!written) return prompts().tell(this, tr("Keep as PDF"), say(written.why()));
    rememberFolder(QFileInfo(*path).absolutePath());
    tell(tr("Kept as %1.").arg(QDir::toNativeSeparators(*path)));
}

} // namespace bw
