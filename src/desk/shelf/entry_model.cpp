// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/entry_model.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/frame/words.hpp"
#include "desk/shelf/entry_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Kind = EntryModel::Row::Kind;
using Field = ExerciseField;

struct Line {
    Field field;
    bool part; // a new part of the page begins with it
};
constexpr Line kLines[] = {
    {Field::Name, false},    {Field::Patterns, false}, {Field::Planes, false},
    {Field::Muscles, false}, {Field::Sides, false},    {Field::Roles, true},
    {Field::Demands, false}, {Field::Skill, false},    {Field::Kit, true},
    {Field::Load, false},    {Field::Measure, false},  {Field::Pace, false},
    {Field::Setup, false},   {Field::NoEasier, true},  {Field::NoHarder, false}};

QString fieldLabel(Field field) {
    switch (field) {
    case Field::Name: return EntryModel::tr("name");
    case Field::Patterns: return EntryModel::tr("trains");
    case Field::Planes: return EntryModel::tr("planes");
    case Field::Muscles: return EntryModel::tr("muscles");
    case Field::Sides: return EntryModel::tr("sides");
    case Field::Roles: return EntryModel::tr("for");
    case Field::Demands: return EntryModel::tr("demands");
    case Field::Skill: return EntryModel::tr("skill");
    case Field::Kit: return EntryModel::tr("kit");
    case Field::Load: return EntryModel::tr("load");
    case Field::Measure: return EntryModel::tr("measured in");
    case Field::Pace: return EntryModel::tr("pace");
    case Field::Setup: return EntryModel::tr("set-up");
    case Field::NoEasier: return EntryModel::tr("none easier");
    case Field::NoHarder: return EntryModel::tr("none harder");
    }
    return {};
}

template <class T> QString lineOf(const std::vector<T>& lines, std::size_t at) {
    return at < lines.size() ? plain(lines[at]) : QString();
}
} // namespace

EntryModel::EntryModel(OpenGym& gym, QObject* parent) : QAbstractListModel(parent), gym_(gym) {}

const Exercise* EntryModel::exercise() const { return id_ ? gym_.gym().shelf.find(*id_) : nullptr; }

std::vector<EntryModel::Row> EntryModel::rowsOf(const Exercise& e) const {
    std::vector<Row> rows;
    for (const Line& line : kLines) rows.push_back({Kind::Field, line.field, 0, line.part});
    for (std::size_t i = 0; i <= e.cues.size(); ++i)
        rows.push_back({Kind::Cue, Field::Name, i, i == 0});
    for (std::size_t i = 0; i <= e.cautions.size(); ++i)
        rows.push_back({Kind::Caution, Field::Name, i, i == 0});
    for (std::size_t i = 0; i < std::max<std::size_t>(1, uses_.size()); ++i)
        rows.push_back({Kind::Use, Field::Name, i, i == 0});
    return rows;
}

