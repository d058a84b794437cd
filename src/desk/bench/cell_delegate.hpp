// SPDX-License-Identifier: GPL-3.0-or-later
// What all cells that are typed in share: what is being typed is kept when the model tells its data
// anew, and text that can't be read keeps the line open when it is left by key, and says why.
#pragma once
#include "blockwright/model/message.hpp"

#include <QPersistentModelIndex>
#include <QStyledItemDelegate>

#include <optional>

namespace bw {

class CellEditor;

class CellDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    // Enters what is being typed in the view, as a click elsewhere would.
    void finishTyping(const QWidget& view);

Q_SIGNALS:
    void trouble(const bw::Message& why) const; // typed text not understood
    void clear() const;                         // nothing is wrong (any more)

protected:
    bool eventFilter(QObject* object, QEvent* event) override;
    // Whether the text can be taken; if not, the editor and trouble() have said why.
    [[nodiscard]] bool mayLeave(CellEditor* editor) const;
    [[nodiscard]] QModelIndex edited() const { return edited_; } // invalid: no cell is open

private:
    // Why text that was changed can't be taken; none: it can.
    [[nodiscard]] virtual std::optional<Message> fault(CellEditor& editor) const = 0;

    mutable QPersistentModelIndex edited_;
};

} // namespace bw
