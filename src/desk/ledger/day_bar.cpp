// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/day_bar.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/ledger/ledger_words.hpp"

#include <QAction>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QToolButton>

namespace bw {

namespace {
QToolButton* button(QWidget* bar, const QString& text, const QString& name) {
    auto* made = new QToolButton(bar);
    made->setText(text);
    made->setAccessibleName(name);
    made->setToolTip(name);
    made->setFocusPolicy(Qt::StrongFocus);
    return made;
}

QMenu* menu(QHBoxLayout& row, QWidget* bar, const QString& text, const QString& name) {
    auto* opens = button(bar, text, name);
    auto* made = new QMenu(opens);
    opens->setMenu(made);
    opens->setPopupMode(QToolButton::InstantPopup);
    row.addWidget(opens);
    return made;
}
} // namespace

DayBar::DayBar(Date today, QWidget* parent)
    : QWidget(parent), today_(today), day_(new QDateEdit(qDate(today), this)),
      words_(new QLabel(this)), filter_(new QLineEdit(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    addDay(*row);
    row->addWidget(words_, 1);
    addChoices(*row);
    members_ = menu(*row, this, tr("Mem&ber"), tr("Add a member, change or take out this one"));
    results_ = menu(*row, this, tr("&Results"), tr("Bring results in, or write them out"));
    dressAsFrame(this);
}

void DayBar::addDay(QHBoxLayout& row) {
    day_->setObjectName(QStringLiteral("class-date"));
    day_->setAccessibleName(tr("Class date"));
    day_->setDisplayFormat(tr("ddd d MMM yyyy"));
    day_->setDateRange(QDate(1900, 1, 2), QDate(2999, 12, 31));
    day_->setCalendarPopup(true);
    day_->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("Wed 30 Nov 2026")) + 48);
    auto* label = new QLabel(tr("&Class of"), this);
    label->setBuddy(day_);
    auto* back = button(this, QStringLiteral("‹"), tr("The day before"));
    auto* on = button(this, QStringLiteral("›"), tr("The day after"));
    auto* now = button(this, tr("To&day"), tr("The class of today"));
    for (QWidget* w : std::initializer_list<QWidget*>{label, back, day_, on, now}) row.addWidget(w);
    connect(back, &QToolButton::clicked, this, [this] { day_->setDate(day_->date().addDays(-1)); });
    connect(on, &QToolButton::clicked, this, [this] { day_->setDate(day_->date().addDays(1)); });
    connect(now, &QToolButton::clicked, this, [this] { setDate(today_); });
    connect(day_, &QDateEdit::dateChanged, this, &DayBar::changed);
    words_->setObjectName(QStringLiteral("class-words"));
    words_->setProperty("quiet", true);
    words_->setTextFormat(Qt::PlainText);
    words_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

void DayBar::addChoices(QHBoxLayout& row) {
    filter_->setObjectName(QStringLiteral("find-member"));
    filter_->setPlaceholderText(tr("Find a member"));
    filter_->setAccessibleName(tr("Show only members whose name has these letters"));
    filter_->setClearButtonEnabled(true);
    filter_->setFixedWidth(fontMetrics().horizontalAdvance(QLatin1Char('0')) * 18);
    row.addWidget(filter_);
    QMenu* shown = menu(row, this, tr("&Show"), tr("Whom and what to show"));
    const auto choice = [&](const char* name, const QString& text) {
        QAction* made = shown->addAction(text);
        made->setObjectName(QLatin1String(name));
        made->setCheckable(true);
        return made;
    };
    came_ = choice("only-came", tr("&Only who came"));
    whole_ = choice("whole", tr("&Warm-up and finisher, too"));
    connect(filter_, &QLineEdit::textChanged, this, &DayBar::membersChanged);
    connect(filter_, &QLineEdit::returnPressed, this, &DayBar::gridWanted);
    connect(came_, &QAction::toggled, this, &DayBar::membersChanged);
    connect(whole_, &QAction::toggled, this, &DayBar::changed);
}

Date DayBar::date() const { return dateOf(day_->date()); }
void DayBar::setDate(Date date) { day_->setDate(qDate(date)); }
bool DayBar::whole() const { return whole_->isChecked(); }
bool DayBar::onlyCame() const { return came_->isChecked(); }
QString DayBar::filter() const { return filter_->text().trimmed(); }
void DayBar::setWords(const QString& words) {
    words_->setText(words);
    words_->setToolTip(words);
}

} // namespace bw
