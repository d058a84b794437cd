// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/kit_model.hpp"

#include "desk/frame/words.hpp"
#include "desk/gym/kit_groups.hpp"
#include "desk/gym/typed_delegate.hpp"
#include "edit/kit_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
std::optional<KitField> fieldOf(int column) {
    switch (column) {
    case KitModel::Name: return KitField::Name;
    case KitModel::Units: return KitField::Units;
    case KitModel::Loads: return KitField::Loads;
    case KitModel::Bar: return KitField::Bar;
    case KitModel::Plates: return KitField::Plates;
    default: return std::nullopt;
    }
}
bool isNumber(int column) {
    return column == KitModel::Units || column == KitModel::Bar || column == KitModel::Can ||
           column == KitModel::Must;
}
QString claimName(Claim claim) {
    return claim == Claim::Set ? KitModel::tr("for a set") : KitModel::tr("for the group");
}
} // namespace

KitModel::KitModel(OpenGym& gym, QObject* parent)
    : QAbstractTableModel(parent), gym_(gym), rows_(rowsOf(gym.gym())),
      uses_(kitUses(gym.gym().shelf)) {}

std::vector<KitModel::Row> KitModel::rowsOf(const Gym& gym) const {
    std::vector<Row> rows;
    for (const KitGroup& group : kitGroups(gym)) {
        rows.push_back({group.title, {}});
        for (const KitId& id : group.kit) rows.push_back({{}, id});
    }
    rows.push_back({});
    return rows;
}

void KitModel::refresh() {
    auto rows = rowsOf(gym_.gym());
    uses_ = kitUses(gym_.gym().shelf);
    if (rows == rows_) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

const KitItem* KitModel::itemAt(int row) const {
    if (row < 0 || row >= rowCount()) return nullptr;
    const auto& kit = rows_[static_cast<std::size_t>(row)].kit;
    return kit ? gym_.gym().findKit(*kit) : nullptr;
}

int KitModel::rowOf(const KitId& id) const {
    const auto it =
        std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.kit == id; });
    return it == rows_.end() ? -1 : static_cast<int>(it - rows_.begin());
}

KitUse KitModel::useAt(int row) const {
    const KitItem* item = itemAt(row);
    const auto it = item ? uses_.find(item->id) : uses_.end();
    return it == uses_.end() ? KitUse() : it->second;
}

std::optional<Message> KitModel::fault(const QModelIndex& i, const QString& text) const {
    const auto field = fieldOf(i.column());
    const KitItem* item = itemAt(i.row());
    if (!field || !item) return std::nullopt; // a new name is judged when it is added
    const auto read = withKitField(gym_.gym(), *item, *field, text.toStdString());
    return read ? std::nullopt : std::optional(read.why());
}

bool KitModel::hear(const Result<bool>& did) {
    if (!did) Q_EMIT refused(did.why());
    return did.ok();
}

void KitModel::tick(int row) {
    const KitItem* item = itemAt(row);
    if (!item || !gym_.file().writable()) return;
    const KitId id = item->id;
    if (item->units == 0) {
        (void)hear(ownKit(gym_, id, true));
        return;
    }
    KitItem none = *item;
    none.units = 0;
    const KitLoss loss = lossBy(gym_.gym(), none);
    if (hear(ownKit(gym_, id, false)) && !loss.nothing()) Q_EMIT lost(id, loss);
}

void KitModel::turnClaim(int row) {
    const KitItem* item = itemAt(row);
    if (!item || !gym_.file().writable()) return;
    const Claim other = item->claim == Claim::Set ? Claim::Group : Claim::Set;
    (void)hear(writeKitField(gym_, item->id, KitField::Claim, wordOf(other)));
}

bool KitModel::write(const KitItem& item, int column, const std::string& typed) {
    const auto then = withKitField(gym_.gym(), item, *fieldOf(column), typed);
    if (!then) return hear(then.why());
    const KitId id = item.id;
    const KitLoss loss = then->units < item.units ? lossBy(gym_.gym(), *then) : KitLoss();
    if (!hear(writeKitField(gym_, id, *fieldOf(column), typed))) return false;
    if (!loss.nothing()) Q_EMIT lost(id, loss);
    return true;
}

int KitModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int KitModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QString KitModel::text(const KitItem& item, int row, int column) const {
    const KitUse use = useAt(row);
    switch (column) {
    case Units: return item.units > 0 ? QString::number(item.units) : QString();
    case Claimed: return claimName(item.claim);
    case Can: return use.can > 0 ? QString::number(use.can) : QString();
    case Must: return use.must > 0 ? QString::number(use.must) : QString();
    default: return plain(kitFieldText(gym_.gym(), item, *fieldOf(column)));
    }
}

QVariant KitModel::itemData(const KitItem& item, const QModelIndex& i, int role) const {
    const QString said = text(item, i.row(), i.column());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: return said;
    case Qt::CheckStateRole:
        return i.column() == Name ? QVariant(item.units > 0 ? Qt::Checked : Qt::Unchecked)
                                  : QVariant();
    case Qt::TextAlignmentRole:
        return isNumber(i.column()) ? QVariant(Qt::AlignRight | Qt::AlignTop) : QVariant();
    case Qt::AccessibleTextRole:
        if (i.column() == Name)
            return item.units > 0 ? tr("%1, owned").arg(said) : tr("%1, not owned").arg(said);
        return tr("%1: %2", "column, what stands in it")
            .arg(headerData(i.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 said.isEmpty() ? tr("none") : said);
    case kQuietRole: return item.units == 0 || i.column() == Claimed || i.column() >= Can;
    default: return {};
    }
}

QVariant KitModel::data(const QModelIndex& i, int role) const {
    if (!checkIndex(i, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(i.row())];
    if (role == kHeadRole) return !row.head.isEmpty();
    if (const KitItem* item = itemAt(i.row())) return itemData(*item, i, role);
    const bool said = role == Qt::DisplayRole || role == Qt::AccessibleTextRole;
    if (i.column() != Name) return {};
    if (!row.head.isEmpty()) return said ? QVariant(row.head) : QVariant();
    if (role == kHintRole || role == Qt::AccessibleTextRole)
        return tr("another kind: write its name");
    return {};
}

bool KitModel::setData(const QModelIndex& i, const QVariant& value, int role) {
    if (role == Qt::CheckStateRole && itemAt(i.row())) {
        const bool owned = itemAt(i.row())->units > 0;
        if (owned != (value.toInt() == Qt::Checked)) tick(i.row());
        return true;
    }
    if (role != Qt::EditRole || !(flags(i) & Qt::ItemIsEditable)) return false;
    const std::string typed = value.toString().toStdString();
    if (const KitItem* item = itemAt(i.row())) return write(KitItem(*item), i.column(), typed);
    if (value.toString().trimmed().isEmpty()) return false;
    const auto added = addKit(gym_, typed);
    if (!added)
        Q_EMIT refused(added.why());
    else
        Q_EMIT this->added(*added);
    return added.ok();
}

QVariant KitModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole && isNumber(section)) return Qt::AlignRight;
    if (role != Qt::DisplayRole) return {};
    const QStringList names{tr("kit"), tr("how many"), tr("taken"),     tr("weights in stock"),
                            tr("bar"), tr("plates"),   tr("exercises"), tr("need it")};
    return names.value(section);
}

Qt::ItemFlags KitModel::flags(const QModelIndex& i) const {
    if (!i.isValid() || i.data(kHeadRole).toBool()) return Qt::NoItemFlags;
    Qt::ItemFlags f = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (!gym_.file().writable()) return f;
    const bool item = itemAt(i.row()) != nullptr;
    if (item && i.column() == Name) f |= Qt::ItemIsUserCheckable;
    if (item ? fieldOf(i.column()).has_value() : isLast(i.row()) && i.column() == Name)
        f |= Qt::ItemIsEditable;
    return f;
}

} // namespace bw
