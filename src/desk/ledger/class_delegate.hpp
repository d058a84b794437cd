// SPDX-License-Identifier: GPL-3.0-or-later
// Paints a cell like a line on paper: what was lifted, below it small last time and the target.
// Text that is not understood keeps the line open when it is left by key, and says why.
#pragma once
#include "desk/bench/cell_delegate.hpp"

namespace bw {

class ClassModel;

class ClassDelegate : public CellDelegate {
    Q_OBJECT
public:
    ClassDelegate(ClassModel& grid, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

Q_SIGNALS:
    void leave(int rows, int columns) const; // typed text was taken; go on by so many cells

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    [[nodiscard]] std::optional<Message> fault(CellEditor& editor) const override;

    ClassModel& grid_;
};

} // namespace bw
