// SPDX-License-Identifier: GPL-3.0-or-later
// Members by exercises of one class date: an adapter. A cell's text is its sets in shorthand; text
// that is not understood is kept in its cell, marked, until it is typed over or dropped.
#pragma once
#include "desk/ledger/class_day.hpp"

#include <QAbstractTableModel>

#include <set>

namespace bw {

class ClassModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { LastRole = Qt::UserRole, AimRole, TroubleRole, InsteadRole, RuledOutRole };
    enum NameRole { CameRole = Qt::UserRole, FlaggedRole }; // of the vertical header: bool

    explicit ClassModel(OpenGym& gym, QObject* parent);

    // Members in this order; only rows that are looked at are read.
    void show(std::shared_ptr<ClassDay> day, std::vector<MemberId> members);
    void readAgain();                // results changed, nothing else
    [[nodiscard]] int count() const; // of those who came
    // Reads these rows with one look into the file, before each is asked for by itself.
    void want(int firstRow, int lastRow);

    [[nodiscard]] const ClassDay* day() const { return day_.get(); } // null: nothing shown yet
    [[nodiscard]] const Member* member(int row) const;
    [[nodiscard]] const std::vector<MemberId>& members() const { return members_; }
    [[nodiscard]] const ClassCell* cell(const QModelIndex& index) const; // null: not there

    // Sets for text that is typed in a cell; "=" are those of last time.
    [[nodiscard]] Result<std::vector<LiftedSet>> setsFor(const QModelIndex& index,
                                                         const QString& text) const;
    [[nodiscard]] bool enter(const QModelIndex& index, const std::vector<LiftedSet>& sets);
    void drop(const QModelIndex& index); // text that is not understood

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void refused(const bw::Message& why) const; // could not be read or stored

private:
    struct Pending {
        QString text, why;
    };
    [[nodiscard]] const ClassRow* row(int row) const;
    [[nodiscard]] QString text(const QModelIndex& index) const;
    [[nodiscard]] QString sentence(const QModelIndex& index) const;
    [[nodiscard]] const Pending* pending(const QModelIndex& index) const;
    void keepTyped(const QModelIndex& index, const QString& text, const Message& why);

    OpenGym& gym_;
    std::shared_ptr<ClassDay> day_; // reads on as rows are asked for
    std::vector<MemberId> members_;
    std::optional<int> entering_;                                // the row that is being stored
    std::map<std::pair<MemberId, ExerciseId>, Pending> pending_; // by column's exercise
};

} // namespace bw
