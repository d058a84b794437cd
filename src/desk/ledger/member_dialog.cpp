// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/member_dialog.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace bw {

namespace {
constexpr int kWidth = 520;
}

// One flag in its fields.
class MemberDialog::FlagLine : public QWidget {
public:
    FlagLine(const Flag& flag, QWidget* parent)
        : QWidget(parent), flag_(flag), level_(new QComboBox(this)), demand_(new QComboBox(this)),
          note_(new QLineEdit(plain(flag.note), this)), away_(new QToolButton(this)) {
        for (std::size_t i = 0; i < kCount<FlagLevel>; ++i)
            level_->addItem(flagLevelName(static_cast<FlagLevel>(i)));
        for (std::size_t i = 0; i < kCount<Demand>; ++i)
            demand_->addItem(demandName(static_cast<Demand>(i)));
        level_->setCurrentIndex(static_cast<int>(flag.level));
        demand_->setCurrentIndex(static_cast<int>(flag.demand));
        level_->setAccessibleName(MemberDialog::tr("How far the flag goes"));
        demand_->setAccessibleName(MemberDialog::tr("What the flag is about"));
        note_->setAccessibleName(MemberDialog::tr("Note of the flag"));
        note_->setPlaceholderText(MemberDialog::tr("a note, if it helps"));
        note_->setMaxLength(2000);
        away_->setText(QStringLiteral("✕"));
        away_->setAccessibleName(MemberDialog::tr("Take this flag away"));
        away_->setToolTip(away_->accessibleName());
        away_->setFocusPolicy(Qt::StrongFocus);
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(0, 0, 0, 0);
        for (QWidget* w : std::initializer_list<QWidget*>{level_, demand_}) row->addWidget(w);
        row->addWidget(note_, 1);
        row->addWidget(away_);
    }
    [[nodiscard]] QToolButton* away() { return away_; }
    [[nodiscard]] QWidget* first() { return level_; }
    [[nodiscard]] Flag flag() const {
        Flag out = flag_;
        out.level = static_cast<FlagLevel>(level_->currentIndex());
        out.demand = static_cast<Demand>(demand_->currentIndex());
        out.note = note_->text().trimmed().toStdString();
        return out;
    }

private:
    Flag flag_;
    QComboBox *level_, *demand_;
    QLineEdit* note_;
    QToolButton* away_;
};

MemberDialog::MemberDialog(Member member, bool fresh, QWidget* parent)
    : QDialog(parent), member_(std::move(member)), name_(new QLineEdit(plain(member_.name), this)),
      active_(new QCheckBox(tr("&Comes to class"), this)), flags_(new QVBoxLayout),
      about_(new QLabel(this)), trouble_(new QLabel(this)) {
    setWindowTitle(fresh ? tr("Add a member") : tr("Name and flags"));
    assemble(fresh);
    for (const Flag& flag : member_.flags) addFlag(flag);
    dressAsFrame(this);
    about_->setMinimumHeight(about_->heightForWidth(kWidth - 40)); // a layout would squeeze it
    resize(kWidth, sizeHint().height());
}

void MemberDialog::assemble(bool fresh) {
    name_->setObjectName(QStringLiteral("name"));
    name_->setMaxLength(200);
    name_->setAccessibleName(tr("Name"));
    active_->setChecked(member_.active);
    active_->setToolTip(tr("Who comes no more is not offered in the grid; the results stay."));
    auto* add = new QPushButton(tr("&Add a flag"), this);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(fresh ? tr("Add the member") : tr("Keep"));
    for (QAbstractButton* b : buttons->buttons()) b->setIcon({});
    auto* label = new QLabel(tr("&Name"), this);
    label->setBuddy(name_);
    about_->setText(tr("“avoid” rules out every exercise that asks for it, “limit” those "
                       "that ask for most of it. A flag only looks for another exercise; "
                       "about pain, injury or return to training a licensed professional "
                       "decides."));
    about_->setWordWrap(true);
    about_->setProperty("quiet", true);
    trouble_->setObjectName(QStringLiteral("trouble"));
    trouble_->hide();
    auto* column = new QVBoxLayout(this);
    for (QWidget* w : std::initializer_list<QWidget*>{label, name_, active_}) column->addWidget(w);
    column->addLayout(flags_);
    column->addWidget(add, 0, Qt::AlignLeft);
    for (QWidget* w : std::initializer_list<QWidget*>{about_, trouble_}) column->addWidget(w);
    column->addStretch(1);
    column->addWidget(buttons);
    connect(add, &QPushButton::clicked, this, [this] {
        addFlag({});
        lines_.back()->first()->setFocus();
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &MemberDialog::accepting);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void MemberDialog::addFlag(const Flag& flag) {
    auto* line = new FlagLine(flag, this);
    lines_.push_back(line);
    flags_->addWidget(line);
    connect(line->away(), &QToolButton::clicked, this, [this, line] {
        std::erase(lines_, line);
        line->deleteLater();
        name_->setFocus();
    });
}

Member MemberDialog::member() const {
    Member out = member_;
    out.name = name_->text().trimmed().toStdString();
    out.active = active_->isChecked();
    out.flags.clear();
    for (const FlagLine* line : lines_) out.flags.push_back(line->flag());
    return out;
}

void MemberDialog::accepting() {
    const bool named = !name_->text().trimmed().isEmpty();
    trouble_->setText(named ? QString() : tr("A member needs a name."));
    trouble_->setVisible(!named);
    if (named) return accept();
    name_->setFocus();
}

} // namespace bw
