// SPDX-License-Identifier: GPL-3.0-or-later
// The findings of a draft as a list: an adapter. A finding stays the same row, and keeps its
// selection, as long as the rule finds the same in the same place.
#pragma once
#include "blockwright/rules/check.hpp"
#include "desk/bench/findings_gauge.hpp"

#include <QAbstractListModel>
#include <QString>

namespace bw {

struct FindingRow {
    Finding finding;
    QString text, where, weeks, figures, basis;
    Gauge gauge;
    QString reason; // of an accepted one
    QString before; // how it was when it was accepted, before its facts changed

    static FindingRow of(const Finding& finding, const Block& block);
    static FindingRow of(const AcceptedFinding& accepted, const Block& block);
    [[nodiscard]] bool accepted() const { return !reason.isEmpty(); }
    [[nodiscard]] bool
    same(const FindingRow& other) const; // the same finding, maybe in other words
    [[nodiscard]] bool looksLike(const FindingRow& other) const;
    // The n-th remedy that the program can do; null when there are fewer.
    [[nodiscard]] const Remedy* action(int n) const;
    [[nodiscard]] int actions() const;
};

class FindingsModel : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    // Rows come, go, move or change; none when nothing that shows has changed.
    void show(const std::vector<Finding>& findings, const Block& block);
    void showAccepted(const std::vector<AcceptedFinding>& accepted, const Block& block);
    void clear();
    [[nodiscard]] const FindingRow& at(int row) const {
        return rows_[static_cast<std::size_t>(row)];
    }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    void take(std::vector<FindingRow> next);
    void removeGone(const std::vector<FindingRow>& next);
    void bring(std::size_t row, FindingRow next);
    void removeAt(std::size_t row);

    std::vector<FindingRow> rows_;
};

} // namespace bw
