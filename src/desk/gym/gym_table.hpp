// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the gym itself. Typing or Enter opens what a line says.
#pragma once
#include "desk/gym/typed_table.hpp"

namespace bw {

class GymLines;

class GymTable : public TypedTable {
    Q_OBJECT
public:
    GymTable(GymLines& lines, QWidget* parent);

protected:
    [[nodiscard]] QModelIndex cellFor(const QModelIndex& now, const QString& key) const override;
    void layOut() override;
};

} // namespace bw
