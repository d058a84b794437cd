// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/board/board_view.hpp"

#include "desk/frame/prompts.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/sheets/sheet_choices.hpp"
#include "sheets/board/board_ink.hpp"
#include "sheets/sheet_painter.hpp"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <chrono>

namespace bw {

namespace {
constexpr int kTick = 200; // ms, so that no second is late by more

Millis steadyNow() {
    return std::chrono::duration_cast<Millis>(std::chrono::steady_clock::now().time_since_epoch());
}
QString wordsOf(const Board& board, const BoardMoment& moment) {
    const ClockWords words = clockWords(board.sections[moment.section].part.planned, moment.time);
    QStringList parts{words.figures, words.plan, words.state};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}
} // namespace

BoardView::BoardView(Draft& draft, QWidget* parent, Clock clock)
    : QWidget(parent, Qt::Window), draft_(draft), clock_(clock ? std::move(clock) : steadyNow),
      maker_(draft) {
    setWindowTitle(tr("Board"));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::BlankCursor);
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(&draft_, &Draft::changed, this, &BoardView::layOut);
    connect(&timer_, &QTimer::timeout, this, &BoardView::tick);
    timer_.start(kTick);
    layOut();
}

void BoardView::layOut() {
    board_ = {};
    const Block* block = draft_.block();
    if (block) board_ = layoutBoard(draft_.gym().gym(), *block, draft_.week(), size());
    if (month_ != draft_.month()) {
        month_ = draft_.month();
        class_ = {};
        at_ = page_ = 0;
    }
    at_ = std::clamp(at_, 0, std::max(0, static_cast<int>(board_.sections.size()) - 1));
    if (loads_ && (empty() || !readLoads())) loads_ = false;
    page_ = std::clamp(page_, 0, std::max(0, pages() - 1));
    showNow();
}

int BoardView::section() const {
    return board_.sections[static_cast<std::size_t>(at_)].part.section;
}

int BoardView::pages() const {
    if (empty()) return 0;
    const BoardSection& now = board_.sections[static_cast<std::size_t>(at_)];
    return static_cast<int>((loads_ ? now.loads : now.rows).size());
}

BoardMoment BoardView::moment() const {
    BoardMoment moment{static_cast<std::size_t>(at_), static_cast<std::size_t>(page_), loads_, {}};
    if (!empty()) moment.time = {class_.elapsed(section(), clock_()), class_.paused()};
    return moment;
}

void BoardView::goOn() {
    if (!moment().time.elapsed) {
        class_.start(section(), clock_());
    } else if (page_ + 1 < pages()) {
        ++page_;
    } else if (at_ + 1 < static_cast<int>(board_.sections.size())) {
        ++at_;
        page_ = 0;
        class_.start(section(), clock_());
    }
}

void BoardView::goBack() {
    if (page_ > 0) {
        --page_;
    } else if (at_ > 0) {
        --at_;
        page_ = pages() - 1;
    }
}

void BoardView::pause() {
    if (moment().time.elapsed) class_.togglePause(clock_());
}

void BoardView::restart() { class_.restart(section(), clock_()); }

void BoardView::toggleLoads() {
    if (!loads_ && !readLoads()) return;
    loads_ = !loads_;
    page_ = 0;
}

bool BoardView::readLoads() {
    const auto ledger = maker_.ledger();
    if (!ledger) {
        prompts().tell(this, tr("Board"), say(ledger.why()));
        return false;
    }
    const Gym& gym = draft_.gym().gym();
    addLoads(board_, {gym, *draft_.block(), *ledger}, draft_.week(),
             rememberedOptions(SheetKind::Cards, gym.settings).massUnit);
    return true;
}

// The key that opened it closes it too, and does not open it again.
bool BoardView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_F11)
        event->accept();
    return QWidget::event(event);
}

void BoardView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
    case Qt::Key_F11: close(); return;
    default: break;
    }
    if (empty() || event->isAutoRepeat()) return;
    switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Space:
    case Qt::Key_PageDown: goOn(); break;
    case Qt::Key_Left:
    case Qt::Key_PageUp: goBack(); break;
    case Qt::Key_P: pause(); break;
    case Qt::Key_R: restart(); break;
    case Qt::Key_L: toggleLoads(); break;
    default: return QWidget::keyPressEvent(event);
    }
    showNow();
}

void BoardView::mousePressEvent(QMouseEvent* event) {
    if (empty()) return;
    event->button() == Qt::RightButton ? goBack() : goOn();
    showNow();
}

void BoardView::showNow() {
    update();
    if (empty()) {
        setAccessibleName(tr("Board. This month has nothing to show yet."));
        setAccessibleDescription({});
        return;
    }
    const BoardMoment now = moment();
    const BoardPart& part = board_.sections[now.section].part;
    told_ = wordsOf(board_, now);
    setAccessibleName(tr("Board: %1, section %2 of %3. %4")
                          .arg(part.name)
                          .arg(at_ + 1)
                          .arg(board_.sections.size())
                          .arg(told_));
    setAccessibleDescription(readOut(part) + QLatin1Char(' ') + board_.sections[now.section].next);
}

// Only the picture: a name that changed every second would be read out every second.
void BoardView::tick() {
    if (empty()) return;
    const QString words = wordsOf(board_, moment());
    if (words == told_) return;
    told_ = words;
    update();
}

void BoardView::paintEvent(QPaintEvent*) {
    const bool dark = inks().dark;
    QPainter painter(this);
    painter.fillRect(rect(), boardGround(dark));
    if (empty()) {
        painter.setPen(boardColour(Ink::Text, dark));
        painter.drawText(rect(), Qt::AlignCenter,
                         tr("This month has nothing to show yet. Esc leaves."));
        return;
    }
    const Layout page = boardPage(board_, moment());
    const double scale = std::min(width() / page.paper.width(), height() / page.paper.height());
    painter.translate((width() - scale * page.paper.width()) / 2,
                      (height() - scale * page.paper.height()) / 2);
    painter.scale(scale, scale);
    paintPage(painter, page, 0, [dark](Ink ink) { return boardColour(ink, dark); });
}

void BoardView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut();
}

} // namespace bw
