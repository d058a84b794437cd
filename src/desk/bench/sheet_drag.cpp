// SPDX-License-Identifier: GPL-3.0-or-later
// Dragging lines of the sheet: a slot, a group by its foot or its mark, a section by its head.
#include "desk/bench/sheet_model.hpp"
#include "desk/frame/words.hpp"

#include <QMimeData>

namespace bw {

namespace {
const QString kMime = QStringLiteral("application/x-blockwright-place");

std::optional<Place> placeIn(const QMimeData* data, const Block* block) {
    if (!data || !block || !data->hasFormat(kMime)) return std::nullopt;
    return placeFrom(*block, data->data(kMime).toStdString());
}

// Where something dropped on, or above, a line goes.
std::optional<Place> dropTarget(const Block& block, const SheetRow& row, Place dragged) {
    if (dragged.isSection()) return Place{row.place.section};
    if (dragged.isGroup())
        return row.kind == SheetRow::Kind::Section || row.kind == SheetRow::Kind::Empty
                   ? Place{row.place.section}
                   : Place{row.place.section, row.place.group};
    if (row.kind == SheetRow::Kind::Slot || row.kind == SheetRow::Kind::Foot) return row.place;
    const Section* s = sectionAt(block, row.place);
    if (!s || s->groups.empty()) return std::nullopt;
    return Place{row.place.section, 0, 0};
}
} // namespace

QStringList SheetModel::mimeTypes() const { return {kMime}; }

QMimeData* SheetModel::mimeData(const QModelIndexList& indexes) const {
    if (indexes.isEmpty()) return nullptr;
    const auto c = cellAt(indexes.first());
    if (!c) return nullptr;
    Place place = c->row.place;
    if (place.isSlot() && c->column == SheetColumn::Mark) place.slot = -1;
    auto* data = new QMimeData;
    data->setData(kMime, QByteArray::fromStdString(placeText(c->block, place)));
    return data;
}

bool SheetModel::canDropMimeData(const QMimeData* data, Qt::DropAction, int, int,
                                 const QModelIndex&) const {
    return placeIn(data, draft_.block()).has_value();
}

bool SheetModel::dropMimeData(const QMimeData* data, Qt::DropAction, int row, int,
                              const QModelIndex& parent) {
    const auto from = placeIn(data, draft_.block());
    const int target = parent.isValid() ? parent.row() : row;
    if (!from || target < 0 || target >= rowCount()) return false;
    const auto to = dropTarget(*draft_.block(), rows_[static_cast<std::size_t>(target)], *from);
    if (!to) return false;
    const Did did = moveTo(draft_.gym(), {*draft_.month(), *from}, *to);
    if (!did) Q_EMIT refused(did.why());
    return false; // the verb has moved it: the view must not take lines out by itself
}

} // namespace bw
