// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/class_model.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"

namespace bw {

namespace {
// Typed figures are to two decimals; a load that reads the same is the one that was there.
void keepExact(std::vector<LiftedSet>& typed, const std::vector<LiftedSet>& there, MassUnit unit) {
    for (std::size_t i = 0; i < typed.size() && i < there.size(); ++i)
        if (setsText({&typed[i], 1}, unit) == setsText({&there[i], 1}, unit)) typed[i] = there[i];
}
} // namespace

ClassModel::ClassModel(OpenGym& gym, QObject* parent) : QAbstractTableModel(parent), gym_(gym) {}

void ClassModel::show(std::shared_ptr<ClassDay> day, std::vector<MemberId> members) {
    beginResetModel();
    if (!day_ || day_->date() != day->date()) pending_.clear();
    day_ = std::move(day);
    members_ = std::move(members);
    endResetModel();
}

int ClassModel::count() const { return day_ ? static_cast<int>(day_->came().size()) : 0; }

void ClassModel::readAgain() {
    if (!day_ || rowCount() == 0 || columnCount() == 0) return;
    if (const auto read = day_->readCame(gym_.file()); !read) Q_EMIT refused(read.why());
    const int first = entering_.value_or(0), last = entering_.value_or(rowCount() - 1);
    if (entering_)
        day_->forget(members_[static_cast<std::size_t>(first)]);
    else
        day_->forget();
    Q_EMIT dataChanged(index(first, 0), index(last, columnCount() - 1));
    Q_EMIT headerDataChanged(Qt::Vertical, first, last);
}

void ClassModel::want(int firstRow, int lastRow) {
    const int from = std::max(0, firstRow), to = std::min(lastRow, rowCount() - 1);
    if (!day_ || from > to) return;
    const auto read = day_->read(gym_.file(), {members_.begin() + from, members_.begin() + to + 1});
    if (!read) Q_EMIT refused(read.why());
}

const Member* ClassModel::member(int row) const {
    if (!day_ || row < 0 || row >= rowCount()) return nullptr;
    return day_->gym().findMember(members_[static_cast<std::size_t>(row)]);
}

const ClassRow* ClassModel::row(int row) const {
    if (!day_ || row < 0 || row >= rowCount()) return nullptr;
    const MemberId& id = members_[static_cast<std::size_t>(row)];
    if (!day_->row(id)) {
        const auto read = day_->read(gym_.file(), {id});
        if (!read) Q_EMIT refused(read.why());
    }
    return day_->row(id);
}

const ClassCell* ClassModel::cell(const QModelIndex& index) const {
    if (!index.isValid()) return nullptr;
    const ClassRow* r = row(index.row());
    const auto column = static_cast<std::size_t>(index.column());
    return r && column < r->cells.size() ? &r->cells[column] : nullptr;
}

const ClassModel::Pending* ClassModel::pending(const QModelIndex& index) const {
    if (pending_.empty() || !index.isValid()) return nullptr;
    const auto it =
        pending_.find({members_[static_cast<std::size_t>(index.row())],
                       day_->columns()[static_cast<std::size_t>(index.column())].exercise});
    return it == pending_.end() ? nullptr : &it->second;
}

int ClassModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(members_.size());
}
int ClassModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || !day_ ? 0 : static_cast<int>(day_->columns().size());
}

QString ClassModel::text(const QModelIndex& index) const {
    if (const Pending* typed = pending(index)) return typed->text;
    const ClassCell* c = cell(index);
    return c ? setsWords(c->sets, day_->gym().settings.massUnit) : QString();
}

QString ClassModel::sentence(const QModelIndex& index) const {
    const ClassCell* c = cell(index);
    const Member* m = member(index.row());
    if (!c || !m) return {};
    const QString words =
        cellSentence(*day_, *m, day_->columns()[static_cast<std::size_t>(index.column())], *c);
    const Pending* typed = pending(index);
    return typed ? typed->why + QLatin1Char(' ') + words : words;
}

