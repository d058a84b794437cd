// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limits/limits_page.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/trouble.hpp"
#include "desk/frame/words.hpp"
#include "desk/limits/limit_effect.hpp"
#include "desk/limits/limits_delegate.hpp"
#include "desk/limits/limits_model.hpp"
#include "desk/limits/limits_table.hpp"
#include "edit/finding_verbs.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>

namespace bw {

namespace {
QFrame* paper(QWidget* parent) {
    auto* frame = new QFrame(parent);
    lookLikePaper(*frame);
    return frame;
}
} // namespace

LimitsPage::LimitsPage(Draft& draft, QWidget* parent)
    : QWidget(parent), draft_(draft), model_(new LimitsModel(draft.gym(), this)),
      table_(new LimitsTable(*model_, this)), effect_(new LimitEffect(draft, this)),
      words_(new QLineEdit(this)), onlySet_(new QCheckBox(tr("only this house's own"), this)),
      weights_(new QCheckBox(tr("weights in the penalty"), this)),
      one_(new QPushButton(tr("Back to the rule book's"), this)),
      all_(new QPushButton(tr("All back…"), this)), notice_(new QLabel(this)),
      none_(new QLabel(tr("No limit has all of these words."), this)) {
    auto* left = paper(this);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    for (QWidget* w : std::initializer_list<QWidget*>{makeHead(), none_, table_, notice_})
        column->addWidget(w, w == table_ ? 1 : 0);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->setChildrenCollapsible(false);
    across->addWidget(left);
    across->addWidget(makeSide());
    across->setStretchFactor(0, 5);
    across->setStretchFactor(1, 2);
    across->setSizes({800, 340});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 10, 4);
    layout->addWidget(across);
    setFocusProxy(table_);
    wire();
}

LimitsPage::~LimitsPage() {
    delete table_; // while there is a page to tell
}

QWidget* LimitsPage::makeHead() {
    auto* head = new QWidget(this);
    dressAsFrame(head);
    auto* title = new QLabel(tr("House limits"), head);
    QFont bold = title->font();
    bold.setPointSizeF(bold.pointSizeF() * 1.2);
    bold.setWeight(QFont::DemiBold);
    title->setFont(bold);
    words_->setPlaceholderText(tr("Find: rest, queue, months…"));
    words_->setAccessibleName(tr("Find limits by words"));
    words_->setClearButtonEnabled(true);
    words_->setMinimumWidth(words_->fontMetrics().averageCharWidth() * 14);
    words_->setMaximumWidth(words_->fontMetrics().averageCharWidth() * 32);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(8, 8, 8, 8);
    row->setSpacing(12);
    row->addWidget(title);
    row->addStretch(1);
    row->addWidget(words_, 4);
    for (QWidget* w : std::initializer_list<QWidget*>{onlySet_, weights_}) row->addWidget(w);
    notice_->setWordWrap(true);
    notice_->setContentsMargins(12, 6, 12, 6);
    notice_->setTextFormat(Qt::PlainText);
    notice_->hide();
    none_->setContentsMargins(12, 12, 12, 12);
    none_->hide();
    return head;
}

QWidget* LimitsPage::makeSide() {
    auto* side = paper(this);
    dressAsFrame(side);
    auto* buttons = new QVBoxLayout; // room for the words of any language
    buttons->setContentsMargins(12, 6, 12, 10);
    buttons->addWidget(one_);
    buttons->addStretch(1);
    buttons->addWidget(all_);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(effect_, 1);
    column->addLayout(buttons);
    const int widest = std::max(one_->sizeHint().width(), all_->sizeHint().width());
    side->setMinimumWidth(std::max(200, widest + 28));
    return side;
}

void LimitsPage::wire() {
    auto* delegate = new LimitsDelegate(*model_, this);
    table_->setItemDelegate(delegate);
    connect(delegate, &LimitsDelegate::typed, this, &LimitsPage::tryOut);
    connect(delegate, &LimitsDelegate::trouble, this, &LimitsPage::tell);
    connect(model_, &LimitsModel::refused, this, &LimitsPage::tell);
    connect(table_, &LimitsTable::lineChanged, this, [this] {
        quiet();
        showLine();
    });
    connect(table_, &LimitsTable::typingEnded, this, &LimitsPage::showLine);
    connect(table_, &LimitsTable::resetWanted, this, &LimitsPage::resetOne);
    connect(words_, &QLineEdit::textChanged, this, &LimitsPage::choose);
    connect(onlySet_, &QCheckBox::toggled, this, &LimitsPage::choose);
    connect(weights_, &QCheckBox::toggled, this, &LimitsPage::choose);
    connect(one_, &QPushButton::clicked, this, &LimitsPage::resetOne);
    connect(all_, &QPushButton::clicked, this, &LimitsPage::resetAll);
    connect(&draft_, &Draft::changed, this, &LimitsPage::draftChanged);
}

void LimitsPage::goTo(const QString& key) {
    const HouseLimit* limit = houseLimit(key.toStdString());
    if (!limit) return;
    words_->clear();
    onlySet_->setChecked(false);
    if (limit->weight) weights_->setChecked(true);
    table_->goTo(model_->rowOf(limit->key));
}

void LimitsPage::choose() {
    const HouseLimit* now = model_->limitAt(table_->currentIndex().row());
    const std::string key = now ? now->key : std::string();
    model_->choose({words_->text(), onlySet_->isChecked(), weights_->isChecked()});
    if (const int row = model_->rowOf(key); row >= 0) table_->goTo(row);
    none_->setVisible(model_->rowCount() == 0);
    showLine();
}

void LimitsPage::draftChanged() {
    stale_ = true;
    if (isVisible()) refresh();
}

void LimitsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void LimitsPage::refresh() {
    stale_ = false;
    model_->refresh();
    if (!table_->currentIndex().isValid() && model_->rowCount() > 1) table_->goTo(1);
    showLine();
}

void LimitsPage::showLine() {
    const int row = table_->currentIndex().row();
    const HouseLimit* limit = model_->limitAt(row);
    const bool writable = draft_.gym().file().writable();
    one_->setEnabled(writable && limit && model_->setValue(*limit));
    all_->setEnabled(writable && !draft_.gym().gym().settings.limits.empty());
    effect_->show(model_->ruleAt(row), limit);
}

void LimitsPage::tryOut(const QModelIndex& index, const QString& text) {
    quiet();
    const HouseLimit* limit = model_->limitAt(index.row());
    if (!limit) return;
    const auto read = readLimitCell(text, limit->spec);
    if (read)
        effect_->show(limit->rule, limit, read.value());
    else
        effect_->show(limit->rule, limit); // said only when the coach wants to leave
}

void LimitsPage::resetOne() {
    const HouseLimit* limit = model_->limitAt(table_->currentIndex().row());
    if (!limit) return;
    if (const Did did = setLimit(draft_.gym(), limit->key, std::nullopt); !did) tell(did.why());
}

void LimitsPage::resetAll() {
    const int chosen =
        prompts().choose(this, tr("House limits"),
                         tr("Put every limit back to what the rule book says? Undo brings yours "
                            "back."),
                         {tr("All back")});
    if (chosen != 0) return;
    if (const Did did = resetLimits(draft_.gym()); !did) tell(did.why());
}

void LimitsPage::tell(const Message& what) { tellTrouble(*notice_, say(what)); }

void LimitsPage::quiet() { notice_->hide(); }

void LimitsPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    if (words_->text().isEmpty()) return Q_EMIT closed();
    words_->clear(); // first what was looked for
    table_->setFocus();
}

void LimitsPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) quiet();
}

} // namespace bw
