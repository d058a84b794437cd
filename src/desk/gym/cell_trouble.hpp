// SPDX-License-Identifier: GPL-3.0-or-later
// The sentence beside a cell whose text can't be taken: under it, or above where there is no room.
#pragma once
#include <QLabel>

class QAbstractItemView;

namespace bw {

class CellTrouble : public QLabel {
    Q_OBJECT
public:
    explicit CellTrouble(QAbstractItemView& view); // lies on the view's paper

    void tell(const QRect& cell, const QString& sentence);

protected:
    void changeEvent(QEvent* event) override;

private:
    void dress();

    QAbstractItemView& view_;
};

} // namespace bw
