// SPDX-License-Identifier: GPL-3.0-or-later
// A line that opens and folds what stands below it. Checked: open.
#pragma once
#include <QAbstractButton>

namespace bw {

class FoldHead : public QAbstractButton {
    Q_OBJECT
public:
    FoldHead(const QString& text, QWidget* parent);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
};

} // namespace bw
