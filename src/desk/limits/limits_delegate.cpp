// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limits/limits_delegate.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/limits/limits_model.hpp"

#include <QAbstractItemView>
#include <QPainter>
#include <QTableView>

namespace bw {

namespace {
constexpr int kSide = 8, kTop = 5;

bool head(const QModelIndex& i) { return i.data(LimitsModel::HeadRole).toBool(); }

QFont fontFor(const QStyleOptionViewItem& o, const QModelIndex& i) {
    QFont font = o.font;
    const bool own = i.column() == LimitsModel::House && i.data(LimitsModel::SetRole).toBool();
    if (head(i) || own) font.setWeight(QFont::DemiBold);
    return font;
}

QRect textRoom(const QRect& cell) { return cell.adjusted(kSide, kTop, -kSide, -kTop); }

void paintGround(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const Inks& k = inks();
    p.fillRect(o.rect, o.state & QStyle::State_Selected ? k.wash : k.paper);
    p.setPen(QPen(k.line, k.stroke));
    if (head(i)) p.drawLine(o.rect.bottomLeft(), o.rect.bottomRight());
    if (!head(i) && i.column() == LimitsModel::House) { // it can be written in
        const int y = o.rect.top() + kTop + QFontMetrics(o.font).height() + 1;
        p.setPen(QPen(k.quiet, 1, Qt::DotLine));
        p.drawLine(o.rect.left() + kSide, y, o.rect.right() - kSide, y);
    }
    if (o.state & QStyle::State_HasFocus) {
        p.setPen(QPen(k.accent, k.stroke + 1));
        p.drawRect(o.rect.adjusted(1, 1, -2, -2));
    }
}
} // namespace

LimitsDelegate::LimitsDelegate(LimitsModel& limits, QObject* parent)
    : CellDelegate(parent), limits_(limits) {}

void LimitsDelegate::paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const {
    p->save();
    paintGround(*p, o, i);
    const bool quiet = i.column() == LimitsModel::Basis || i.column() == LimitsModel::Standard;
    p->setPen(quiet ? inks().quiet : inks().ink);
    p->setFont(fontFor(o, i));
    const QRect room = textRoom(o.rect);
    const QString text = i.data().toString();
    if (i.column() == LimitsModel::Meaning)
        p->drawText(room, head(i) ? Qt::AlignBottom | Qt::AlignLeft : Qt::TextWordWrap, text);
    else if (i.column() == LimitsModel::Basis)
        p->drawText(room, Qt::AlignLeft | Qt::AlignTop,
                    p->fontMetrics().elidedText(text, Qt::ElideRight, room.width()));
    else
        p->drawText(room, Qt::AlignLeft | Qt::AlignTop, text);
    p->restore();
}

QSize LimitsDelegate::sizeHint(const QStyleOptionViewItem& o, const QModelIndex& i) const {
    const QFontMetrics metrics(fontFor(o, i));
    if (head(i)) return {80, metrics.height() + 4 * kTop};
    const auto* table = qobject_cast<const QTableView*>(o.widget);
    if (i.column() != LimitsModel::Meaning || !table) return {80, metrics.height() + 2 * kTop};
    const QRect room(0, 0, table->columnWidth(LimitsModel::Meaning) - 2 * kSide, 1000);
    return {80, metrics.boundingRect(room, Qt::TextWordWrap, i.data().toString()).height() +
                    2 * kTop + 1};
}

QWidget* LimitsDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& index) const {
    const HouseLimit* limit = limits_.limitAt(index.row());
    if (!limit) return nullptr;
    auto* editor = new CellEditor(parent);
    editor->setAccessibleName(tr("This house: %1").arg(say(limit->spec.meaning)));
    const QPersistentModelIndex at(index);
    connect(editor, &QLineEdit::textEdited, this, [this, editor, at](const QString& text) {
        editor->setTrouble({});
        Q_EMIT typed(at, text);
    });
    return editor;
}

void LimitsDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& o,
                                          const QModelIndex&) const {
    const int high = editor->sizeHint().height();
    editor->setGeometry(
        QRect(o.rect.left(), o.rect.top(), o.rect.width(), std::min(o.rect.height(), high + 2)));
}

std::optional<Message> LimitsDelegate::fault(CellEditor& editor) const {
    const HouseLimit* limit = edited().isValid() ? limits_.limitAt(edited().row()) : nullptr;
    if (!limit) return std::nullopt;
    const auto read = readLimitCell(editor.text(), limit->spec);
    return read ? std::nullopt : std::optional(read.why());
}

} // namespace bw
