// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board/board_clock.hpp"
#include "blockwright/model/shorthand.hpp"
#include "sheets/board/board_setter.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kFigures = 2.2;    // times the least em
constexpr double kBeyond = 1.25;    // of the plan, that the bar has room for
constexpr double kHatchStep = 0.55; // of the bar's height

Millis passed(const BoardTime& time) {
    return std::chrono::floor<std::chrono::seconds>(time.elapsed.value_or(Millis{0}));
}

QString stateWords(Millis planned, const BoardTime& time, bool over) {
    if (!time.elapsed) return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Space starts"));
    if (time.paused) return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "paused"));
    if (planned <= Millis{0}) return {};
    const Millis left = planned - passed(time);
    return over
               ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 over")).arg(printed(clockText(-left)))
               : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 left")).arg(printed(clockText(left)));
}

// A triangle for running over, two bars for a pause, left of `right` and standing on its line.
void putShape(PagePen& pen, QPointF right, double height, bool paused) {
    const double x = right.x(), y = right.y();
    if (!paused) {
        pen.fill({{{x - height, y}, {x, y}, {x - 0.5 * height, y - height}}}, Ink::Text);
        return;
    }
    for (const double left : {0.8 * height, 0.3 * height})
        pen.fill(QPolygonF(QRectF(x - left, y - height, 0.3 * height, height)), Ink::Text);
}
} // namespace

ClockWords clockWords(Millis planned, const BoardTime& time) {
    ClockWords words;
    words.figures = printed(clockText(passed(time)));
    if (planned > Millis{0})
        words.plan = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "planned %1"))
                         .arg(printed(clockText(planned)));
    words.over = planned > Millis{0} && passed(time) > planned;
    words.state = stateWords(planned, time, words.over);
    return words;
}

double putClock(PagePen& pen, const ClockWords& words, const BoardTime& time, QPointF right,
                double room, double least) {
    const TypeRuler& ruler = pen.ruler();
    const bool shaped = words.over || time.paused;
    const auto stateWidth = [&](double em) {
        return ruler.width(words.state, {em, Weight::Bold}) + (shaped ? 1.1 * ruler.cap(em) : 0);
    };
    double em = least;
    const auto used = [&] {
        return ruler.width(words.figures, {kFigures * em, Weight::Bold}) + 0.6 * em +
               std::max(stateWidth(em), ruler.width(words.plan, {kBoardLesser * em}));
    };
    while (used() > room) em *= 0.96; // hours of a section, or words of another language
    const Look figures{
        {kFigures * em, Weight::Bold}, time.elapsed ? Ink::Text : Ink::Quiet, Rank::Title};
    pen.right(words.figures, right, room, figures);
    const double wide = ruler.width(words.figures, figures.type) + 0.6 * em;
    const QPointF beside = right - QPointF(wide, 0);
    pen.right(words.state, beside, room - wide, {{em, Weight::Bold}, Ink::Text, Rank::Head});
    if (shaped)
        putShape(pen,
                 beside -
                     QPointF(ruler.width(words.state, {em, Weight::Bold}) + 0.3 * ruler.cap(em), 0),
                 0.8 * ruler.cap(em), time.paused);
    pen.right(words.plan, beside - QPointF(0, 1.02 * em), room - wide,
              {{kBoardLesser * em}, Ink::Quiet, Rank::Second});
    return used();
}

void putClockBar(PagePen& pen, Millis planned, const BoardTime& time, const QRectF& bar) {
    if (planned <= Millis{0}) return;
    const auto ms = [](Millis t) { return static_cast<double>(t.count()); };
    const double plan = ms(planned), now = ms(passed(time));
    const double scale = bar.width() / std::max(kBeyond * plan, now);
    const double end = bar.left() + scale * plan, at = bar.left() + scale * now;
    pen.fill(QPolygonF(bar), Ink::Tint);
    pen.fill(QPolygonF(QRectF(bar.topLeft(), QPointF(std::min(at, end), bar.bottom()))),
             Ink::Accent);
    const double h = bar.height();
    for (double x = end + kHatchStep * h; x + 0.5 * h <= at; x += kHatchStep * h)
        pen.line({x, bar.bottom()}, {x + 0.5 * h, bar.top()}, 0.16 * h, Ink::Text);
    if (at > end) pen.line({at, bar.top()}, {at, bar.bottom()}, 0.16 * h, Ink::Text);
    pen.line({end, bar.top() - 0.25 * h}, {end, bar.bottom() + 0.25 * h}, 0.3 * h, Ink::Text);
}

} // namespace bw
