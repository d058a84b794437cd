// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_view.hpp"

#include "blockwright/ledger/mass_text.hpp" // rirText
#include "blockwright/model/shorthand.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/stair_words.hpp"
#include "edit/month_verbs.hpp"

#include <QAccessibleWidget>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
using Line = StairGeometry::Line;
constexpr int kRep = 10, kHalf = 5, kMostTenths = 100; // tenths of a repetition
constexpr double kReach = 6, kDragFrom = 3;            // pixels

QAccessibleInterface* accessibleStair(const QString& name, QObject* object) {
    auto* stair =
        name == QLatin1String("bw::StairView") ? qobject_cast<StairView*>(object) : nullptr;
    return stair ? new QAccessibleWidget(stair, QAccessible::Chart) : nullptr;
}
void installOnce() {
    static const bool installed = [] {
        QAccessible::installFactory(accessibleStair);
        return true;
    }();
    (void)installed;
}

template <class E> E next(E value) {
    return static_cast<E>((static_cast<std::size_t>(value) + 1) % kCount<E>);
}

// What the rule book says of the stair as a whole.
QString findingsOf(const CheckResult& verdict) {
    QStringList lines;
    for (const Finding& f : verdict.findings)
        if (f.rule == "stair-shape") lines << levelShape(f.level) + QLatin1Char(' ') + say(f.text);
    return lines.join(QLatin1Char('\n'));
}
} // namespace

StairView::StairView(Draft& draft, Actions& actions, QWidget* parent)
    : QWidget(parent), draft_(draft) {
    installOnce();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&draft_, &Draft::changed, this, &StairView::refresh);
    addActions(actions);
    for (QAction* action : this->actions()) action->setEnabled(false);
    refresh();
}

void StairView::addActions(Actions& actions) {
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key,
                         const std::function<void()>& run) {
        actions.add(tr("Stair"), QLatin1String(id), text, {key}, this, [this, run] {
            if (!editor_ && usable()) run();
        });
    };
    add("stair-more", tr("A repetition less in reserve"), Qt::Key_Up, [this] { moveBy(-kRep); });
    add("stair-less", tr("A repetition more in reserve"), Qt::Key_Down, [this] { moveBy(kRep); });
    add("stair-more-half", tr("Half a repetition less in reserve"), Qt::SHIFT | Qt::Key_Up,
        [this] { moveBy(-kHalf); });
    add("stair-less-half", tr("Half a repetition more in reserve"), Qt::SHIFT | Qt::Key_Down,
        [this] { moveBy(kHalf); });
    add("stair-type", tr("Type what is left in reserve"), Qt::Key_F2,
        [this] { startTyping(plain(rirText(rir(week()).reps()))); });
    add("stair-rounds", tr("The week’s rounds: low, open, high"), Qt::Key_R,
        [this] { change([](StairStep& s) { s.rounds = next(s.rounds); }); });
    add("stair-intent", tr("What the week is for: learn, build, challenge"), Qt::Key_I,
        [this] { change([](StairStep& s) { s.intent = next(s.intent); }); });
}

Rir StairView::rir(int week) const { return picture_.steps[static_cast<std::size_t>(week)].rir; }

bool StairView::usable() const { return draft_.block() && draft_.gym().file().writable(); }

void StairView::setColumns(int left, int week) {
    left_ = left;
    week_ = week;
    update();
}

StairGeometry StairView::geometryNow() const {
    return stairGeometry(rect(), left_, week_, static_cast<int>(picture_.steps.size()), font());
}

QSize StairView::sizeHint() const { return {700, fontMetrics().height() * 12}; }
QSize StairView::minimumSizeHint() const { return {400, fontMetrics().height() * 8}; }

void StairView::refresh() {
    if (held_ && (held_->first != draft_.month() || held_->second != draft_.week().index()))
        letGo(); // may end a preview, and with it the block
    const Block* block = draft_.block();
    if (!block) {
        picture_ = {};
        return;
    }
    picture_.steps = block->stair;
    picture_.stored = draft_.gym().gym().block(block->month)->stair;
    picture_.week = std::min(draft_.week().index(), static_cast<int>(block->stair.size()) - 1);
    picture_.note = findingsOf(draft_.verdict());
    picture_.odd = !picture_.note.isEmpty();
    if (!picture_.odd)
        picture_.note = usable() ? tr("Drag a step, or press Up and Down; type what is left in "
                                      "reserve. R: rounds, I: intent.")
                                 : tr("This gym is open for reading only.");
    const QString name =
        tr("Stair. %1").arg(stepSentence(*block, Week::of(picture_.week + 1).value()));
    if (name != accessibleName()) setAccessibleName(name);
    const QString all = stairSummary(*block) + QLatin1Char(' ') + picture_.note;
    if (all != accessibleDescription()) setAccessibleDescription(all);
    update();
}

