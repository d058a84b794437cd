// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/gym_lines.hpp"

#include "desk/frame/words.hpp"
#include "desk/gym/typed_delegate.hpp"
#include "edit/kit_verbs.hpp"

#include <array>

namespace bw {

namespace {
// None: a heading.
using Row = std::optional<GymField>;
constexpr std::array kRows{Row(),
                           Row(GymField::Name),
                           Row(GymField::Unit),
                           Row(GymField::Paper),
                           Row(),
                           Row(GymField::Minutes),
                           Row(GymField::Places),
                           Row(GymField::OpeningTime),
                           Row(GymField::ClosingTime),
                           Row(),
                           Row(GymField::WarmUp),
                           Row(GymField::Power),
                           Row(GymField::Strength),
                           Row(GymField::Finisher)};
constexpr int kClass = 4;

Row rowAt(int row) { return kRows[static_cast<std::size_t>(row)]; }

QString headOf(int row) {
    if (row == 0) return GymLines::tr("The gym");
    return row == kClass ? GymLines::tr("The class") : GymLines::tr("What a set counts");
}

QString labelOf(GymField field) {
    switch (field) {
    case GymField::Name: return GymLines::tr("name");
    case GymField::Unit: return GymLines::tr("weights in");
    case GymField::Paper: return GymLines::tr("paper");
    case GymField::Minutes: return GymLines::tr("class length");
    case GymField::Places: return GymLines::tr("members");
    case GymField::OpeningTime: return GymLines::tr("opening");
    case GymField::ClosingTime: return GymLines::tr("closing");
    case GymField::WarmUp: return GymLines::tr("in the warm-up");
    case GymField::Power: return GymLines::tr("in power");
    case GymField::Strength: return GymLines::tr("in strength");
    case GymField::Finisher: return GymLines::tr("in the finisher");
    }
    return {};
}

QString aboutField(GymField field) {
    switch (field) {
    case GymField::Name: return GymLines::tr("Stands on every sheet.");
    case GymField::Unit: return GymLines::tr("kg or lb. Results keep the weights they have.");
    case GymField::Paper: return GymLines::tr("A4, Letter or A3: what the sheets are printed on.");
    case GymField::Minutes: return GymLines::tr("Whole minutes, door to door.");
    case GymField::Places:
        return GymLines::tr("Kit and queues are worked out for so many members.");
    case GymField::OpeningTime:
        return GymLines::tr(
            "Minutes of each class before the warm-up: arriving, a word of welcome.");
    case GymField::ClosingTime:
        return GymLines::tr("Minutes of each class after the finisher: tidying up, goodbye.");
    default:
        return GymLines::tr("How much a set of this section counts beside a strength set, in the "
                            "balance of patterns: 0 to 1.");
    }
}
} // namespace

GymLines::GymLines(OpenGym& gym, QObject* parent) : QAbstractTableModel(parent), gym_(gym) {}

void GymLines::refresh() { Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1)); }

QString GymLines::about(int row) const {
    return row >= 0 && row < rowCount() && rowAt(row) ? aboutField(*rowAt(row)) : QString();
}

std::optional<Message> GymLines::fault(const QModelIndex& i, const QString& text) const {
    const Row field = rowAt(i.row());
    if (!field) return std::nullopt;
    const auto read = withGymField(gym_.gym().settings, *field, text.toStdString());
    return read ? std::nullopt : std::optional(read.why());
}

int GymLines::rowOf(GymField field) const {
    return static_cast<int>(std::find(kRows.begin(), kRows.end(), Row(field)) - kRows.begin());
}

int GymLines::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(kRows.size());
}
int GymLines::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

QVariant GymLines::data(const QModelIndex& i, int role) const {
    if (!checkIndex(i, CheckIndexOption::IndexIsValid)) return {};
    const Row field = rowAt(i.row());
    if (role == kHeadRole) return !field;
    if (!field)
        return (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) && i.column() == Label
                   ? QVariant(headOf(i.row()))
                   : QVariant();
    const QString value = plain(gymFieldText(gym_.gym().settings, *field));
    switch (role) {
    case Qt::DisplayRole: return i.column() == Label ? labelOf(*field) : value;
    case Qt::EditRole: return value;
    case Qt::AccessibleTextRole:
        return tr("%1: %2", "line, what it says").arg(labelOf(*field), value);
    case kQuietRole: return i.column() == Label;
    case kHintRole: return i.column() == Value ? tr("not told") : QString();
    default: return {};
    }
}

bool GymLines::setData(const QModelIndex& i, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(i) & Qt::ItemIsEditable)) return false;
    const Did did = writeGymField(gym_, *rowAt(i.row()), value.toString().toStdString());
    if (!did) Q_EMIT refused(did.why());
    return did.ok();
}

QVariant GymLines::headerData(int, Qt::Orientation, int) const { return {}; }

Qt::ItemFlags GymLines::flags(const QModelIndex& i) const {
    if (!i.isValid() || !rowAt(i.row())) return Qt::NoItemFlags;
    Qt::ItemFlags f = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (i.column() == Value && gym_.file().writable()) f |= Qt::ItemIsEditable;
    return f;
}

} // namespace bw
