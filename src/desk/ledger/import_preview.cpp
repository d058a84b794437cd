// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/import_preview.hpp"

#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace bw {

namespace {
// Whole records from the front of a table, as many as will be seen.
std::vector<CsvRecord> firstRecords(const std::string& text) {
    constexpr std::size_t kFront = 64 << 10;
    const auto end = text.size() <= kFront ? text.size() : text.rfind('\n', kFront) + 1;
    auto records = parseCsv(std::string_view(text).substr(0, end), separatorOf(text));
    if (!records) return {};
    auto out = std::move(records).value();
    out.resize(std::min<std::size_t>(out.size(), ImportPreview::kRows + 1));
    return out;
}
} // namespace

const std::vector<std::string>& ImportPreview::meanings() {
    static const std::vector<std::string> words{
        "",     "member", "name", "date",    "exercise", "exercise_name", "set",
        "reps", "rir",    "rpe",  "load_kg", "load_lb",  "load"};
    return words;
}

QString ImportPreview::meaningName(const std::string& word) {
    static const std::vector<std::pair<std::string, const char*>> names{
        {"", QT_TRANSLATE_NOOP("import", "leave out")},
        {"member", QT_TRANSLATE_NOOP("import", "member")},
        {"name", QT_TRANSLATE_NOOP("import", "member, else")},
        {"date", QT_TRANSLATE_NOOP("import", "date")},
        {"exercise", QT_TRANSLATE_NOOP("import", "exercise")},
        {"exercise_name", QT_TRANSLATE_NOOP("import", "exercise, else")},
        {"set", QT_TRANSLATE_NOOP("import", "number of the set")},
        {"reps", QT_TRANSLATE_NOOP("import", "repetitions")},
        {"rir", QT_TRANSLATE_NOOP("import", "left in reserve")},
        {"rpe", QT_TRANSLATE_NOOP("import", "RPE")},
        {"load_kg", QT_TRANSLATE_NOOP("import", "load in kg")},
        {"load_lb", QT_TRANSLATE_NOOP("import", "load in lb")},
        {"load", QT_TRANSLATE_NOOP("import", "load")}};
    for (const auto& [known, name] : names)
        if (known == word) return QCoreApplication::translate("import", name);
    return plain(word);
}

ImportPreview::ImportPreview(const std::string& text, QObject* parent)
    : QAbstractTableModel(parent), records_(firstRecords(text)) {
    if (records_.empty()) return;
    const std::vector<std::string>& head = records_.front().fields;
    const CsvColumns columns(head);
    words_.resize(head.size());
    for (std::size_t c = 0; c < kResultsColumns; ++c) {
        const auto column = static_cast<ResultsColumn>(c);
        if (!columns.has(column)) continue;
        const auto at = std::find(head.begin(), head.end(), columns.word(column));
        words_[static_cast<std::size_t>(at - head.begin())] = meanings()[c + 1];
    }
}

int ImportPreview::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(records_.size());
}
int ImportPreview::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(words_.size());
}

QVariant ImportPreview::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index)) return {};
    const auto column = static_cast<std::size_t>(index.column());
    if (index.row() == 0) {
        if (role == Qt::AccessibleTextRole) return meaningName(words_[column]); // a box shows it
        if (role != Qt::EditRole) return {};
        const auto at = std::find(meanings().begin(), meanings().end(), words_[column]);
        return static_cast<int>(at - meanings().begin());
    }
    const auto& fields = records_[static_cast<std::size_t>(index.row())].fields;
    if (role == Qt::DisplayRole)
        return column < fields.size() ? plain(withoutGuard(fields[column])) : QString();
    if (role == Qt::ForegroundRole && words_[column].empty()) return inks().quiet;
    return {};
}

QVariant ImportPreview::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || section < 0) return {};
    if (orientation == Qt::Vertical) {
        if (section >= rowCount()) return {};
        return section == 0 ? tr("means")
                            : QString::number(records_[static_cast<std::size_t>(section)].line);
    }
    if (section >= columnCount()) return {};
    return plain(withoutGuard(records_.front().fields[static_cast<std::size_t>(section)]));
}

Qt::ItemFlags ImportPreview::flags(const QModelIndex& index) const {
    if (!index.isValid() || !checkIndex(index)) return Qt::NoItemFlags;
    const Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return index.row() == 0 ? flags | Qt::ItemIsEditable : flags;
}

QString ImportPreview::twice() const {
    for (auto at = words_.begin(); at != words_.end(); ++at)
        if (!at->empty() && std::find(at + 1, words_.end(), *at) != words_.end())
            return meaningName(*at);
    return {};
}

bool ImportPreview::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto at = static_cast<std::size_t>(value.toInt());
    if (role != Qt::EditRole || index.row() != 0 || at >= meanings().size()) return false;
    const std::string& word = meanings()[at];
    words_[static_cast<std::size_t>(index.column())] = word;
    Q_EMIT dataChanged(this->index(0, 0), this->index(rowCount() - 1, columnCount() - 1));
    return true;
}

} // namespace bw
