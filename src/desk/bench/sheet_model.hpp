// SPDX-License-Identifier: GPL-3.0-or-later
// The draft as a table for the sheet view: an adapter, no rules of its own. What was typed and
// could not be read stays in its cell, marked, until it is mended or given up.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/bench/sheet_cells.hpp"

#include <QAbstractTableModel>

#include <map>

namespace bw {

class SheetModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        RowKindRole = Qt::UserRole + 1, // int of SheetRow::Kind
        UnreadRole,                     // bool: the text shown was not understood
        MainRole,
        LockedRole,
        OpenRole,    // bool
        OfferedRole, // bool: it is tried out, not stored
        LevelsRole,  // QString of shapes, worst first
        MarkRole,    // QString: what the line brings to what is looked at; null: it is not marked
        ChosenIdRole // set with setData: the id of a chosen exercise
    };

    explicit SheetModel(Draft& draft, QObject* parent = nullptr);

    [[nodiscard]] const std::vector<SheetRow>& rows() const { return rows_; }
    [[nodiscard]] std::optional<SheetCell> cellAt(const QModelIndex& index) const;
    [[nodiscard]] Draft& draft() const { return draft_; }

    // Typed text tried out in the draft, not stored; what can't be read gives why and ends the
    // trial.
    [[nodiscard]] std::optional<Message> tryText(const QModelIndex& index, const QString& text);
    void tryExercise(const QModelIndex& index, const Exercise& exercise);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    bool canDropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                         const QModelIndex& parent) const override;
    bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                      const QModelIndex& parent) override;
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }

Q_SIGNALS:
    void refused(const bw::Message& why); // typed text not understood, or not stored

private:
    struct Unread {
        QString text;
        Message why;
    };
    using Key = std::pair<Place, SheetColumn>;

    void refresh();
    void showLevels();
    bool enter(const QModelIndex& index, const CellEdit& edit);
    [[nodiscard]] const Unread* unreadAt(const QModelIndex& index) const;
    [[nodiscard]] QVariant shown(const SheetCell& cell, const QModelIndex& index, int role) const;
    [[nodiscard]] bool offered(const SheetCell& cell) const;
    [[nodiscard]] QString tipAt(const SheetCell& cell) const;

    Draft& draft_;
    std::vector<SheetRow> rows_;
    std::map<Key, Unread> unread_;
    std::optional<Month> unreadMonth_;
    std::map<Place, QString> levels_; // shapes of the findings of a place
};

} // namespace bw
