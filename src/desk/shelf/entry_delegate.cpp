// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/entry_delegate.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/shelf/entry_model.hpp"
#include "desk/shelf/word_line.hpp"

#include <QAbstractItemView>
#include <QPainter>

#include <algorithm>

namespace bw {

namespace {
constexpr int kSide = 12, kTop = 3, kPart = 7, kGap = 10;

bool isName(const QModelIndex& i) { return i.data(EntryModel::NameRole).toBool(); }

QFont fontFor(QFont font, const QModelIndex& i) {
    if (isName(i)) {
        font.setPointSizeF(font.pointSizeF() * 1.3);
        font.setWeight(QFont::DemiBold);
    }
    font.setItalic(i.data(EntryModel::QuietRole).toBool());
    return font;
}

int labelWidth(const QFont& font) {
    const QFontMetrics metrics(smallFont(font));
    int wide = 0;
    for (const char* longest : {"measured in", "none easier", "none harder", "demands"})
        wide = std::max(wide, metrics.horizontalAdvance(EntryModel::tr(longest)));
    return wide;
}

// Where the line says what it says; the name stands without a label.
QRect valueRoom(const QRect& line, const QFont& font, const QModelIndex& i) {
    const int left = isName(i) ? kSide : kSide + labelWidth(font) + kGap;
    const int above = kTop + (i.data(EntryModel::PartRole).toBool() ? kPart : 0);
    return line.adjusted(left, above, -kSide, -kTop);
}

void paintGround(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i) {
    const Inks& k = inks();
    const bool part = i.data(EntryModel::PartRole).toBool();
    const QRect line = o.rect.adjusted(0, part ? kPart : 0, 0, 0);
    p.fillRect(o.rect, k.paper);
    if (part) {
        p.setPen(k.line);
        p.drawLine(o.rect.left() + kSide, o.rect.top() + kPart / 2, o.rect.right() - kSide,
                   o.rect.top() + kPart / 2);
    }
    if (o.state & QStyle::State_HasFocus) {
        p.setPen(QPen(k.accent, k.stroke + 1));
        p.drawRect(line.adjusted(1, 1, -1, -1));
    }
}
} // namespace

EntryDelegate::EntryDelegate(EntryModel& entry, QObject* parent)
    : CellDelegate(parent), entry_(entry) {}

void EntryDelegate::paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const {
    p->save();
    paintGround(*p, o, i);
    const QRect room = valueRoom(o.rect, o.font, i);
    const QFont font = fontFor(o.font, i);
    if (!isName(i)) {
        const QFont small = smallFont(o.font);
        const int drop = QFontMetrics(font).ascent() - QFontMetrics(small).ascent();
        p->setFont(small);
        p->setPen(inks().quiet);
        p->drawText(
            QRect(o.rect.left() + kSide, room.top() + drop, labelWidth(o.font) + 2, room.height()),
            Qt::AlignLeft | Qt::AlignTop, i.data(EntryModel::LabelRole).toString());
    }
    p->setFont(font);
    p->setPen(i.data(EntryModel::QuietRole).toBool() ? inks().quiet : inks().ink);
    p->drawText(room, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, i.data().toString());
    p->restore();
}

QSize EntryDelegate::sizeHint(const QStyleOptionViewItem& o, const QModelIndex& i) const {
    const auto* view = qobject_cast<const QAbstractItemView*>(o.widget);
    const int wide = view ? view->viewport()->width() : 300;
    const QRect room = valueRoom(QRect(0, 0, wide, 1000), o.font, i);
    const QRect text =
        QFontMetrics(fontFor(o.font, i)).boundingRect(room, Qt::TextWordWrap, i.data().toString());
    return {wide, text.height() + 1000 - room.height()};
}

QWidget* EntryDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                     const QModelIndex& index) const {
    auto* editor = new WordLine(WordLine::Between::Commas, parent);
    editor->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
    editor->setWords(entry_.wordsFor(index.row()));
    connect(editor, &QLineEdit::textEdited, this, [this, editor] {
        editor->setTrouble({});
        Q_EMIT clear();
    });
    return editor;
}

void EntryDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& o,
                                         const QModelIndex& i) const {
    const QRect room = valueRoom(o.rect, o.font, i);
    const int high = std::max(editor->sizeHint().height(), QFontMetrics(o.font).height() + 4);
    editor->setGeometry(room.left() - 6, room.top() - 2, room.width() + kSide, high);
}

std::optional<Message> EntryDelegate::fault(CellEditor& editor) const {
    return edited().isValid() ? entry_.fault(edited().row(), editor.text()) : std::nullopt;
}

} // namespace bw
