// SPDX-License-Identifier: GPL-3.0-or-later
// The edges of the Almanac's tables: months on top, names with the month of last use at the left.
#pragma once
#include <QHeaderView>

namespace bw {

class MonthsHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit MonthsHeader(QWidget* parent);
    void setCurrent(int column); // the column of the cursor; -1: none
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;

private:
    int current_ = -1;
};

class NamesHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit NamesHeader(QWidget* parent);
    void setCurrent(int row); // the row of the cursor; -1: none

protected:
    void paintEvent(QPaintEvent* event) override;
    void paintSection(QPainter* painter, const QRect& rect, int row) const override;

private:
    int current_ = -1;
};

// Above the names, left of the months: what stands below it.
class NamesCorner : public QWidget {
    Q_OBJECT
public:
    explicit NamesCorner(QWidget* parent) : QWidget(parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace bw
