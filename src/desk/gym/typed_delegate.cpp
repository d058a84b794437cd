// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/typed_delegate.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>
#include <QTableView>

#include <algorithm>

namespace bw {

namespace {
constexpr int kSide = 8, kTop = 4, kTick = 13;

bool head(const QModelIndex& i) { return i.data(kHeadRole).toBool(); }
bool ticked(const QModelIndex& i) { return i.data(Qt::CheckStateRole).isValid(); }
bool typed(const QModelIndex& i) { return i.flags() & Qt::ItemIsEditable; }

QFont fontFor(const QStyleOptionViewItem& o, const QModelIndex& i) {
    QFont font = o.font;
    if (head(i)) font.setWeight(QFont::DemiBold);
    return font;
}

QRect textRoom(const QRect& cell, const QModelIndex& i) {
    return cell.adjusted(ticked(i) ? TypedDelegate::kTickRoom : kSide, kTop, -kSide, -kTop);
}

// Where something can be written: a dotted line, on the line the coach is on or where it says more
// than nothing.
void paintRule(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const bool here = o.state & QStyle::State_Selected;
    if (head(i) || !typed(i) || i.column() == 0) return;
    if (!here && i.data().toString().isEmpty() && i.data(kHintRole).toString().isEmpty()) return;
    p.setPen(QPen(inks().quiet, 1, Qt::DotLine));
    p.drawLine(o.rect.left() + kSide, o.rect.bottom() - 2, o.rect.right() - kSide,
               o.rect.bottom() - 2);
}

void paintTick(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const Inks& k = inks();
    const bool on = i.data(Qt::CheckStateRole).toInt() == Qt::Checked;
    const int high = QFontMetrics(o.font).height();
    const QRectF box(o.rect.left() + kSide - 1 + 0.5,
                     o.rect.top() + kTop + (high - kTick) / 2 + 0.5, kTick - 1, kTick - 1);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(on ? k.accent : k.quiet, 1));
    p.setBrush(on ? QBrush(k.accent) : QBrush(k.paper));
    p.drawRoundedRect(box, 2, 2);
    if (!on) return;
    p.setPen(QPen(k.onAccent, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPolyline(QPolygonF({box.topLeft() + QPointF(2.5, 6), box.topLeft() + QPointF(5, 9),
                              box.topLeft() + QPointF(9.5, 3.5)}));
}

void paintGround(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const Inks& k = inks();
    p.fillRect(o.rect, o.state & QStyle::State_Selected ? k.wash : k.paper);
    p.setPen(QPen(k.line, k.stroke));
    if (head(i)) p.drawLine(o.rect.bottomLeft(), o.rect.bottomRight());
    paintRule(p, o, i);
    if (ticked(i)) paintTick(p, o, i);
    if (!(o.state & QStyle::State_HasFocus)) return;
    p.setBrush(Qt::NoBrush);
    p.setRenderHint(QPainter::Antialiasing, false);
    p.setPen(QPen(k.accent, k.stroke + 1));
    p.drawRect(o.rect.adjusted(1, 1, -1, -1));
}
} // namespace

TypedDelegate::TypedDelegate(Reader reader, QObject* parent)
    : CellDelegate(parent), reader_(std::move(reader)) {}

void TypedDelegate::paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const {
    p->save();
    paintGround(*p, o, i);
    QString text = i.data().toString();
    const bool hint = text.isEmpty();
    if (hint) text = i.data(kHintRole).toString();
    p->setPen(hint || i.data(kQuietRole).toBool() ? inks().quiet : inks().ink);
    p->setFont(fontFor(o, i));
    const int side = i.data(Qt::TextAlignmentRole).toInt() & Qt::AlignHorizontal_Mask;
    const int how = (side ? side : int(Qt::AlignLeft)) |
                    (head(i) ? int(Qt::AlignBottom) : Qt::AlignTop | Qt::TextWordWrap);
    p->drawText(textRoom(o.rect, i), how, text);
    p->restore();
}

QSize TypedDelegate::sizeHint(const QStyleOptionViewItem& o, const QModelIndex& i) const {
    const QFontMetrics metrics(fontFor(o, i));
    if (head(i)) return {60, metrics.height() + (i.row() == 0 ? 2 : 4) * kTop};
    const auto* table = qobject_cast<const QTableView*>(o.widget);
    const int least = metrics.height() + 2 * kTop;
    if (!table) return {60, least};
    const QRect room = textRoom({0, 0, table->columnWidth(i.column()), 1000}, i);
    const int high =
        metrics.boundingRect(room, Qt::TextWordWrap, i.data().toString()).height() + 2 * kTop;
    return {60, std::max(least, high)};
}

QWidget* TypedDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                     const QModelIndex& index) const {
    auto* editor = new CellEditor(parent);
    editor->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
    connect(editor, &QLineEdit::textEdited, this, [this, editor] {
        editor->setTrouble({});
        Q_EMIT clear();
    });
    return editor;
}

void TypedDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& o,
                                         const QModelIndex& index) const {
    const int left = ticked(index) ? kTickRoom - 4 : 0;
    const int high = std::min(o.rect.height(), editor->sizeHint().height() + 2);
    editor->setGeometry(QRect(o.rect.left() + left, o.rect.top(), o.rect.width() - left, high));
}

std::optional<Message> TypedDelegate::fault(CellEditor& editor) const {
    return edited().isValid() ? reader_(edited(), editor.text()) : std::nullopt;
}

} // namespace bw