QVariant ClassModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !checkIndex(index)) return {};
    if (role == Qt::DisplayRole || role == Qt::EditRole) return text(index);
    if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) return sentence(index);
    if (role == TroubleRole) return pending(index) ? pending(index)->why : QString();
    if (role < LastRole || role > RuledOutRole) return {};
    const ClassCell* c = cell(index);
    if (!c) return {};
    const MassUnit unit = day_->gym().settings.massUnit;
    if (role == LastRole) return setsWords(c->last, unit);
    if (role == AimRole) return c->aim ? aimWords(*c->aim, unit) : QString();
    if (role == RuledOutRole) return c->ruledOut;
    const bool other =
        c->exercise != day_->columns()[static_cast<std::size_t>(index.column())].exercise;
    return other ? exerciseName(day_->gym(), c->exercise) : QString();
}

QVariant ClassModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const int most = orientation == Qt::Horizontal ? columnCount() : rowCount();
    if (section < 0 || section >= most) return {};
    if (orientation == Qt::Vertical) {
        const Member* m = member(section);
        if (!m) return {};
        if (role == CameRole) return day_->came().contains(m->id);
        if (role == FlaggedRole) return !m->flags.empty();
        if (role == Qt::AccessibleTextRole && day_->came().contains(m->id))
            return tr("%1, came").arg(plain(m->name));
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) return plain(m->name);
        return {};
    }
    const ClassColumn& column = day_->columns()[static_cast<std::size_t>(section)];
    const QString name = exerciseName(day_->gym(), column.exercise);
    const QString mark = slotMark(*day_->block(), column.place);
    if (role == Qt::DisplayRole) return mark + QLatin1Char('\n') + name;
    if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole)
        return mark + QLatin1Char(' ') + name;
    return {};
}

Qt::ItemFlags ClassModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || !checkIndex(index)) return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const ClassCell* c = cell(index);
    if (c && !c->ruledOut && gym_.file().writable()) flags |= Qt::ItemIsEditable;
    return flags;
}

Result<std::vector<LiftedSet>> ClassModel::setsFor(const QModelIndex& index,
                                                   const QString& text) const {
    const ClassCell* c = cell(index);
    if (!c) return std::vector<LiftedSet>{};
    if (text.trimmed() == QLatin1String("=")) {
        if (c->last.empty()) return Message{"There is no last time to repeat.", {}};
        return c->last;
    }
    const MassUnit unit = day_->gym().settings.massUnit;
    auto sets = parseSets(text.toStdString(), unit);
    if (!sets) return sets;
    auto typed = std::move(sets).value();
    keepExact(typed, c->sets, unit);
    return typed;
}

bool ClassModel::enter(const QModelIndex& index, const std::vector<LiftedSet>& sets) {
    const ClassCell* c = cell(index);
    if (!c || c->ruledOut) return false;
    const LiftDay at{members_[static_cast<std::size_t>(index.row())], day_->date(), c->exercise};
    entering_ = index.row();
    const auto did = setSets(gym_, at, sets); // the page has it read again when the gym says so
    entering_.reset();
    if (did) {
        drop(index);
    } else {
        keepTyped(index, setsWords(sets, day_->gym().settings.massUnit), did.why());
        Q_EMIT refused(did.why());
    }
    return did.ok();
}

void ClassModel::keepTyped(const QModelIndex& index, const QString& text, const Message& why) {
    pending_[{members_[static_cast<std::size_t>(index.row())],
              day_->columns()[static_cast<std::size_t>(index.column())].exercise}] = {text,
                                                                                      say(why)};
    Q_EMIT dataChanged(index, index);
}

void ClassModel::drop(const QModelIndex& index) {
    if (!pending(index)) return;
    pending_.erase({members_[static_cast<std::size_t>(index.row())],
                    day_->columns()[static_cast<std::size_t>(index.column())].exercise});
    Q_EMIT dataChanged(index, index);
}

bool ClassModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !cell(index)) return false;
    const QString typed = value.toString();
    const auto sets = setsFor(index, typed);
    if (sets) return enter(index, *sets);
    keepTyped(index, typed, sets.why());
    return false;
}

} // namespace bw
