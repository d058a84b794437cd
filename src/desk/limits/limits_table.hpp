// SPDX-License-Identifier: GPL-3.0-or-later
// The table of limits. Typing or Enter opens this house's value of the line, Delete puts it back to
// the rule book's.
#pragma once
#include <QTableView>

namespace bw {

class LimitsModel;

class LimitsTable : public QTableView {
    Q_OBJECT
public:
    LimitsTable(LimitsModel& model, QWidget* parent);

    void goTo(int row); // this house's value of that line

Q_SIGNALS:
    void lineChanged();
    void typingEnded();
    void resetWanted();

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void layOut(); // spans, widths

    LimitsModel& limits_;
};

} // namespace bw
