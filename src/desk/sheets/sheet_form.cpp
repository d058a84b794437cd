// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_form.hpp"

#include "desk/frame/words.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace bw {

namespace {
QComboBox* combo(QWidget* parent, const char* name, const QStringList& entries) {
    auto* made = new QComboBox(parent);
    made->setObjectName(QLatin1String(name));
    made->addItems(entries);
    return made;
}

template <class E> QStringList wordsOf() {
    QStringList words;
    for (const auto word : Spelling<E>::words) words << plain(word);
    return words;
}

void showRow(QFormLayout* form, QWidget* field, bool shown) {
    form->labelForField(field)->setVisible(shown);
    field->setVisible(shown);
}
} // namespace

SheetForm::SheetForm(QWidget* parent)
    : QWidget(parent), form_(new QFormLayout(this)), paper_(combo(this, "paper", wordsOf<Paper>())),
      turned_(combo(this, "turned", {tr("upright"), tr("on its side")})),
      unit_(combo(this, "unit", wordsOf<MassUnit>())),
      perPage_(combo(this, "per-page", {tr("two"), tr("four")})),
      blackAndWhite_(new QCheckBox(tr("&Black and white"), this)),
      largePrint_(new QCheckBox(tr("&Larger print"), this)) {
    form_->setContentsMargins(0, 0, 0, 0);
    form_->addRow(tr("P&aper"), paper_);
    form_->addRow(tr("Hel&d"), turned_);
    form_->addRow(tr("Loads &in"), unit_);
    form_->addRow(tr("&Cards a page"), perPage_);
    form_->addRow(blackAndWhite_);
    form_->addRow(largePrint_);
    for (auto* box : {paper_, turned_, unit_, perPage_})
        connect(box, &QComboBox::currentIndexChanged, this, &SheetForm::changed);
    for (auto* box : {blackAndWhite_, largePrint_})
        connect(box, &QCheckBox::toggled, this, &SheetForm::changed);
}

void SheetForm::show(SheetKind kind, const SheetOptions& options) {
    const QSignalBlocker quiet(this);
    paper_->setCurrentIndex(static_cast<int>(options.paper));
    turned_->setCurrentIndex(static_cast<int>(options.orientation));
    unit_->setCurrentIndex(static_cast<int>(options.massUnit));
    perPage_->setCurrentIndex(options.cardsPerPage == 4 ? 1 : 0);
    blackAndWhite_->setChecked(options.blackAndWhite);
    largePrint_->setChecked(options.largePrint);
    showRow(form_, unit_, kind == SheetKind::Cards || kind == SheetKind::Kit);
    showRow(form_, perPage_, kind == SheetKind::Cards);
}

SheetOptions SheetForm::options(SheetOptions usual) const {
    usual.paper = static_cast<Paper>(paper_->currentIndex());
    usual.orientation = static_cast<Orientation>(turned_->currentIndex());
    usual.massUnit = static_cast<MassUnit>(unit_->currentIndex());
    usual.cardsPerPage = perPage_->currentIndex() == 1 ? 4 : 2;
    usual.blackAndWhite = blackAndWhite_->isChecked();
    usual.largePrint = largePrint_->isChecked();
    return usual;
}

} // namespace bw
