// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_model.hpp"

#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

namespace bw {

SheetModel::SheetModel(Draft& draft, QObject* parent) : QAbstractTableModel(parent), draft_(draft) {
    connect(&draft_, &Draft::changed, this, &SheetModel::refresh);
    connect(&draft_, &Draft::marksChanged, this, [this] {
        if (!rows_.empty())
            Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kSheetColumns - 1));
    });
    if (draft_.block()) rows_ = sheetRows(*draft_.block());
    showLevels();
}

void SheetModel::refresh() {
    if (draft_.month() != unreadMonth_) {
        unread_.clear();
        unreadMonth_ = draft_.month();
    }
    auto rows = draft_.block() ? sheetRows(*draft_.block()) : std::vector<SheetRow>{};
    showLevels();
    if (rows != rows_) {
        beginResetModel();
        unread_.clear();
        rows_ = std::move(rows);
        endResetModel();
    } else if (!rows_.empty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kSheetColumns - 1));
    }
}

void SheetModel::showLevels() {
    levels_.clear();
    const auto mark = [&](Place place, Level level) {
        QString& shapes = levels_[place];
        if (shapes.size() < 3) shapes += levelShape(level); // findings come worst first
    };
    for (const Finding& f : draft_.verdict().findings) {
        mark(f.place, f.level);
        for (const Place& other : f.also)
            if (other != f.place) mark(other, f.level);
    }
}

std::optional<SheetCell> SheetModel::cellAt(const QModelIndex& i) const {
    if (!i.isValid() || i.row() >= rowCount() || !draft_.block()) return std::nullopt;
    return SheetCell{draft_.gym().gym(), *draft_.block(), rows_[static_cast<std::size_t>(i.row())],
                     static_cast<SheetColumn>(i.column())};
}

int SheetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int SheetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kSheetColumns;
}

const SheetModel::Unread* SheetModel::unreadAt(const QModelIndex& i) const {
    const auto& row = rows_[static_cast<std::size_t>(i.row())];
    const auto it = unread_.find({row.place, static_cast<SheetColumn>(i.column())});
    return it == unread_.end() || row.kind == SheetRow::Kind::Empty ? nullptr : &it->second;
}

// A cell of a slot that stands otherwise in the gym.
bool SheetModel::offered(const SheetCell& c) const {
    const Gym::BlockPtr stored = c.gym.block(c.block.month);
    if (!stored || stored.get() == &c.block || c.row.kind != SheetRow::Kind::Slot) return false;
    const Slot *now = slotAt(c.block, c.row.place), *kept = slotAt(*stored, c.row.place);
    if (!now || !kept) return false;
    switch (c.column) {
    case SheetColumn::Dose: return now->dose != kept->dose;
    case SheetColumn::Exercise:
    case SheetColumn::Kit:
    case SheetColumn::Options: return now->exercise != kept->exercise;
    default: return false;
    }
}

QString SheetModel::tipAt(const SheetCell& c) const {
    QStringList lines;
    for (const Finding& f : draft_.verdict().findings)
        if (f.place == c.row.place ||
            std::find(f.also.begin(), f.also.end(), c.row.place) != f.also.end())
            lines << levelShape(f.level) + QLatin1Char(' ') + say(f.text);
    const Slot* slot = slotAt(c.block, c.row.place);
    if (slot && !slot->note.empty()) lines << plain(slot->note);
    return lines.join(QLatin1Char('\n'));
}

QVariant SheetModel::shown(const SheetCell& c, const QModelIndex& i, int role) const {
    const Unread* unread = unreadAt(i);
    switch (role) {
    case Qt::DisplayRole:
        if (c.column == SheetColumn::Findings) {
            const auto it = levels_.find(c.row.place);
            return it == levels_.end() ? QString() : it->second;
        }
        return unread ? unread->text : cellText(c, draft_.time());
    case Qt::EditRole: return unread ? unread->text : editText(c).value_or(QString());
    case Qt::ToolTipRole: return unread ? say(unread->why) : tipAt(c);
    case Qt::AccessibleTextRole:
        return cellName(c) + QStringLiteral(": ") +
               (unread ? unread->text : cellText(c, draft_.time())) +
               (offered(c) ? tr(", not stored") : QString());
    case Qt::AccessibleDescriptionRole: return unread ? say(unread->why) : tipAt(c);
    case OfferedRole: return offered(c);
    case UnreadRole: return unread != nullptr;
    default: return {};
    }
}

