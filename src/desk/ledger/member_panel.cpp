// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/member_panel.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"
#include "desk/ledger/trend_chart.hpp"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace bw {

namespace {
QString flagLine(const Flag& flag) {
    QString text = flagWords(flag);
    if (!flag.note.empty()) text += QStringLiteral(" – ") + plain(flag.note);
    return QStringLiteral("<p>⚑ %1</p>").arg(text.toHtmlEscaped());
}

QString substituteLine(const Block& block, const MemberSubstitute& s, const Gym& gym) {
    const Slot* slot = slotAt(block, s.place);
    const QString drafted = slot && slot->exercise ? exerciseName(gym, *slot->exercise) : QString();
    const QString instead =
        s.substitute ? plain(s.substitute->name) : MemberPanel::tr("leave it out");
    return QStringLiteral("<p><b>%1 %2 → %3</b><br>%4</p>")
        .arg(slotMark(block, s.place), drafted.toHtmlEscaped(), instead.toHtmlEscaped(),
             say(s.text).toHtmlEscaped());
}
} // namespace

MemberPanel::MemberPanel(GymFile& file, QWidget* parent) : QScrollArea(parent), file_(file) {
    assemble();
    setFrameShape(QFrame::StyledPanel);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("Member"));
    connect(exercise_, &QComboBox::activated, this, [this](int at) {
        ask_->exercise = story_->exercises.at(static_cast<std::size_t>(at));
        read();
    });
    connect(trend_, &TrendChart::told, day_, &QLabel::setText);
    connect(edit_, &QPushButton::clicked, this, &MemberPanel::editWanted);
    show({}, {});
}

QLabel* MemberPanel::words(const char* name) {
    auto* label = new QLabel(inside_);
    label->setObjectName(QLatin1String(name));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void MemberPanel::assemble() {
    inside_ = new QWidget(this);
    inside_->setAutoFillBackground(true);
    inside_->setBackgroundRole(QPalette::Base);
    name_ = words("member-name");
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.25);
    large.setBold(true);
    name_->setFont(large);
    empty_ = words("member-empty");
    exercise_ = new QComboBox(inside_);
    exercise_->setObjectName(QStringLiteral("member-exercise"));
    exercise_->setAccessibleName(tr("Exercise to show"));
    exercise_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    trend_ = new TrendChart(inside_);
    day_ = words("member-day");
    day_->setProperty("quiet", true);
    estimate_ = words("member-estimate");
    next_ = words("member-next");
    flags_ = words("member-flags");
    flags_->setTextFormat(Qt::RichText); // names and notes are escaped
    edit_ = new QPushButton(tr("Name and &flags…"), inside_);
    auto* column = new QVBoxLayout(inside_);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    for (QWidget* w : std::initializer_list<QWidget*>{name_, empty_, exercise_, trend_, day_,
                                                      estimate_, next_, flags_})
        column->addWidget(w);
    column->addWidget(edit_, 0, Qt::AlignLeft);
    column->addStretch(1);
    setWidget(inside_);
    dressAsFrame(inside_);
}

void MemberPanel::show(std::optional<StoryAsk> ask, const QString& empty) {
    ask_ = std::move(ask);
    empty_->setText(empty);
    read();
}

void MemberPanel::read() {
    story_.reset();
    if (ask_) {
        auto told = tellOf(file_, *ask_);
        if (told)
            story_ = std::move(told).value();
        else
            Q_EMIT refused(told.why());
    }
    fill();
}

void MemberPanel::fill() {
    for (QWidget* w :
         std::initializer_list<QWidget*>{name_, exercise_, day_, estimate_, next_, flags_, edit_})
        w->setVisible(story_.has_value());
    empty_->setVisible(!story_ && !empty_->text().isEmpty());
    if (!story_) return trend_->show({}, MassUnit::Kg);
    const MassUnit unit = story_->gym->settings.massUnit;
    name_->setText(plain(story_->member->name));
    fillExercises();
    trend_->show(story_->days, unit);
    day_->setVisible(!story_->days.empty());
    QStringList lines;
    if (story_->estimate) lines << say(explain(*story_->estimate, unit, story_->gym->shelf));
    for (const Message& remark : story_->remarks) lines << say(remark);
    if (story_->days.empty() && !story_->estimate)
        lines << tr("No results of it yet. Type them into the grid: 40x5 2 for 40 at 5 repetitions "
                    "with 2 left.");
    estimate_->setText(lines.join(QLatin1Char('\n')));
    next_->setVisible(story_->next.has_value());
    if (const auto& next = story_->next) {
        const QString load = next->loading
                                 ? say(loadingText(*next->loading, unit)) + QStringLiteral(". ")
                                 : QString();
        next_->setText(tr("Next: %1").arg(load + say(next->text)));
    }
    fillFlags();
}

void MemberPanel::fillExercises() {
    exercise_->clear();
    for (const ExerciseId& id : story_->exercises) {
        exercise_->addItem(exerciseName(*story_->gym, id));
        if (id == story_->exercise) exercise_->setCurrentIndex(exercise_->count() - 1);
    }
    exercise_->setEnabled(!story_->exercises.empty());
}

void MemberPanel::fillFlags() {
    QStringList lines;
    for (const Flag& flag : story_->member->flags) lines << flagLine(flag);
    if (ask_->block)
        for (const MemberSubstitute& s : story_->substitutes)
            lines << substituteLine(*ask_->block, s, *story_->gym);
    if (!lines.isEmpty())
        lines << QStringLiteral("<p>%1</p>")
                     .arg(tr("A flag only looks for another exercise. About pain, injury or return "
                             "to training a licensed professional decides."));
    flags_->setText(lines.join(QString()));
    flags_->setVisible(!lines.isEmpty());
    edit_->setEnabled(file_.writable());
}

} // namespace bw
