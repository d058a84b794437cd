// SPDX-License-Identifier: GPL-3.0-or-later
// The table of the Shelf, like print on paper. What is typed into it goes to the filter.
#pragma once
#include "desk/shelf/shelf_model.hpp"

#include <QTableView>

namespace bw {

class ShelfTable : public QTableView {
    Q_OBJECT
public:
    ShelfTable(ShelfModel& model, QWidget* parent);

    void goTo(int row);
    void sortHere(); // by the cursor's column; again: the other way round

Q_SIGNALS:
    void lineChanged();
    void entryWanted(); // Enter or F2: to all of it
    void typed(const QString& text);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void layOut();

    ShelfModel& shelf_;
    int column_ = ShelfLine::Name; // of the cursor, also while the table is narrowed
};

} // namespace bw
