// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_bands.hpp"
#include "sheets/wall/wall_columns.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace bw {

namespace {
QString roundsHead() { return QCoreApplication::translate("bw::sheets", "rounds"); }

double needed(const std::vector<WallWeek>& weeks, double em, const TypeRuler& ruler) {
    double widest = 0;
    for (const WallWeek& w : weeks) {
        widest = std::max(widest, ruler.width(w.week, {em, Weight::Bold}));
        for (const QString& text : {w.intent, w.rir, w.rounds})
            widest = std::max(widest, ruler.width(text, {em}));
    }
    const double heads = std::max(ruler.width(roundsHead(), {em}), ruler.width(effortHead(), {em}));
    return heads + em + static_cast<double>(weeks.size()) * (widest + 0.5 * em);
}

class Stair {
public:
    Stair(const std::vector<WallWeek>& weeks, const WallType& type, double width,
          const TypeRuler& ruler)
        : weeks_(weeks), ruler_(ruler), pen_(ruler, band_.items), width_(width) {
        fit(type);
        heads_ = std::max(ruler.width(roundsHead(), {em_}), ruler.width(effortHead(), {em_})) + em_;
        step_ = (width - heads_) / static_cast<double>(weeks.size());
        rise_ = 0.5 * type.small;
        hair_ = type.hair;
    }
    Band draw() {
        drawTreads();
        row({}, &WallWeek::week, {{em_, Weight::Bold}, Ink::Text, Rank::Small});
        row({}, &WallWeek::intent, {{em_}, Ink::Accent, Rank::Small});
        row(effortHead(), &WallWeek::rir, {{em_}, Ink::Text, Rank::Small});
        row(roundsHead(), &WallWeek::rounds, {{em_}, Ink::Text, Rank::Small});
        return std::move(band_);
    }

private:
    // Six weeks take smaller type than four.
    void fit(const WallType& type) {
        em_ = type.small;
        while (em_ > type.foot && needed(weeks_, em_, ruler_) > width_)
            em_ = std::max(type.foot, 0.96 * em_);
    }
    [[nodiscard]] double x(std::size_t week) const {
        return heads_ + step_ * static_cast<double>(week);
    }

    void drawTreads() {
        int top = 0;
        for (const WallWeek& w : weeks_) top = std::max(top, w.tread);
        const double base = rise_ * (top + 1) + hair_;
        QPolygonF treads;
        for (std::size_t i = 0; i < weeks_.size(); ++i) {
            const double y = base - rise_ * (weeks_[i].tread + 1);
            treads << QPointF(x(i), y) << QPointF(x(i) + step_, y);
        }
        QPolygonF solid = treads;
        solid << QPointF(x(weeks_.size()), base) << QPointF(x(0), base);
        pen_.fill(solid, Ink::Tint);
        pen_.stroke(treads, 3 * hair_, Ink::Accent);
        band_.height = base + 0.3 * em_;
    }
    void row(const QString& head, QString WallWeek::*part, const PagePen::Look& look) {
        const double baseline = band_.height + 0.95 * em_;
        pen_.left(head, {0, baseline}, heads_, {{em_}, Ink::Quiet, Rank::Small});
        for (std::size_t i = 0; i < weeks_.size(); ++i)
            pen_.left(weeks_[i].*part, {x(i), baseline}, step_, look);
        band_.height += 1.25 * em_;
    }

    const std::vector<WallWeek>& weeks_;
    const TypeRuler& ruler_;
    Band band_;
    PagePen pen_;
    double width_, em_ = 0, heads_ = 0, step_ = 0, rise_ = 0, hair_ = 0;
};
} // namespace

double stairWidth(const std::vector<WallWeek>& weeks, const WallType& type,
                  const TypeRuler& ruler) {
    return needed(weeks, type.foot, ruler);
}

Band stairBand(const std::vector<WallWeek>& weeks, const WallType& type, double width,
               const TypeRuler& ruler) {
    return weeks.empty() ? Band{} : Stair(weeks, type, width, ruler).draw();
}

} // namespace bw
