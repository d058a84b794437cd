// SPDX-License-Identifier: GPL-3.0-or-later
// How many of the classes end when, against the class end; below it the span of 8 in 10 and the
// half. All of it is in the sentence beside it, too.
#pragma once
#include "desk/floor/floor_view.hpp"

#include <QWidget>

#include <vector>

namespace bw {

class FinishChart : public QWidget {
    Q_OBJECT
public:
    explicit FinishChart(QWidget* parent);
    void show(const FloorView& view);
    [[nodiscard]] QSize sizeHint() const override;

    // The wall is a border between two bins.
    struct Bins {
        Millis first{}, width{};
        std::vector<int> counts;
    };
    [[nodiscard]] static Bins binsOf(const std::vector<Millis>& finishes, Millis wall);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double x(Millis time) const;
    void paintBins(QPainter& painter) const;
    void paintAxis(QPainter& painter) const;
    void paintSpan(QPainter& painter) const;

    Bins bins_;
    FloorTimes finish_;
    Millis wall_{}, from_{}, to_{}; // from_ to to_: the scale
    QRectF room_;                   // of the bins, while painting
};

} // namespace bw
