// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the minute rail: from minutes to pixels, and ink.
//
//   headline
//   strip      room for where the simulated class ends each section
//   whiskers   from short to long, counted from where the section starts
//   bar        a name and a clock for each section, below them its groups to scale
//   budgets    a bracket from the section's start; two rows, so that neighbours may overlap
//   ruler      minutes
#pragma once
#include "desk/bench/minute_rail_plan.hpp"
#include "desk/frame/theme.hpp"

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace bw {

struct RailGeometry {
    QRectF headline, strip, whiskers, bar, groups, budgets, ruler;
    double perTick = 0; // pixels a quarter of a millisecond

    [[nodiscard]] double x(ExactTime time) const {
        return bar.left() + static_cast<double>(time.count()) * perTick;
    }
    [[nodiscard]] QRectF pieceRect(const RailPiece& piece) const;
    [[nodiscard]] QRectF groupRect(const RailGroup& group) const; // never narrower than 5 px
};

[[nodiscard]] RailGeometry railGeometry(QRectF area, const RailPlan& plan, const QFont& font);
[[nodiscard]] int railHeight(const QFont& font); // the least that shows everything

struct RailMarks {
    Place now;    // marked: where the coach is
    Place cursor; // framed while the rail has the focus
    bool focus = false;
    QString floor; // for the headline: what the simulated class says
};

void paintRail(QPainter& painter, const RailPlan& plan, const RailGeometry& geometry,
               const RailMarks& marks, const Inks& inks);

} // namespace bw
