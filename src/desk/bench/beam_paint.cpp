// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/beam_paint.hpp"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace bw {

namespace {
constexpr double kSteepest = 17 * std::numbers::pi / 180; // of a tilt of 1
constexpr double kBox = 18, kBand = 7;                    // of a weight; from the arm's end
constexpr int kBeamHigh = 56;

const QColor& colourOf(BeamSide side, const Inks& k) { // orange, sky blue
    return k.section[static_cast<std::size_t>(side == BeamSide::Left ? SectionKind::Power
                                                                     : SectionKind::Finisher)];
}

class BeamInk {
public:
    BeamInk(QPainter& p, const BeamScale& scale, const BeamGeometry& g, const QFont& small,
            const Inks& k)
        : p_(p), scale_(scale), g_(g), small_(small), k_(k) {}

    void paint(BeamSide cursor) {
        stand();
        band(scale_.month.band, kBand, QPen(k_.quiet, 4, Qt::SolidLine, Qt::FlatCap));
        if (scale_.windowMonths > 1) {
            band(scale_.window.band, kBand + 5, QPen(k_.quiet, 1.5, Qt::SolidLine, Qt::FlatCap));
            ghost();
        }
        beam();
        words();
        if (cursor != BeamSide::None) {
            p_.setBrush(Qt::NoBrush);
            p_.setPen(QPen(k_.accent, k_.stroke + 1));
            p_.drawRoundedRect(g_.half(cursor).adjusted(1, 1, -1, -1), 3, 3);
        }
    }

private:
    void stand() {
        const std::array<QPointF, 3> foot{g_.pivot, QPointF(g_.pivot.x() - 8, g_.beam.bottom()),
                                          QPointF(g_.pivot.x() + 8, g_.beam.bottom())};
        p_.setPen(Qt::NoPen);
        p_.setBrush(k_.quiet);
        p_.drawPolygon(foot.data(), static_cast<int>(foot.size()));
    }

    // On both sides, where the end of a beam may be.
    void band(const LimitValue& limit, double beyond, const QPen& pen) {
        const double lo = BeamWeighing::tiltOf(limit.lo), hi = BeamWeighing::tiltOf(limit.hi);
        for (const double way : {-1.0, 1.0}) {
            std::array<QPointF, 9> points;
            for (std::size_t i = 0; i < points.size(); ++i) {
                const double part = static_cast<double>(i) / (points.size() - 1);
                points[i] = g_.end(lo + (hi - lo) * part, way * (g_.arm + beyond));
            }
            p_.setPen(pen);
            p_.setBrush(Qt::NoBrush);
            p_.drawPolyline(points.data(), static_cast<int>(points.size()));
        }
    }

    void ghost() {
        const double tilt = scale_.window.tilt();
        p_.setPen(QPen(k_.quiet, 1.2, Qt::DashLine));
        p_.drawLine(g_.end(tilt, -g_.arm - kBand - 6), g_.end(tilt, g_.arm + kBand + 6));
    }

    void beam() {
        const double tilt = scale_.month.tilt();
        p_.setPen(QPen(k_.ink, 2.4, Qt::SolidLine, Qt::RoundCap));
        p_.drawLine(g_.end(tilt, -g_.arm - kBand), g_.end(tilt, g_.arm + kBand));
        for (const BeamSide side : {BeamSide::Left, BeamSide::Right}) {
            const double way = side == BeamSide::Left ? -1 : 1;
            const QPointF on = g_.end(tilt, way * (g_.arm - kBox / 2));
            const bool some =
                (side == BeamSide::Left ? scale_.month.ratio.over : scale_.month.ratio.under) > 0;
            p_.setPen(QPen(k_.ink, k_.stroke));
            p_.setBrush(some ? QBrush(colourOf(side, k_)) : QBrush(Qt::NoBrush));
            p_.drawRoundedRect(
                QRectF(on.x() - kBox / 2, on.y() - kBox * 0.75 - 1.5, kBox, kBox * 0.75), 2, 2);
        }
    }

    void words() {
        p_.setFont(small_);
        p_.setPen(k_.ink);
        const auto side = [&](const QString& name, double sets, Qt::Alignment where) {
            p_.drawText(g_.sides, static_cast<int>(where | Qt::AlignVCenter),
                        name + QLatin1Char(' ') + setsText(sets));
        };
        side(scale_.left, scale_.month.ratio.over, Qt::AlignLeft);
        side(scale_.right, scale_.month.ratio.under, Qt::AlignRight);
        figure(g_.month, scale_.monthText(), scale_.month.within() ? k_.ink : k_.level[1]);
        figure(g_.window, scale_.windowText(), scale_.window.within() ? k_.quiet : k_.level[2]);
    }
    void figure(const QRectF& room, const QString& text, const QColor& colour) {
        p_.setPen(colour);
        p_.drawText(
            room, Qt::AlignCenter,
            QFontMetrics(small_).elidedText(text, Qt::ElideRight, static_cast<int>(room.width())));
    }

    QPainter& p_;
    const BeamScale& scale_;
    const BeamGeometry& g_;
    const QFont& small_;
    const Inks& k_;
};
} // namespace

int beamHeight(const QFont& small) { return kBeamHigh + 3 * QFontMetrics(small).height() + 4; }

BeamGeometry BeamGeometry::of(const QRectF& room, const QFont& small) {
    const double line = QFontMetrics(small).height();
    BeamGeometry g;
    g.beam = QRectF(room.left(), room.top(), room.width(), kBeamHigh);
    g.sides = QRectF(room.left(), g.beam.bottom() + 2, room.width(), line);
    constexpr double kOver = 6; // into the gaps beside it
    g.month = g.sides.translated(0, line).adjusted(-kOver, 0, kOver, 0);
    g.window = g.month.translated(0, line);
    g.pivot = QPointF(g.beam.center().x(), g.beam.top() + kBeamHigh * 0.6);
    constexpr double kWidest = 84, kMargin = 16;
    g.arm = std::min(room.width() / 2 - kMargin, kWidest);
    return g;
}

QPointF BeamGeometry::end(double tilt, double reach) const {
    const double angle = -tilt * kSteepest; // the heavier side goes down
    return pivot + QPointF(reach * std::cos(angle), reach * std::sin(angle));
}

QRectF BeamGeometry::half(BeamSide side) const {
    constexpr double kAround = 5;
    const QRectF all(beam.topLeft() - QPointF(kAround, 0),
                     sides.bottomRight() + QPointF(kAround, 0));
    QRectF half = all;
    half.setWidth(all.width() / 2);
    return side == BeamSide::Left ? half : half.translated(all.width() / 2, 0);
}

void paintBeam(QPainter& painter, const BeamScale& scale, const BeamGeometry& geometry,
               const QFont& small, BeamSide cursor, const Inks& inks) {
    BeamInk(painter, scale, geometry, small, inks).paint(cursor);
}

} // namespace bw
