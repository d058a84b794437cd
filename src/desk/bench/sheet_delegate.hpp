// SPDX-License-Identifier: GPL-3.0-or-later
// Paints a cell of the sheet like print on paper, and opens the line to type in it. While a cell is
// typed in, the draft is measured with it; what can't be read keeps the line open and says why.
#pragma once
#include "desk/bench/cell_delegate.hpp"

namespace bw {

struct Exercise;
class ExerciseEditor;
class SheetModel;
struct Exercise;

class SheetDelegate : public CellDelegate {
    Q_OBJECT
public:
    explicit SheetDelegate(SheetModel& sheet, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

Q_SIGNALS:
    void addWanted(const QModelIndex& index, const QString& name) const;

private:
    QWidget* exerciseEditor(QWidget* parent, const QModelIndex& index) const;
    void follow(CellEditor* editor, const QModelIndex& index) const;
    void tellOf(const Exercise* lit) const; // that it is retired; null: nothing is lit
    [[nodiscard]] std::optional<Message> fault(CellEditor& editor) const override;

    SheetModel& sheet_;
};

} // namespace bw
