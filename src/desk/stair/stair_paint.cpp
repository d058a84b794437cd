// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_paint.hpp"

#include "desk/frame/mixed_ink.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/stair_words.hpp"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr int kMostRpe = 10;
constexpr double kRuler = 30, kSide = 8;

QString tr(const char* text) { return QCoreApplication::translate("StairView", text); }

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}
double crisp(double y) { return std::round(y) + 0.5; }

// One painting; the names say what is inked.
class Drawing {
public:
    Drawing(QPainter& p, const StairPicture& picture, const StairGeometry& g, const Inks& k)
        : p_(p), it_(picture), g_(g), k_(k), font_(p.font()), small_(smallFont(font_)) {}

    void paint() {
        for (std::size_t i = 0; i < it_.steps.size(); ++i) ground(static_cast<int>(i));
        lines();
        ruler();
        legend();
        before();
        pointer();
        profile();
        for (std::size_t i = 0; i < it_.steps.size(); ++i) words(static_cast<int>(i));
        if (it_.focus) {
            p_.setPen(QPen(k_.accent, k_.stroke + 1));
            p_.setBrush(Qt::NoBrush);
            p_.drawRect(g_.step(it_.week, rir(it_.week)).adjusted(3, 3, -3, -3));
        }
    }

private:
    [[nodiscard]] Rir rir(int week) const { return it_.steps[static_cast<std::size_t>(week)].rir; }

    void ground(int week) {
        const bool now = week == it_.week;
        p_.fillRect(g_.step(week, rir(week)), now ? k_.wash : mixedInk(k_.paper, k_.wash, 0.45));
    }

    void lines() {
        const double right = g_.plot.right();
        for (int rpe = 0; rpe <= kMostRpe; ++rpe) {
            const double y = crisp(yAt(rpe));
            const double weight = (rpe % 5 == 0 ? 0.9 : 0.4) * (k_.highContrast ? 0.35 : 1);
            p_.setPen(QPen(mixedInk(k_.paper, k_.line, weight), 1)); // words stand on them
            p_.drawLine(QPointF(g_.plot.left(), y), QPointF(right, y));
        }
    }

    [[nodiscard]] double yAt(double rpe) const {
        return g_.plot.bottom() - g_.plot.height() * rpe / kMostRpe;
    }

    void ruler() {
        const double x = crisp(g_.plot.left()) - 1;
        p_.setFont(small_);
        const bool every = yAt(0) - yAt(1) > p_.fontMetrics().height();
        p_.setPen(QPen(k_.quiet, 1));
        p_.drawLine(QPointF(x, g_.plot.top()), QPointF(x, g_.plot.bottom()));
        for (int half = 0; half <= 2 * kMostRpe; ++half) {
            const double y = crisp(yAt(half / 2.0));
            const double tick = half % 10 == 0 ? 9 : half % 2 == 0 ? 6 : 3;
            p_.drawLine(QPointF(x - tick, y), QPointF(x, y));
            if (half % 2 != 0 || (!every && half % 4 != 0)) continue;
            p_.drawText(QRectF(x - kRuler, y - 10, kRuler - 12, 20),
                        Qt::AlignRight | Qt::AlignVCenter, QString::number(half / 2));
        }
    }

    void legend() {
        QRectF room(kSide, g_.plot.top() - 4, g_.plot.left() - kRuler - 2 * kSide,
                    g_.plot.height());
        p_.setFont(bold(font_));
        p_.setPen(k_.ink);
        p_.drawText(room, Qt::AlignLeft | Qt::AlignTop, tr("Effort of the weeks"));
        room.setTop(room.top() + p_.fontMetrics().height() + 2);
        p_.setFont(small_);
        p_.setPen(k_.quiet);
        const QString scale = tr("RPE: 10 less the repetitions in reserve");
        const QRectF took = p_.boundingRect(room, Qt::TextWordWrap, scale);
        p_.drawText(room, Qt::TextWordWrap, scale);
        room.setTop(took.bottom() + kSide);
        p_.setPen(it_.odd ? k_.ink : k_.quiet);
        p_.drawText(room, Qt::TextWordWrap, it_.note);
    }

    // Where a step that is being moved was.
    void before() {
        p_.setPen(QPen(k_.quiet, 1.5, Qt::DotLine));
        for (std::size_t i = 0; i < std::min(it_.steps.size(), it_.stored.size()); ++i) {
            const Rir was = it_.stored[i].rir;
            if (was == it_.steps[i].rir) continue;
            const QRectF step = g_.step(static_cast<int>(i), was);
            p_.drawLine(step.topLeft(), step.topRight());
        }
    }

    void profile() {
        QPolygonF line{QPointF(g_.plot.left(), g_.plot.bottom())};
        for (int i = 0; i < g_.weeks; ++i) {
            const QRectF step = g_.step(i, rir(i));
            line << QPointF(step.left(), crisp(step.top()))
                 << QPointF(step.right(), crisp(step.top()));
        }
        line << QPointF(g_.plot.right(), g_.plot.bottom());
        p_.setPen(QPen(k_.ink, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        p_.setBrush(Qt::NoBrush);
        p_.drawPolyline(line);
        p_.drawLine(g_.plot.bottomLeft(), g_.plot.bottomRight());
    }

    void words(int week) {
        using Line = StairGeometry::Line;
        const StairStep& step = it_.steps[static_cast<std::size_t>(week)];
        const auto draw = [&](Line line, const QString& text, const QFont& font,
                              const QColor& ink) {
            QFont own = font;
            own.setUnderline(week == it_.hoverWeek && line == it_.hoverLine && line != Line::Name);
            p_.setFont(own);
            p_.setPen(ink);
            QRectF room = g_.line(week, step.rir, line, font_);
            if (line == Line::Effort) // over the lines of the paper
                p_.fillRect(p_.boundingRect(room, Qt::AlignLeft | Qt::AlignVCenter, text),
                            k_.paper);
            p_.drawText(
                room, Qt::AlignLeft | Qt::AlignVCenter,
                p_.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(room.width())));
        };
        draw(Line::Effort, inReserve(step.rir), bold(font_), k_.ink);
        draw(Line::Name, tr("Week %1").arg(week + 1), bold(font_), k_.ink);
        draw(Line::Rounds, roundsWord(step.rounds), font_, k_.ink);
        draw(Line::Intent, weekIntent(step.intent), font_, k_.ink);
    }

    // From the tread of the week on show across to the ruler.
    void pointer() {
        const QRectF step = g_.step(it_.week, rir(it_.week));
        const double y = crisp(step.top()), x = g_.plot.left();
        p_.setPen(QPen(k_.accent, 1, Qt::DashLine));
        if (it_.week > 0) p_.drawLine(QPointF(x, y), QPointF(step.left(), y));
        p_.setPen(Qt::NoPen);
        p_.setBrush(k_.accent);
        p_.drawPolygon(QPolygonF{{x + 1, y}, {x - 8, y - 5}, {x - 8, y + 5}});
        p_.setBrush(Qt::NoBrush);
    }

    QPainter& p_;
    const StairPicture& it_;
    const StairGeometry& g_;
    const Inks& k_;
    QFont font_, small_;
};
} // namespace

void paintStair(QPainter& painter, const StairPicture& picture, const StairGeometry& geometry,
                const Inks& inks) {
    if (picture.steps.empty()) return;
    Drawing(painter, picture, geometry, inks).paint();
}

} // namespace bw
