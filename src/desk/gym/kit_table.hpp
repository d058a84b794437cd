// SPDX-License-Identifier: GPL-3.0-or-later
// The table of kit. Space ticks a line, or turns how it is taken; a figure on a name is how many,
// letters there look for a name.
#pragma once
#include "desk/gym/typed_table.hpp"

namespace bw {

class KitModel;

class KitTable : public TypedTable {
    Q_OBJECT
public:
    KitTable(KitModel& model, QWidget* parent);

    void goTo(int row);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    [[nodiscard]] QModelIndex cellFor(const QModelIndex& now, const QString& key) const override;
    void layOut() override;

private:
    void spanHeads();

    KitModel& kit_;
};

} // namespace bw