void EntryModel::show(std::optional<ExerciseId> id, const ShelfUses& uses) {
    const bool same = id == id_;
    std::vector<ShelfUse> now;
    if (id) now.assign(uses.of(*id).rbegin(), uses.of(*id).rend());
    const Exercise* e = id ? gym_.gym().shelf.find(*id) : nullptr;
    id_ = std::move(id);
    uses_ = std::move(now);
    auto rows = e ? rowsOf(*e) : std::vector<Row>();
    if (same) return take(std::move(rows));
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

// A part that has grown or shrunk does so at its end, and a line being typed in stays open.
void EntryModel::take(std::vector<Row> rows) {
    const auto [at, end] = std::mismatch(rows_.begin(), rows_.end(), rows.begin(), rows.end());
    const int first = static_cast<int>(at - rows_.begin());
    const int more = static_cast<int>(rows.size()) - rowCount();
    if (more > 0) beginInsertRows({}, first, first + more - 1);
    if (more < 0) beginRemoveRows({}, first, first - more - 1);
    rows_ = std::move(rows);
    if (more > 0) endInsertRows();
    if (more < 0) endRemoveRows();
    if (!rows_.empty()) Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

const ShelfUse* EntryModel::useAt(int row) const {
    if (row < 0 || row >= rowCount() || rowAt(row).kind != Kind::Use) return nullptr;
    return rowAt(row).at < uses_.size() ? &uses_[rowAt(row).at] : nullptr;
}

int EntryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString EntryModel::label(const Row& row) const {
    switch (row.kind) {
    case Kind::Field: return fieldLabel(row.field);
    case Kind::Cue: return tr("cues");
    case Kind::Caution: return tr("cautions");
    case Kind::Use: return tr("used in");
    }
    return {};
}

QString EntryModel::useText(const ShelfUse& use) const {
    QStringList marks;
    if (const auto block = gym_.gym().block(use.month))
        for (const Place& place : use.places) marks << slotMark(*block, place);
    const QString where = monthName(use.month) + QStringLiteral(" · ") + marks.join(u", ");
    return use.main ? tr("%1, main lift").arg(where) : where;
}

QString EntryModel::text(const Row& row) const {
    const Exercise* e = exercise();
    if (!e) return {};
    switch (row.kind) {
    case Kind::Field: return shownField(row.field, fieldText(gym_.gym(), *e, row.field));
    case Kind::Cue: return lineOf(e->cues, row.at);
    case Kind::Caution: return lineOf(e->cautions, row.at);
    case Kind::Use: return row.at < uses_.size() ? useText(uses_[row.at]) : tr("no month yet");
    }
    return {};
}

QVariant EntryModel::data(const QModelIndex& i, int role) const {
    if (!checkIndex(i, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rowAt(i.row());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: {
        const QString said = text(row);
        if (role == Qt::EditRole || !said.isEmpty()) return said;
        if (row.kind == Kind::Field) return tr("not said");
        return row.kind == Kind::Cue ? tr("add a cue") : tr("add a caution");
    }
    case Qt::AccessibleTextRole:
        return tr("%1: %2", "line, what it says")
            .arg(label(row), data(i, Qt::DisplayRole).toString());
    case LabelRole: return row.at == 0 ? label(row) : QString();
    case PartRole: return row.part;
    case NameRole: return row.kind == Kind::Field && row.field == Field::Name;
    case QuietRole: return text(row).isEmpty() || (row.kind == Kind::Use && uses_.empty());
    default: return {};
    }
}

Did EntryModel::write(const Row& row, const std::string& text) {
    switch (row.kind) {
    case Kind::Field:
        return writeField(gym_, *id_, row.field, typedField(gym_.gym(), row.field, plain(text)));
    case Kind::Cue: return writeCue(gym_, *id_, row.at, text);
    case Kind::Caution: return writeCaution(gym_, *id_, row.at, text);
    case Kind::Use: break;
    }
    return false;
}

bool EntryModel::setData(const QModelIndex& i, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(i) & Qt::ItemIsEditable)) return false;
    const Did did = write(rowAt(i.row()), value.toString().toStdString());
    if (!did) Q_EMIT refused(did.why());
    return did.ok();
}

std::optional<Message> EntryModel::fault(int row, const QString& text) const {
    const Exercise* e = exercise();
    if (!e || row < 0 || row >= rowCount()) return std::nullopt;
    const Row& at = rowAt(row);
    const std::string typed = text.toStdString();
    if (at.kind == Kind::Field) {
        const auto read =
            readField(gym_.gym(), *e, at.field, typedField(gym_.gym(), at.field, text));
        return read ? std::nullopt : std::optional(read.why());
    }
    const auto read = withLine(at.kind == Kind::Cue ? e->cues : e->cautions, at.at, typed);
    return read ? std::nullopt : std::optional(read.why());
}

QStringList EntryModel::wordsFor(int row) const {
    const Row& at = rowAt(row);
    return at.kind == Kind::Field ? shownWords(gym_.gym(), at.field) : QStringList();
}

Qt::ItemFlags EntryModel::flags(const QModelIndex& i) const {
    if (!i.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags f = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (rowAt(i.row()).kind != Kind::Use && gym_.file().writable()) f |= Qt::ItemIsEditable;
    return f;
}

} // namespace bw
