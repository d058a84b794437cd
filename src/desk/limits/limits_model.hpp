// SPDX-License-Identifier: GPL-3.0-or-later
// The limits of the rule book as a table: an adapter. A head for each rule, then its limits, each
// with this house's value, the rule book's, and where that comes from. Only this house's can be
// typed; emptied, it is the rule book's again.
#pragma once
#include "blockwright/rules/house_limits.hpp"
#include "edit/open_gym.hpp"

#include <QAbstractTableModel>

namespace bw {

class LimitsModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Meaning, House, Standard, Basis, kColumns };
    enum Role { HeadRole = Qt::UserRole + 1, SetRole }; // bool: a head; this house has its own

    struct Choice {
        QString words; // each must be somewhere in what is said of the limit or its rule
        bool onlySet = false, weights = false;
        bool operator==(const Choice&) const = default;
    };

    explicit LimitsModel(OpenGym& gym, QObject* parent);

    void choose(const Choice& choice);
    [[nodiscard]] const Choice& choice() const { return choice_; }
    void refresh(); // the gym's values
    // Null on a head.
    [[nodiscard]] const HouseLimit* limitAt(int row) const;
    [[nodiscard]] const Rule* ruleAt(int row) const;       // null: the balance
    [[nodiscard]] int rowOf(const std::string& key) const; // -1: not among the chosen
    [[nodiscard]] const LimitValue* setValue(const HouseLimit& limit) const; // null: not set

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void refused(const bw::Message& why); // not understood, or not stored

private:
    struct Row {
        const Rule* rule = nullptr;
        const HouseLimit* limit = nullptr;
        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] std::vector<Row> chosenRows() const;
    [[nodiscard]] bool fits(const HouseLimit& limit) const;
    [[nodiscard]] QString headText(const Row& row, int column) const;
    [[nodiscard]] QString cellText(const HouseLimit& limit, int column) const;

    OpenGym& gym_;
    Choice choice_;
    std::vector<Row> rows_;
};

// What the coach wrote as a value of that limit; empty text: the rule book's.
[[nodiscard]] Result<std::optional<LimitValue>> readLimitCell(const QString& text,
                                                              const LimitSpec& spec);
[[nodiscard]] QString ruleTitle(const Rule* rule);

} // namespace bw
