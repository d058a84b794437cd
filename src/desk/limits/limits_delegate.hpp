// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the limits like print on paper, and opens the line to type one in. What can't be read
// keeps the line open and says what is understood.
#pragma once
#include "desk/bench/cell_delegate.hpp"

namespace bw {

class LimitsModel;

class LimitsDelegate : public CellDelegate {
    Q_OBJECT
public:
    LimitsDelegate(LimitsModel& limits, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

Q_SIGNALS:
    void typed(const QModelIndex& index, const QString& text) const;

private:
    [[nodiscard]] std::optional<Message> fault(CellEditor& editor) const override;

    LimitsModel& limits_;
};

} // namespace bw