QVariant SheetModel::data(const QModelIndex& i, int role) const {
    const auto c = cellAt(i);
    if (!c) return {};
    if (role == RowKindRole) return static_cast<int>(c->row.kind);
    if (role == MainRole || role == LockedRole || role == OpenRole) {
        const Slot* slot = slotAt(c->block, c->row.place);
        if (!slot) return false;
        return role == MainRole ? slot->main : role == LockedRole ? slot->locked : slot->open();
    }
    if (role == MarkRole) {
        const auto it = draft_.marks().find(c->row.place);
        const bool marked = it != draft_.marks().end() && c->row.kind == SheetRow::Kind::Slot;
        return marked ? QVariant(it->second) : QVariant();
    }
    if (role == LevelsRole) {
        const auto it = levels_.find(c->row.place);
        return it == levels_.end() ? QString() : it->second;
    }
    return shown(*c, i, role);
}

QVariant SheetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    const QStringList names{QString(), tr("exercise"),          tr("dose"), tr("tempo"), tr("RIR"),
                            tr("kit"), tr("easier ‹ › harder"), QString()};
    return names.value(section);
}

Qt::ItemFlags SheetModel::flags(const QModelIndex& i) const {
    const auto c = cellAt(i);
    if (!c) return Qt::ItemIsDropEnabled;
    Qt::ItemFlags f = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDropEnabled;
    if (!draft_.gym().file().writable()) return f;
    if (c->row.kind != SheetRow::Kind::Empty) f |= Qt::ItemIsDragEnabled;
    if (editText(*c)) f |= Qt::ItemIsEditable;
    return f;
}

std::optional<Message> SheetModel::tryText(const QModelIndex& i, const QString& text) {
    const auto c = cellAt(i);
    if (!c) return std::nullopt;
    const auto read = readCell(*c, text);
    if (!read) {
        draft_.endPreview();
        return read.why();
    }
    draft_.preview(read->preview);
    return std::nullopt;
}

void SheetModel::tryExercise(const QModelIndex& i, const Exercise& exercise) {
    if (const auto c = cellAt(i)) draft_.preview(chooseExercise(*c, exercise).preview);
}

bool SheetModel::enter(const QModelIndex& i, const CellEdit& edit) {
    const SheetRow row = rows_[static_cast<std::size_t>(i.row())];
    unread_.erase({row.place, static_cast<SheetColumn>(i.column())});
    draft_.endPreview();
    const Did did = edit.enter(draft_.gym(), {*draft_.month(), row.place});
    if (!did) Q_EMIT refused(did.why());
    if (!did || !*did) Q_EMIT dataChanged(i, i); // nothing told the screens yet
    return did.ok();
}

bool SheetModel::setData(const QModelIndex& i, const QVariant& value, int role) {
    const auto c = cellAt(i);
    if (!c || (role != Qt::EditRole && role != ChosenIdRole) || !(flags(i) & Qt::ItemIsEditable))
        return false;
    if (role == ChosenIdRole) {
        const auto id = ExerciseId::parse(value.toString().toStdString());
        const Exercise* e = id ? c->gym.shelf.find(*id) : nullptr;
        return e && enter(i, chooseExercise(*c, *e));
    }
    const auto read = readCell(*c, value.toString());
    if (read) return enter(i, *read);
    draft_.endPreview();
    unread_[{rows_[static_cast<std::size_t>(i.row())].place, c->column}] = {value.toString(),
                                                                            read.why()};
    Q_EMIT dataChanged(i, i);
    Q_EMIT refused(read.why());
    return false;
}

} // namespace bw
