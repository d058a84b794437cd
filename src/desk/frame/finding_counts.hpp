// SPDX-License-Identifier: GPL-3.0-or-later
// How many findings there are of each level: ■ 0 ▲ 3 ● 4. Pressing it goes to the next one.
#pragma once
#include <QAbstractButton>

namespace bw {

class Draft;

class FindingCounts : public QAbstractButton {
    Q_OBJECT
public:
    FindingCounts(Draft& draft, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void follow();
    Draft& draft_;
};

} // namespace bw
