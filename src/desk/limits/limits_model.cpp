// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limits/limits_model.hpp"

#include "desk/frame/words.hpp"
#include "edit/finding_verbs.hpp"

#include <algorithm>

namespace bw {

Result<std::optional<LimitValue>> readLimitCell(const QString& text, const LimitSpec& spec) {
    if (text.trimmed().isEmpty()) return std::optional<LimitValue>();
    auto value = parseLimit(text.toStdString(), spec);
    if (!value) return value.why();
    return std::optional(value.value());
}

QString ruleTitle(const Rule* rule) {
    return rule ? say(rule->title) : LimitsModel::tr("What the balance is counted over.");
}

LimitsModel::LimitsModel(OpenGym& gym, QObject* parent)
    : QAbstractTableModel(parent), gym_(gym), rows_(chosenRows()) {}

const LimitValue* LimitsModel::setValue(const HouseLimit& limit) const {
    const auto& limits = gym_.gym().settings.limits;
    const auto it = limits.find(limit.key);
    return it == limits.end() ? nullptr : &it->second;
}

bool LimitsModel::fits(const HouseLimit& limit) const {
    if (choice_.onlySet && !setValue(limit)) return false;
    const QString said = plain(limit.key) + QLatin1Char(' ') + ruleTitle(limit.rule) +
                         QLatin1Char(' ') + say(limit.spec.meaning) + QLatin1Char(' ') +
                         say(limit.spec.basis) + QLatin1Char(' ') + plain(limit.spec.unit);
    const QStringList words = choice_.words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(words.begin(), words.end(), [&](const QString& word) {
        return said.contains(word, Qt::CaseInsensitive);
    });
}

std::vector<LimitsModel::Row> LimitsModel::chosenRows() const {
    std::vector<Row> rows;
    for (const HouseLimit& limit : houseLimits()) {
        if (limit.weight && !choice_.weights && !(choice_.onlySet && setValue(limit))) continue;
        if (!fits(limit)) continue;
        if (rows.empty() || rows.back().rule != limit.rule) rows.push_back({limit.rule, nullptr});
        rows.push_back({limit.rule, &limit});
    }
    return rows;
}

void LimitsModel::choose(const Choice& choice) {
    if (choice == choice_) return;
    choice_ = choice;
    refresh();
}

void LimitsModel::refresh() {
    auto rows = chosenRows();
    if (rows != rows_) {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    } else if (!rows_.empty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
    }
}

const HouseLimit* LimitsModel::limitAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : rows_[static_cast<std::size_t>(row)].limit;
}

const Rule* LimitsModel::ruleAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : rows_[static_cast<std::size_t>(row)].rule;
}

int LimitsModel::rowOf(const std::string& key) const {
    const auto it = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) {
        return row.limit && row.limit->key == key;
    });
    return it == rows_.end() ? -1 : static_cast<int>(it - rows_.begin());
}

int LimitsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int LimitsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QString LimitsModel::headText(const Row& row, int column) const {
    return column == Meaning ? ruleTitle(row.rule) : QString();
}

QString LimitsModel::cellText(const HouseLimit& limit, int column) const {
    const LimitValue* set = setValue(limit);
    switch (column) {
    case Meaning: return say(limit.spec.meaning);
    case House: return set ? unitSaid(limitText(*set, limit.spec)) : QString();
    case Standard: return unitSaid(limitText(limit.spec.standard, limit.spec));
    default: return say(limit.spec.basis);
    }
}

QVariant LimitsModel::data(const QModelIndex& i, int role) const {
    if (!checkIndex(i, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(i.row())];
    if (role == HeadRole) return row.limit == nullptr;
    if (!row.limit)
        return role == Qt::DisplayRole || role == Qt::AccessibleTextRole
                   ? QVariant(headText(row, i.column()))
                   : QVariant();
    const LimitSpec& spec = row.limit->spec;
    switch (role) {
    case Qt::DisplayRole: return cellText(*row.limit, i.column());
    case Qt::EditRole:
        if (const LimitValue* set = setValue(*row.limit)) return plain(limitText(*set, spec));
        return plain(limitText(spec.standard, spec));
    case Qt::AccessibleTextRole:
        return tr("%1: %2", "column, what stands in it")
            .arg(headerData(i.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 i.column() == House && !setValue(*row.limit) ? tr("as in the rule book")
                                                              : cellText(*row.limit, i.column()));
    case SetRole: return setValue(*row.limit) != nullptr;
    default: return {};
    }
}

bool LimitsModel::setData(const QModelIndex& i, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(i) & Qt::ItemIsEditable)) return false;
    const HouseLimit& limit = *limitAt(i.row());
    const auto read = readLimitCell(value.toString(), limit.spec);
    if (!read) {
        Q_EMIT refused(read.why());
        return false;
    }
    const bool asStandard = *read && **read == limit.spec.standard;
    const Did did = setLimit(gym_, limit.key, asStandard ? std::nullopt : read.value());
    if (!did) Q_EMIT refused(did.why());
    return did.ok();
}

QVariant LimitsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    const QStringList names{tr("what is limited"), tr("this house"), tr("rule book"),
                            tr("where the rule book has it from")};
    return names.value(section);
}

Qt::ItemFlags LimitsModel::flags(const QModelIndex& i) const {
    if (!i.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags f = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (i.column() == House && limitAt(i.row()) && gym_.file().writable()) f |= Qt::ItemIsEditable;
    return f;
}

} // namespace bw
