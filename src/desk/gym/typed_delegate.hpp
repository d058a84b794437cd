// SPDX-License-Identifier: GPL-3.0-or-later
// Paints lines that are typed in like print on paper, and opens the cell to type in. What can't be
// read keeps the cell open, and trouble() says why.
#pragma once
#include "desk/bench/cell_delegate.hpp"

#include <functional>

namespace bw {

// What a model of typed lines says beside its text.
enum TypedRole {
    kHeadRole = Qt::UserRole + 1, // bool: the heading of a part
    kQuietRole,                   // bool: stands back
    kHintRole                     // text for an empty cell
};

class TypedDelegate : public CellDelegate {
    Q_OBJECT
public:
    // Why this text can't be taken into that cell; none: it can.
    using Reader = std::function<std::optional<Message>(const QModelIndex&, const QString&)>;
    TypedDelegate(Reader reader, QObject* parent);

    // Room at the left of a cell that can be ticked.
    static constexpr int kTickRoom = 26;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    // A tick is set by its table, and by nobody else.
    bool editorEvent(QEvent*, QAbstractItemModel*, const QStyleOptionViewItem&,
                     const QModelIndex&) override {
        return false;
    }
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

private:
    [[nodiscard]] std::optional<Message> fault(CellEditor& editor) const override;

    Reader reader_;
};

} // namespace bw
