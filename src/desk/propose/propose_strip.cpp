// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/propose/propose_strip.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/propose/propose_words.hpp"
#include "edit/block_verbs.hpp"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QScrollBar>

namespace bw {

namespace {
constexpr int kGap = 24; // pixels

// "E2"
std::string shortName(const Block& block, Place slot) {
    return groupLetter(block, slot) + std::to_string(slot.slot + 1);
}

ProposeOptions only(Place place) {
    ProposeOptions out;
    out.places = {place};
    return out;
}
} // namespace

ProposeStrip::ProposeStrip(Draft& draft, QWidget* parent, std::chrono::milliseconds longest)
    : QFrame(parent), draft_(draft), runner_(longest), words_(new QLabel(this)),
      chosen_(new QLabel(this)), shift_(new QLabel(this)), body_(new QScrollArea(this)),
      stop_(button(tr("Stop"), tr("Stop looking and keep the best so far"), &ProposeStrip::stop)),
      back_(button(tr("‹"), tr("The answer before"), &ProposeStrip::back)),
      next_(button(tr("›"), tr("The next answer"), &ProposeStrip::next)),
      apply_(button(tr("Apply"), tr("Apply this answer"), &ProposeStrip::apply)),
      leave_(button(tr("Leave"), tr("Leave the draft as it was"), &ProposeStrip::leave)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Proposal"));
    assemble();
    connect(&draft_, &Draft::changed, this, &ProposeStrip::follow);
    connect(&runner_, &ProposeRunner::told, this, &ProposeStrip::take);
    connect(&runner_, &ProposeRunner::played, this, &ProposeStrip::takePlayed);
    connect(&runner_, &ProposeRunner::progressed, this,
            [this](double best, double bound) { words_->setText(lookingWords(best, bound)); });
    connect(&runner_, &ProposeRunner::progressed, this, &ProposeStrip::progressed);
    hide();
}

QPushButton* ProposeStrip::button(const QString& text, const QString& name,
                                  void (ProposeStrip::*press)()) {
    auto* made = new QPushButton(text, this);
    made->setAccessibleName(name);
    made->setToolTip(name);
    made->installEventFilter(this);
    connect(made, &QPushButton::clicked, this, press);
    return made;
}

void ProposeStrip::assemble() {
    lookLikePaper(*this);
    QFont bold = font();
    bold.setBold(true);
    words_->setFont(bold);
    words_->setObjectName(QStringLiteral("propose-words"));
    for (QLabel* label : {words_, chosen_, shift_}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setAlignment(Qt::AlignLeft | (label == words_ ? Qt::AlignVCenter : Qt::AlignTop));
    }
    for (QPushButton* narrow : {back_, next_}) narrow->setFixedWidth(narrow->sizeHint().height());
    auto* columns = new QWidget(body_);
    columns->setBackgroundRole(QPalette::Base);
    auto* across = new QHBoxLayout(columns);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(kGap);
    across->addWidget(chosen_, 1);
    across->addWidget(shift_, 1);
    body_->setWidget(columns);
    body_->setWidgetResizable(true);
    body_->setFrameShape(QFrame::NoFrame);
    body_->setFocusPolicy(Qt::NoFocus); // Up and Down move it
    body_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* head = new QHBoxLayout;
    head->addWidget(words_, 1);
    for (QPushButton* b : {stop_, back_, next_, apply_, leave_}) head->addWidget(b);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(12, 6, 8, 8);
    rows->setSpacing(4);
    rows->addLayout(head);
    rows->addWidget(body_);
}

void ProposeStrip::askAll() { ask({}, {"fill the open slots", {}}); }

void ProposeStrip::askMonth() {
    ProposeOptions anew;
    anew.anew = true;
    ask(std::move(anew), {"propose the whole month", {}});
}

void ProposeStrip::askSlot() {
    end(draft_.place());
    const Block* block = draft_.block();
    const Slot* slot = block ? slotAt(*block, draft_.place()) : nullptr;
    if (!slot)
        return refuse({"Go to a slot first: a proposal for one slot fills it, or exchanges what "
                       "stands there.",
                       {}});
    const std::string name = shortName(*block, draft_.place());
    ask(only(draft_.place()), {slot->open() ? "fill %1" : "swap %1", {name}});
}

void ProposeStrip::askSection() {
    end(draft_.place());
    const Place place{draft_.place().section};
    if (place.isSession()) return refuse({"Go to a line of the section first.", {}});
    ask(only(place), {"fill the open slots of a section", {}});
}

void ProposeStrip::ask(ProposeOptions options, Message step) {
    end(draft_.place());
    if (!draft_.block()) return;
    step_ = std::move(step);
    enter(State::Looking);
    say(tr("Looking for the best…"));
    runner_.ask(std::make_shared<const Gym>(draft_.gym().gym()), about_, std::move(options));
}

// What is told from now on is about the draft as it is.
void ProposeStrip::enter(State state) {
    const QWidget* focus = here() ? QApplication::focusWidget() : nullptr;
    if (state_ == State::Away) before_ = draft_.place();
    setState(state);
    about_ = draft_.shown();
    revision_ = draft_.gym().gymRevision();
    const bool shown = state == State::Shown, many = proposal_.answers.size() > 1;
    stop_->setVisible(state == State::Looking);
    for (QWidget* w : std::initializer_list<QWidget*>{back_, next_}) w->setVisible(shown && many);
    apply_->setVisible(shown);
    apply_->setEnabled(draft_.gym().file().writable());
    body_->setVisible(shown);
    show();
    if (focus && focus != QApplication::focusWidget()) setFocus(); // it was on a button that went
}

void ProposeStrip::setState(State state) {
    const bool was = looking();
    state_ = state;
    if (was != looking()) Q_EMIT lookingChanged();
}

void ProposeStrip::say(const QString& words) {
    words_->setText(words);
    setAccessibleDescription(words);
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void ProposeStrip::refuse(const Message& why) {
    enter(State::Refused);
    say(bw::say(why));
}

void ProposeStrip::stop() { runner_.enough(); }

void ProposeStrip::take(const ProposeRunner::Found& found) {
    if (!*found) return refuse(found->why());
    proposal_ = found->value();
    at_ = 0;
    stepped_ = false;
    playing_ = true;
    offer();
}

// Who has begun to look through the answers goes on with the one on show.
void ProposeStrip::takePlayed(const ProposeRunner::Found& found) {
    if (!answer()) return;
    const Block shown = answer()->block;
    proposal_ = found->value();
    playing_ = false;
    const auto same = std::ranges::find(proposal_.answers, shown, &ProposedMonth::block);
    at_ = stepped_ && same != proposal_.answers.end()
              ? static_cast<std::size_t>(same - proposal_.answers.begin())
              : 0;
    offer();
}

const ProposedMonth* ProposeStrip::answer() const {
    return state_ == State::Shown ? &proposal_.answers[at_] : nullptr;
}

void ProposeStrip::step(int by) {
    const auto n = static_cast<int>(proposal_.answers.size());
    if (!answer() || n < 2) return;
    at_ = static_cast<std::size_t>((static_cast<int>(at_) + by + n) % n);
    stepped_ = true;
    offer();
}

void ProposeStrip::offer() {
    const ProposedMonth& answer = proposal_.answers[at_];
    {
        const QScopedValueRollback guard(mine_, true);
        draft_.preview([&](Block& block) { block = answer.block; });
        if (here()) mark(answer);
    }
    chosen_->setText(chosenWords(answer));
    shift_->setText(shiftWords(answer));
    enter(State::Shown);
    fit();
    body_->verticalScrollBar()->setValue(0);
    say(answerWords(proposal_, at_, playing_));
    setAccessibleDescription(words_->text() + u'\n' + chosen_->text() + u'\n' + shift_->text());
}

void ProposeStrip::mark(const ProposedMonth& answer) {
    const Gym::BlockPtr stored = draft_.gym().gym().block(answer.block.month);
    std::map<Place, QString> rows;
    for (const ProposedSlot& slot : answer.slots)
        if (slotAt(*stored, slot.place)->exercise != slot.exercise)
            rows.emplace(slot.place, QStringLiteral(""));
    draft_.mark(std::move(rows), answer.slots.front().place);
}

// As high as the longest answer needs, so that nothing moves from one to the next; but the sheet
// comes first.
void ProposeStrip::fit() {
    if (!answer()) return;
    const QFontMetrics metrics(chosen_->font());
    const int bar = body_->verticalScrollBar()->sizeHint().width();
    const int wide = (contentsRect().width() - 20 - bar - kGap) / 2;
    int high = metrics.lineSpacing();
    for (const ProposedMonth& one : proposal_.answers)
        for (const QString& text : {chosenWords(one), shiftWords(one)})
            high = std::max(
                high,
                metrics.boundingRect(QRect(0, 0, wide, 10'000), Qt::TextWordWrap, text).height());
    const int most = std::max(2 * metrics.lineSpacing(), window()->height() / 8);
    body_->setFixedHeight(std::min(high + 2, most));
}

void ProposeStrip::apply() {
    if (!answer() || !apply_->isEnabled()) return;
    const ProposedMonth chosen = *answer(); // it goes with the change
    const Did did = editBlock(draft_.gym(), {chosen.block.month, chosen.slots.front().place}, step_,
                              [&](Block& block) { block = chosen.block; });
    if (!did) Q_EMIT failed(did.why());
}

void ProposeStrip::end(Place attention) {
    if (state_ == State::Away) return;
    if (answer()) {
        const QScopedValueRollback guard(mine_, true);
        draft_.endPreview();
        draft_.mark({}, {});
        draft_.setPlace(attention);
    }
    close();
}

void ProposeStrip::follow() {
    if (state_ == State::Away || mine_) return;
    if (draft_.shown() != about_ || draft_.gym().gymRevision() != revision_) close();
}

void ProposeStrip::close() {
    const bool wasHere = here();
    runner_.drop();
    setState(State::Away);
    about_.reset();
    proposal_ = {};
    hide();
    if (wasHere) Q_EMIT left();
}

bool ProposeStrip::here() const {
    const QWidget* now = QApplication::focusWidget();
    return now && (now == this || isAncestorOf(now));
}

void ProposeStrip::keyPressEvent(QKeyEvent* event) {
    constexpr int kLine = 20; // pixels
    QScrollBar* bar = body_->verticalScrollBar();
    switch (event->key()) {
    case Qt::Key_Left: return step(-1);
    case Qt::Key_Right: return step(1);
    case Qt::Key_Up: return bar->setValue(bar->value() - kLine);
    case Qt::Key_Down: return bar->setValue(bar->value() + kLine);
    case Qt::Key_Escape: return leave();
    case Qt::Key_Return:
    case Qt::Key_Enter: return looking() ? stop() : state_ == State::Refused ? leave() : apply();
    default: QFrame::keyPressEvent(event);
    }
}

bool ProposeStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
    auto* key = static_cast<QKeyEvent*>(event);
    switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: static_cast<QPushButton*>(watched)->click(); return true;
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Escape: keyPressEvent(key); return true;
    default: return QFrame::eventFilter(watched, event);
    }
}

void ProposeStrip::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

void ProposeStrip::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    if (!hasFocus()) return;
    QPainter p(this);
    p.setPen(QPen(inks().accent, inks().stroke + 1));
    p.drawRect(rect().adjusted(1, 1, -1, -1));
}

void ProposeStrip::focusInEvent(QFocusEvent* event) {
    QFrame::focusInEvent(event);
    update();
}

void ProposeStrip::focusOutEvent(QFocusEvent* event) {
    QFrame::focusOutEvent(event);
    update();
}

} // namespace bw
