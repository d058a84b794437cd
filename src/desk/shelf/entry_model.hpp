// SPDX-License-Identifier: GPL-3.0-or-later
// Everything of one exercise, a line each: its fields, its cues and cautions with an empty line to
// add one, and the months that used it. An adapter; what is typed goes through the verbs.
#pragma once
#include "desk/shelf/shelf_uses.hpp"
#include "edit/shelf_verbs.hpp"

#include <QAbstractListModel>

#include <optional>

namespace bw {

class EntryModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        LabelRole = Qt::UserRole + 1, // QString: what the line is; empty: as the line before
        PartRole,                     // bool: a new part of the page begins
        NameRole,                     // bool: the name
        QuietRole                     // bool: says nothing yet
    };
    struct Row {
        enum class Kind { Field, Cue, Caution, Use } kind = Kind::Field;
        ExerciseField field = ExerciseField::Name;
        std::size_t at = 0; // of the cues, cautions or uses
        bool part = false;
        bool operator==(const Row&) const = default;
    };

    EntryModel(OpenGym& gym, QObject* parent);

    // None: no exercise. What the same exercise has kept stays where it is.
    void show(std::optional<ExerciseId> id, const ShelfUses& uses);
    [[nodiscard]] const Exercise* exercise() const;
    [[nodiscard]] const Row& rowAt(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] const ShelfUse* useAt(int row) const; // null: no line of a month
    // Why the line can't be so; none: it can.
    [[nodiscard]] std::optional<Message> fault(int row, const QString& text) const;
    [[nodiscard]] QStringList wordsFor(int row) const; // that can stand there

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void refused(const bw::Message& why);

private:
    void take(std::vector<Row> rows); // of the same exercise
    [[nodiscard]] std::vector<Row> rowsOf(const Exercise& e) const;
    [[nodiscard]] QString label(const Row& row) const; // of each line
    [[nodiscard]] QString text(const Row& row) const;
    [[nodiscard]] QString useText(const ShelfUse& use) const;
    [[nodiscard]] Did write(const Row& row, const std::string& text);

    OpenGym& gym_;
    std::optional<ExerciseId> id_;
    std::vector<ShelfUse> uses_; // latest first
    std::vector<Row> rows_;
};

} // namespace bw
