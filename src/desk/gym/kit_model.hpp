// SPDX-License-Identifier: GPL-3.0-or-later
// The kit a gym may own, a line each, part by part: an adapter. The tick says whether it owns any;
// the last line takes the name of another kind.
#pragma once
#include "blockwright/ledger/gym_text.hpp"
#include "blockwright/model/kit_use.hpp"
#include "edit/open_gym.hpp"

#include <QAbstractTableModel>

namespace bw {

class KitModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Name, Units, Claimed, Loads, Bar, Plates, Can, Must, kColumns };

    KitModel(OpenGym& gym, QObject* parent); // the gym must outlive it

    void refresh(); // the gym's values, and what its Shelf asks for
    [[nodiscard]] const KitItem* itemAt(int row) const; // null: a heading, or the last line
    [[nodiscard]] int rowOf(const KitId& id) const;     // -1: the gym does not know it
    [[nodiscard]] KitUse useAt(int row) const;
    [[nodiscard]] std::optional<Message> fault(const QModelIndex& index, const QString& text) const;
    void tick(int row);      // owned, or not any more
    void turnClaim(int row); // for a set, or for the group

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void refused(const bw::Message& why); // not understood, or not stored
    void added(const bw::KitId& id);
    // The gym owns less of it, and can do less.
    void lost(const bw::KitId& id, const bw::KitLoss& loss);

private:
    struct Row {
        QString head; // empty: no heading
        std::optional<KitId> kit;
        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] std::vector<Row> rowsOf(const Gym& gym) const;
    [[nodiscard]] bool isLast(int row) const { return row == rowCount() - 1; }
    [[nodiscard]] QString text(const KitItem& item, int row, int column) const;
    [[nodiscard]] QVariant itemData(const KitItem& item, const QModelIndex& index, int role) const;
    bool hear(const Result<bool>& did);
    bool write(const KitItem& item, int column, const std::string& typed);

    OpenGym& gym_;
    std::vector<Row> rows_;
    std::map<KitId, KitUse> uses_;
};

} // namespace bw
