// SPDX-License-Identifier: GPL-3.0-or-later
// A ruler of loads: the band that should hold what can be lifted once, its middle, and the loads of
// the weeks as small steps towards it.
#pragma once
#include "desk/stair/stair_member.hpp"

#include <QWidget>

namespace bw {

class EstimateRuler : public QWidget {
    Q_OBJECT
public:
    explicit EstimateRuler(QWidget* parent);
    void show(const SlotTargets* targets, MassUnit unit, int week); // null: nothing
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] double x(double load) const;
    void paintScale(QPainter& p);
    void paintEstimate(QPainter& p);
    void paintWeeks(QPainter& p);

    struct Step {
        int week;
        double load;
    };
    std::vector<Step> steps_;                // in the unit of the gym, like all here
    double low_ = 0, middle_ = 0, high_ = 0; // all 0: no estimate with an interval
    double from_ = 0, to_ = 1;
    int week_ = 0;
};

} // namespace bw