// Another week is on show: what was dragged or typed was not meant for it.
void StairView::letGo() {
    if (drag_) endDrag(false);
    if (editor_) endTyping(false);
    held_.reset();
}

void StairView::finishTyping() { endTyping(editor_ && !editor_->inTrouble()); }

void StairView::showWeek(int week) {
    if (picture_.steps.empty()) return;
    const int last = static_cast<int>(picture_.steps.size()) - 1;
    draft_.showWeek(Week::of(std::clamp(week, 0, last) + 1).value());
}

void StairView::change(const std::function<void(StairStep&)>& edit) {
    const auto at = static_cast<std::size_t>(week());
    StairStep step = draft_.gym().gym().block(*draft_.month())->stair.at(at);
    edit(step);
    const Did did =
        setStairStep(draft_.gym(), *draft_.month(), Week::of(week() + 1).value(), std::move(step));
    if (!did || !*did) draft_.endPreview();
    if (!did) Q_EMIT refused(did.why());
}

void StairView::preview(Rir to) {
    draft_.preview([to, at = static_cast<std::size_t>(week())](Block& b) {
        if (at < b.stair.size()) b.stair[at].rir = to;
    });
}

void StairView::moveBy(int tenths) {
    const int to = std::clamp(rir(week()).tenths() + tenths, 0, kMostTenths);
    change([to](StairStep& s) { s.rir = Rir::fromTenths(to).value(); });
}

void StairView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left: return showWeek(week() - 1);
    case Qt::Key_Right: return showWeek(week() + 1);
    case Qt::Key_Home: return showWeek(0);
    case Qt::Key_End: return showWeek(Week::kMost);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (usable()) startTyping(plain(rirText(rir(week()).reps())));
        return;
    case Qt::Key_Escape:
        if (drag_) return endDrag(false);
        break;
    default: break;
    }
    const QString text = event->text();
    if (usable() && text.size() == 1 && text.front().isDigit()) return startTyping(text);
    QWidget::keyPressEvent(event);
}

void StairView::startTyping(const QString& text) {
    if (editor_) return;
    held_ = {*draft_.month(), draft_.week().index()};
    editor_ = new CellEditor(this);
    editor_->setAccessibleName(tr("Repetitions in reserve in week %1").arg(week() + 1));
    editor_->installEventFilter(this);
    const QRectF at = geometryNow().line(week(), rir(week()), Line::Effort, font());
    editor_->setGeometry(at.adjusted(-4, -2, 0, 2).toAlignedRect());
    editor_->setText(text);
    connect(editor_, &QLineEdit::textChanged, this, &StairView::typed);
    editor_->show();
    editor_->setFocus();
    typed();
}

void StairView::typed() {
    const auto read = parseEffort(editor_->text().toStdString());
    const bool good = read && read->single();
    const QString why = good    ? QString()
                        : !read ? say(read.why())
                                : tr("A week has one figure for what is left in reserve.");
    editor_->setTrouble(why);
    Q_EMIT trouble(why);
    if (good) return preview(read->lo());
    draft_.endPreview();
}

// What can't be read stays open to be mended, until it is left.
void StairView::endTyping(bool keep) {
    if (!editor_ || (keep && editor_->inTrouble())) return;
    CellEditor* editor = std::exchange(editor_, nullptr);
    editor->removeEventFilter(this);
    const bool back = editor->hasFocus();
    const auto read = parseEffort(editor->text().toStdString());
    editor->hide();
    editor->deleteLater();
    if (back) setFocus();
    Q_EMIT trouble({});
    if (!keep || !read) return draft_.endPreview();
    change([to = read->lo()](StairStep& s) { s.rir = to; });
}

bool StairView::eventFilter(QObject* watched, QEvent* event) {
    if (watched != editor_) return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) endTyping(!editor_->inTrouble());
    if (event->type() != QEvent::KeyPress) return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (!enter && key != Qt::Key_Escape) return false;
    endTyping(enter);
    return true;
}

