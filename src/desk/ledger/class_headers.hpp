// SPDX-License-Identifier: GPL-3.0-or-later
// The edges of the class grid: the session's exercises on top, members at the left, with a tick for
// who came and a mark for who has flags.
#pragma once
#include <QHeaderView>

namespace bw {

class SlotsHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit SlotsHeader(QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;
};

class MembersHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit MembersHeader(QWidget* parent);
    void setCurrent(int row); // the row of the cursor; -1: none
    void fit();               // as wide as the longest name, within limits

protected:
    void paintEvent(QPaintEvent* event) override;
    void paintSection(QPainter* painter, const QRect& rect, int row) const override;

private:
    int current_ = -1;
};

} // namespace bw
