// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/block_fields.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/words.hpp"
#include "edit/month_verbs.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSpinBox>

namespace bw {

namespace {
constexpr int kLongestTitle = 200, kMostVisits = 14; // of a block
}

BlockFields::BlockFields(Draft& draft, Notice& notice, QWidget* parent)
    : QWidget(parent), draft_(draft), notice_(notice), title_(new QLineEdit(this)),
      format_(new QComboBox(this)), visits_(new QSpinBox(this)) {
    makeTitle();
    makeFormat();
    makeVisits();
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(title_, 3);
    layout->addWidget(format_);
    layout->addWidget(visits_);
    layout->addStretch(1);
    for (QWidget* asWideAsItIs : std::initializer_list<QWidget*>{format_, visits_})
        asWideAsItIs->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(&draft_, &Draft::changed, this, &BlockFields::follow);
    follow();
}

void BlockFields::makeTitle() {
    title_->setObjectName(QStringLiteral("block-title"));
    title_->setMaxLength(kLongestTitle);
    title_->setPlaceholderText(tr("Name this month"));
    title_->setAccessibleName(tr("Title of the month"));
    title_->setMinimumWidth(90);
    title_->setMaximumWidth(320);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.15);
    title_->setFont(large);
    title_->installEventFilter(this);
    connect(title_, &QLineEdit::editingFinished, this, &BlockFields::keepTitle);
}

void BlockFields::makeFormat() {
    format_->setObjectName(QStringLiteral("block-format"));
    format_->setAccessibleName(tr("Format of the strength section"));
    format_->setToolTip(tr("Format of the strength section"));
    format_->addItem(tr("no format"));
    for (std::size_t i = 0; i < kCount<Format>; ++i)
        format_->addItem(formatName(static_cast<Format>(i)));
    connect(format_, &QComboBox::activated, this, [this](int index) {
        if (!draft_.month()) return;
        std::optional<Format> format;
        if (index > 0) format = static_cast<Format>(index - 1);
        notice_.hear(setFormat(draft_.gym(), *draft_.month(), format));
    });
}

void BlockFields::makeVisits() {
    visits_->setObjectName(QStringLiteral("block-visits"));
    visits_->setRange(1, kMostVisits);
    visits_->setAccessibleName(tr("Visits a week"));
    visits_->setToolTip(tr("How often a member comes in a week"));
    visits_->setKeyboardTracking(false);
    connect(visits_, &QSpinBox::valueChanged, this, [this](int visits) {
        visits_->setSuffix(tr(" visits", nullptr, visits));
        if (draft_.month()) notice_.hear(setVisits(draft_.gym(), *draft_.month(), visits));
    });
}

bool BlockFields::eventFilter(QObject* watched, QEvent* event) {
    if (watched == title_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        title_->setModified(false);
        follow();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BlockFields::keepTitle() {
    if (!title_->isModified() || !draft_.month()) return;
    const auto did =
        setTitle(draft_.gym(), *draft_.month(), title_->text().trimmed().toStdString());
    if (!notice_.hear(did)) return;
    title_->setModified(false);
    follow();
}

void BlockFields::follow() {
    const Block* block = draft_.block();
    const bool writable = block && draft_.gym().file().writable();
    title_->setEnabled(block);
    title_->setReadOnly(!writable);
    format_->setEnabled(writable);
    visits_->setEnabled(writable);
    if (!block) return title_->clear();
    const QSignalBlocker still(visits_);
    visits_->setValue(block->visitsPerWeek);
    visits_->setSuffix(tr(" visits", nullptr, block->visitsPerWeek));
    format_->setCurrentIndex(block->format ? static_cast<int>(*block->format) + 1 : 0);
    if (!title_->isModified() && title_->text() != plain(block->title)) {
        title_->setText(plain(block->title));
        title_->setCursorPosition(0); // a long one shows its beginning
    }
}

} // namespace bw
