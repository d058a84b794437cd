// SPDX-License-Identifier: GPL-3.0-or-later
// One of the Almanac's tables. The names at the left stay when the months are scrolled. Arrows move
// in the table and out of it above and below; Enter opens the month.
#pragma once
#include "desk/almanac/almanac_model.hpp"

#include <QTableView>

namespace bw {

class MonthsHeader;
class NamesHeader;

class AlmanacView : public QTableView {
    Q_OBJECT
public:
    enum class Top { Months, None };
    AlmanacView(AlmanacModel& model, Top top, const QString& name, QWidget* parent);

    // Puts the cursor back on the line of the same name, else on the first that is no heading.
    void show(AlmanacModel::Months almanac, std::vector<AlmanacLine> lines,
              std::optional<Month> shown, int column);
    void setSizes(int names, int column, int row, int headingRow);
    void setEmptyText(const QString& text) { empty_ = text; } // shown when there is no line
    // To the same column's cell in the first (1) or last (-1) row. False: there is none.
    bool enter(int column, int step);
    void showColumn(int column);           // marks its month, scrolls to it
    [[nodiscard]] int rowsHeight() const;  // of all rows
    [[nodiscard]] int wholeHeight() const; // with the months above them
    [[nodiscard]] AlmanacModel& almanac() { return model_; }

Q_SIGNALS:
    void moved(const QModelIndex& to);
    void left(int step); // 1: out below, -1: out above
    void opened(const QModelIndex& cell);
    void monthWanted(int column); // its heading was clicked

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void updateGeometries() override;

private:
    void layOutRows();
    [[nodiscard]] QModelIndex firstIn(int column, int step) const;

    AlmanacModel& model_;
    MonthsHeader* months_;
    NamesHeader* names_;
    QString empty_;
    QWidget* corner_ = nullptr; // null: no months above
    int row_ = 20, headingRow_ = 20;
    bool leaving_ = false, quiet_ = false;
};

} // namespace bw
