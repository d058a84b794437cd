// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym says of itself, a line each: an adapter.
#pragma once
#include "blockwright/ledger/gym_text.hpp"
#include "edit/open_gym.hpp"

#include <QAbstractTableModel>

namespace bw {

class GymLines : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Label, Value, kColumns };

    GymLines(OpenGym& gym, QObject* parent); // the gym must outlive it

    void refresh();
    [[nodiscard]] QString about(int row) const; // a sentence on the line
    [[nodiscard]] std::optional<Message> fault(const QModelIndex& index, const QString& text) const;
    [[nodiscard]] int rowOf(GymField field) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void refused(const bw::Message& why); // not understood, or not stored

private:
    OpenGym& gym_;
};

} // namespace bw
