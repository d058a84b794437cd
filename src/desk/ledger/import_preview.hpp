// SPDX-License-Identifier: GPL-3.0-or-later
// The first rows of a table, and above them a row in which each column can be given its meaning: an
// adapter.
#pragma once
#include "interchange/csv_columns.hpp"

#include <QAbstractTableModel>

namespace bw {

class ImportPreview : public QAbstractTableModel {
    Q_OBJECT
public:
    static constexpr int kRows = 8; // at most, beside the row of meanings
    ImportPreview(const std::string& text, QObject* parent);

    // Words that the reader knows, one a column; "": left out.
    [[nodiscard]] const std::vector<std::string>& words() const { return words_; }
    // The meaning that two columns have, of which the first counts; empty: there is none.
    [[nodiscard]] QString twice() const;
    // What a column can mean, "" first.
    [[nodiscard]] static const std::vector<std::string>& meanings();
    [[nodiscard]] static QString meaningName(const std::string& word);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    // Row 0, EditRole: the place of the column's word among meanings().
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

private:
    std::vector<CsvRecord> records_; // the first line, then rows
    std::vector<std::string> words_;
};

} // namespace bw
