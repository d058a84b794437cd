// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheets_page.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/work_line.hpp"
#include "desk/sheets/preview_bar.hpp"
#include "desk/sheets/sheet_choices.hpp"
#include "desk/sheets/sheet_form.hpp"
#include "desk/sheets/sheet_printing.hpp"
#include "desk/sheets/sheet_report.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_names.hpp"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

namespace bw {

namespace {
constexpr SheetKind kSheets[] = {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes,
                                 SheetKind::Kit, SheetKind::Talk};
constexpr int kColumn = 260;
} // namespace

SheetsPage::SheetsPage(Draft& draft, WorkLine& work, QWidget* parent)
    : QWidget(parent), draft_(draft), work_(work), maker_(draft) {
    preview_ = new SheetPreview(this);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(makeColumn());
    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(preview_, 1);
    auto* under = new QHBoxLayout;
    under->setContentsMargins(0, 0, 12, 4);
    under->addWidget(new PreviewBar(*preview_, this), 1);
    under->addWidget(makeButton(this, tr("Sh&ow on the wall"), &SheetsPage::boardWanted));
    right->addLayout(under);
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
    form_ = new SheetForm(column);
    connect(form_, &SheetForm::changed, this, &SheetsPage::keepChoices);
    report_ = makeWords(column, "report");
    told_ = makeWords(column, "told");
    for (QWidget* w : std::initializer_list<QWidget*>{title, sheets_, form_, report_})
        layout->addWidget(w);
    layout->addStretch(1);
    layout->addWidget(told_);
    layout->addWidget(makeButtons());
    return column;
}

QWidget* SheetsPage::makeButtons() {
    auto* row = new QWidget(this);
    auto* layout = new QGridLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeButton(row, tr("&Print…"), &SheetsPage::print), 0, 0);
    layout->addWidget(makeButton(row, tr("PD&F…"), &SheetsPage::savePdf), 0, 1);
    layout->addWidget(makeButton(row, tr("Ever&y sheet as PDF…"), &SheetsPage::saveAll), 1, 0, 1,
                      2);
    return row;
}

QPushButton* SheetsPage::makeButton(QWidget* row, const QString& text, void (SheetsPage::*what)()) {
    auto* button = new QPushButton(text, row);
    button->setAutoDefault(true);
    connect(button, &QPushButton::clicked, this, what);
    buttons_.push_back(button);
    return button;
}

SheetKind SheetsPage::kind() const {
    return kSheets[static_cast<std::size_t>(std::max(0, sheets_->currentRow()))];
}

SheetOptions SheetsPage::options() const {
    return form_->options(rememberedOptions(kind(), draft_.gym().gym().settings));
}

void SheetsPage::showChoices() {
    form_->show(kind(), rememberedOptions(kind(), draft_.gym().gym().settings));
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
    for (QPushButton* button : buttons_) button->setEnabled(block);
    layout_ = {};
    if (!block) {
        preview_->clear(tr("There is no month yet. Start one on the Bench, and its sheets will "
                           "lie here."));
    } else if (auto made = maker_.layOut(kind(), options()); !made) {
        preview_->clear(say(made.why()));
    } else if (made->pages.empty()) {
        preview_->clear(tr("No member is active, so there are no cards. Members come with a "
                           "bundle."));
    } else {
        layout_ = std::move(made).value();
        preview_->show(layout_, sheetTitle(kind(), *block));
    }
    report();
}

void SheetsPage::report() {
    const SheetReport said = reportOn(layout_, options());
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
    const Layout layout = layout_;    // the draft may be measured meanwhile
    std::optional<WorkLine::Run> run; // begins after the question which printer
    const auto step = [&](int done) {
        if (!run) run.emplace(work_, tr("Printing"), static_cast<int>(layout.pages.size()));
        return run->at(done);
    };
    const Result<Printed> printed = printSheet(layout, this, step);
    run.reset();
    if (!printed) return prompts().tell(this, tr("Print"), say(printed.why()));
    if (*printed == Printed::All) tell(tr("Sent to the printer."));
    if (*printed == Printed::Stopped)
        tell(tr("Stopped. The printer may still bring the pages it has already taken."));
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

void SheetsPage::saveAll() {
    if (!draft_.block()) return;
    const auto folder =
        prompts().openFolder(this, tr("Keep all sheets as PDF"), rememberedFolder());
    if (!folder || !keepAllIn(*folder)) return;
    rememberFolder(*folder);
    tell(tr("All sheets are kept in %1.").arg(QDir::toNativeSeparators(*folder)));
}

bool SheetsPage::keepAllIn(const QString& folder) {
    WorkLine::Run run(work_, tr("Writing sheets"), static_cast<int>(std::size(kSheets)));
    int done = 0;
    for (const SheetKind kind : kSheets) {
        const auto choices = rememberedOptions(kind, draft_.gym().gym().settings);
        const auto made = maker_.layOut(kind, choices, [&](int, int) { return run.at(done); });
        if (!run.at(done++)) {
            tell(tr("Stopped. The sheets written so far are kept in %1.")
                     .arg(QDir::toNativeSeparators(folder)));
            return false;
        }
        if (made && made->pages.empty()) continue; // no members, no cards
        const QString path = QDir(folder).filePath(sheetFileName(kind, *draft_.block()));
        const auto written = made ? writePdf(path, *made) : Result<bool>(made.why());
        if (written) continue;
        prompts().tell(this, tr("Keep as PDF"), say(written.why()));
        return false;
    }
    return true;
}

} // namespace bw