void StairView::mousePressEvent(QMouseEvent* event) {
    const StairGeometry g = geometryNow();
    const int at = g.weekAt(event->position());
    if (event->button() != Qt::LeftButton || at < 0) return;
    showWeek(at);
    if (!usable()) return;
    const double tread = g.yOf(rir(at));
    if (event->position().y() < tread - kReach) return;
    held_ = {*draft_.month(), draft_.week().index()};
    drag_ = Drag{event->position().y() - tread, event->position(), false, rir(at)};
}

void StairView::mouseMoveEvent(QMouseEvent* event) {
    if (!drag_) return hover(event->position());
    if (std::abs(event->position().y() - drag_->from.y()) > kDragFrom) drag_->moved = true;
    if (!drag_->moved) return;
    drag_->rir = geometryNow().rirAt(event->position().y() - drag_->grip);
    preview(drag_->rir);
}

void StairView::mouseReleaseEvent(QMouseEvent* event) {
    if (!drag_ || event->button() != Qt::LeftButton) return;
    const bool moved = drag_->moved;
    endDrag(moved);
    if (moved) return hover(event->position());
    const QRectF words = geometryNow().line(week(), rir(week()), picture_.hoverLine, font());
    if (words.contains(event->position()))
        popUp(picture_.hoverLine, event->globalPosition().toPoint());
}

void StairView::endDrag(bool keep) {
    const Rir to = drag_->rir;
    drag_.reset();
    if (!keep) return draft_.endPreview();
    change([to](StairStep& s) { s.rir = to; });
}

void StairView::mouseDoubleClickEvent(QMouseEvent* event) {
    const int at = geometryNow().weekAt(event->position());
    if (event->button() != Qt::LeftButton || at < 0 || at != week() || !usable()) return;
    startTyping(plain(rirText(rir(at).reps())));
}

void StairView::hover(QPointF point) {
    const StairGeometry g = geometryNow();
    const int at = g.weekAt(point);
    const auto before = std::pair(picture_.hoverWeek, picture_.hoverLine);
    picture_.hoverWeek = -1;
    picture_.hoverLine = Line::Name;
    if (at >= 0 && usable())
        for (const Line line : {Line::Rounds, Line::Intent})
            if (g.line(at, rir(at), line, font()).contains(point)) {
                picture_.hoverWeek = at;
                picture_.hoverLine = line;
            }
    const bool grip = at >= 0 && usable() && point.y() >= g.yOf(rir(at)) - kReach;
    setCursor(picture_.hoverWeek >= 0 ? Qt::PointingHandCursor
              : grip                  ? Qt::SizeVerCursor
                                      : Qt::ArrowCursor);
    if (before != std::pair(picture_.hoverWeek, picture_.hoverLine)) update();
}

void StairView::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    if (!drag_) hover({-1, -1});
}

// What can't be seen is not changed from a menu.
void StairView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    for (QAction* action : actions()) action->setEnabled(true);
}

void StairView::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    for (QAction* action : actions()) action->setEnabled(false);
}

void StairView::popUp(Line line, QPoint at) {
    if (line != Line::Rounds && line != Line::Intent) return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const StairStep now = picture_.steps[static_cast<std::size_t>(week())];
    const auto entry = [&](const QString& text, bool on,
                           const std::function<void(StairStep&)>& edit) {
        QAction* action = menu->addAction(text, this, [this, edit] { change(edit); });
        action->setCheckable(true);
        action->setChecked(on);
    };
    if (line == Line::Rounds)
        for (const RoundsMode mode : {RoundsMode::Low, RoundsMode::Open, RoundsMode::High})
            entry(roundsWord(mode), mode == now.rounds, [mode](StairStep& s) { s.rounds = mode; });
    else
        for (const Intent intent : {Intent::Learn, Intent::Build, Intent::Challenge})
            entry(weekIntent(intent), intent == now.intent,
                  [intent](StairStep& s) { s.intent = intent; });
    menu->popup(at);
}

// All that can be done to the week.
void StairView::contextMenuEvent(QContextMenuEvent* event) {
    if (event->reason() == QContextMenuEvent::Mouse) {
        const int at = geometryNow().weekAt(event->pos());
        if (at < 0) return;
        showWeek(at);
    }
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addActions(actions());
    menu->setEnabled(usable());
    menu->popup(event->reason() == QContextMenuEvent::Mouse
                    ? event->globalPos()
                    : mapToGlobal(geometryNow().step(week(), rir(week())).center().toPoint()));
}

void StairView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), inks().paper);
    painter.setFont(font());
    picture_.focus = hasFocus();
    paintStair(painter, picture_, geometryNow(), inks());
}

void StairView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}
void StairView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void StairView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
    update();
}

} // namespace bw
