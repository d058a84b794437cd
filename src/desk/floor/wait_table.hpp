// SPDX-License-Identifier: GPL-3.0-or-later
// Waiting by kit item: a bar for the mean, a line on to what 9 in 10 wait at most, and the figures.
#pragma once
#include "desk/floor/wait_model.hpp"

#include <QTableView>

namespace bw {

class WaitTable : public QTableView {
    Q_OBJECT
public:
    explicit WaitTable(QWidget* parent);
    void show(const FloorView& view); // the row chosen stays chosen

private:
    WaitModel* model_;
};

} // namespace bw
