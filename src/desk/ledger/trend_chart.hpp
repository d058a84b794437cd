// SPDX-License-Identifier: GPL-3.0-or-later
// A member's days in one exercise: the heaviest set of each as a dot, the load that could be lifted
// once as a line in the band that should hold it 8 times in 10. Without loads the dots are
// repetitions. Left, Right, Home and End walk over the days and tell them.
#pragma once
#include "blockwright/ledger/ledger.hpp"

#include <QWidget>

#include <functional>

namespace bw {

class TrendChart : public QWidget {
    Q_OBJECT
public:
    explicit TrendChart(QWidget* parent);

    void show(std::vector<LedgerDay> days, MassUnit unit);
    [[nodiscard]] QString words() const; // of the day that the attention is on; empty: no day
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void told(const QString& words);

protected:
    bool event(QEvent* event) override; // tool tips
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] double x(Date date) const;
    [[nodiscard]] double y(double value) const;
    [[nodiscard]] double shown(double kg) const; // in the gym's unit
    [[nodiscard]] std::optional<double> dot(const LedgerDay& day) const;
    [[nodiscard]] int dayAt(double x) const;
    [[nodiscard]] QString wordsOf(int day) const;
    void go(int day);
    void measure();
    void paintScale(QPainter& painter) const;
    void paintMonths(QPainter& painter) const;
    void paintBand(QPainter& painter) const;
    void paintDots(QPainter& painter) const;

    std::vector<LedgerDay> days_;
    MassUnit unit_ = MassUnit::Kg;
    bool loaded_ = false;                  // any day has a load
    double low_ = 0, high_ = 1, tick_ = 1; // the scale
    int now_ = -1;
    QRectF room_; // of the picture, without scale
};

} // namespace bw
