// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/bench/cell_delegate.hpp"

namespace bw {

class EntryModel;

// Paints the lines of an exercise, and opens one to type in. What can't be read keeps the line open
// and says what is understood.
class EntryDelegate : public CellDelegate {
    Q_OBJECT
public:
    EntryDelegate(EntryModel& entry, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

private:
    [[nodiscard]] std::optional<Message> fault(CellEditor& editor) const override;

    EntryModel& entry_;
};

} // namespace bw
