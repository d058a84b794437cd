// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/slot_strip.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/words.hpp"
#include "edit/block_verbs.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

namespace bw {

namespace {
QString joined(const std::vector<std::string>& lines) {
    QStringList list;
    for (const auto& line : lines) list << plain(line);
    return list.join(QStringLiteral("  "));
}
} // namespace

SlotStrip::SlotStrip(Draft& draft, QWidget* parent)
    : QWidget(parent), draft_(draft), about_(new QLabel(this)), note_(new QLineEdit(this)),
      main_(new QCheckBox(tr("main lift"), this)), locked_(new QCheckBox(tr("locked"), this)) {
    about_->setTextFormat(Qt::PlainText);
    about_->setMinimumWidth(80);
    about_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    note_->setPlaceholderText(tr("note for this slot"));
    note_->setAccessibleName(tr("Note for this slot"));
    note_->setMaxLength(2000);
    note_->setMaximumWidth(260);
    main_->setAccessibleName(tr("Main lift of the month"));
    locked_->setAccessibleName(tr("Locked against proposals"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 4, 12, 4);
    row->addWidget(about_, 1);
    for (QWidget* w : std::initializer_list<QWidget*>{note_, main_, locked_}) row->addWidget(w);
    connect(&draft_, &Draft::changed, this, &SlotStrip::show);
    connect(&draft_, &Draft::placeChanged, this, &SlotStrip::show);
    connect(note_, &QLineEdit::editingFinished, this, &SlotStrip::enterNote);
    connect(main_, &QCheckBox::clicked, this, [this](bool on) {
        if (const Did did = setMain(draft_.gym(), draft_.spot(), on); !did)
            Q_EMIT refused(did.why());
    });
    connect(locked_, &QCheckBox::clicked, this, [this](bool on) {
        if (const Did did = setLocked(draft_.gym(), draft_.spot(), on); !did)
            Q_EMIT refused(did.why());
    });
    show();
}

void SlotStrip::enterNote() {
    if (!note_->isModified() || !draft_.block()) return;
    note_->setModified(false);
    const Did did = setNote(draft_.gym(), draft_.spot(), note_->text().trimmed().toStdString());
    if (!did) Q_EMIT refused(did.why());
}

void SlotStrip::show() {
    const Block* block = draft_.block();
    const Slot* slot = block ? slotAt(*block, draft_.place()) : nullptr;
    const Exercise* e =
        slot && slot->exercise ? draft_.gym().gym().shelf.find(*slot->exercise) : nullptr;
    for (QWidget* w : std::initializer_list<QWidget*>{note_, main_, locked_}) w->setEnabled(slot);
    main_->setChecked(slot && slot->main);
    locked_->setChecked(slot && slot->locked);
    if (!note_->hasFocus() || !note_->isModified())
        note_->setText(slot ? plain(slot->note) : QString());
    QString about = e ? joined(e->cues) : QString();
    if (e && !e->cautions.empty()) about += QStringLiteral("   ⚠ ") + joined(e->cautions);
    about_->setText(about);
    about_->setToolTip(about);
}

} // namespace bw
