// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/class_delegate.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/class_model.hpp"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QPainter>

#include <optional>

namespace bw {

namespace {
constexpr int kPad = 6;

// One painting of a cell.
class Cell {
public:
    Cell(QPainter& p, const QStyleOptionViewItem& o, const QModelIndex& i)
        : p_(p), o_(o), i_(i), k_(inks()), small_(smallFont(o.font)) {
        const double line = QFontMetricsF(o.font).height(), low = QFontMetricsF(small_).height();
        const QRectF box = QRectF(o.rect).adjusted(kPad, 0, -kPad, -1);
        const double top = box.top() + (box.height() - line - low) / 2;
        upper_ = QRectF(box.left(), top, box.width(), line);
        lower_ = QRectF(box.left(), top + line, box.width(), low);
    }

    void paint() {
        const bool out = i_.data(ClassModel::RuledOutRole).toBool();
        p_.fillRect(o_.rect, out ? k_.desk : ground());
        p_.setPen(QPen(k_.line, k_.stroke));
        p_.drawLine(o_.rect.bottomLeft(), o_.rect.bottomRight());
        if (out)
            word(upper_, o_.font, k_.quiet, ClassDelegate::tr("left out"), Qt::AlignLeft);
        else
            lines();
        if (o_.state & QStyle::State_HasFocus) {
            p_.setPen(QPen(k_.accent, k_.stroke + 1));
            p_.drawRect(QRectF(o_.rect).adjusted(1, 1, -1, -1));
        }
    }

private:
    [[nodiscard]] QColor ground() const {
        return o_.state & QStyle::State_Selected ? k_.wash : k_.paper;
    }

    void word(const QRectF& box, const QFont& font, const QColor& ink, const QString& text,
              Qt::Alignment side) {
        p_.setFont(font);
        p_.setPen(ink);
        const QString fitting = QFontMetricsF(font).elidedText(text, Qt::ElideRight, box.width());
        p_.drawText(box, static_cast<int>(side | Qt::AlignVCenter), fitting);
    }

    void lines() {
        const QString sets = i_.data(Qt::DisplayRole).toString();
        const QString other = i_.data(ClassModel::InsteadRole).toString();
        if (!i_.data(ClassModel::TroubleRole).toString().isEmpty())
            wrong(sets);
        else if (!sets.isEmpty())
            word(upper_, o_.font, k_.ink, sets, Qt::AlignLeft);
        else if (!other.isEmpty())
            word(upper_, small_, k_.level[2], QStringLiteral("→ ") + other, Qt::AlignLeft);
        const QString aim = i_.data(ClassModel::AimRole).toString();
        const double wide = QFontMetricsF(small_).horizontalAdvance(aim);
        word(lower_, small_, k_.quiet, aim, Qt::AlignRight);
        word(lower_.adjusted(0, 0, -wide - kPad, 0), small_, k_.quiet,
             i_.data(ClassModel::LastRole).toString(), Qt::AlignLeft);
    }

    void wrong(const QString& typed) {
        word(upper_, o_.font, k_.level[0], typed, Qt::AlignLeft);
        p_.setPen(QPen(k_.level[0], 2, Qt::DashLine));
        p_.drawLine(upper_.bottomLeft(), upper_.bottomRight());
    }

    QPainter& p_;
    const QStyleOptionViewItem& o_;
    const QModelIndex& i_;
    const Inks& k_;
    QFont small_;
    QRectF upper_, lower_;
};

// Where a key leads out of the line; none: it stays in it.
std::optional<std::pair<int, int>> wayOut(const QKeyEvent& key) {
    using Way = std::pair<int, int>;
    const bool shift = key.modifiers() & Qt::ShiftModifier;
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: return Way{shift ? -1 : 1, 0};
    case Qt::Key_Down: return Way{1, 0};
    case Qt::Key_Up: return Way{-1, 0};
    case Qt::Key_Tab: return Way{0, 1};
    case Qt::Key_Backtab: return Way{0, -1};
    default: return std::nullopt;
    }
}
} // namespace

ClassDelegate::ClassDelegate(ClassModel& grid, QObject* parent)
    : CellDelegate(parent), grid_(grid) {}

void ClassDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    painter->save();
    Cell(*painter, option, index).paint();
    painter->restore();
}

QWidget* ClassDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                     const QModelIndex& index) const {
    auto* editor = new CellEditor(parent);
    editor->setAccessibleName(
        tr("Sets of %1, %2")
            .arg(grid_.headerData(index.row(), Qt::Vertical, Qt::DisplayRole).toString(),
                 grid_.headerData(index.column(), Qt::Horizontal, Qt::AccessibleTextRole)
                     .toString()));
    connect(editor, &QLineEdit::textEdited, this, [this, editor] {
        editor->setTrouble({});
        Q_EMIT clear();
    });
    return editor;
}

void ClassDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex&) const {
    const int high = QFontMetrics(option.font).height() + 6;
    editor->setGeometry(option.rect.left() + 1, option.rect.top() + 1, option.rect.width() - 2,
                        std::min(high, option.rect.height() - 2));
}

std::optional<Message> ClassDelegate::fault(CellEditor& editor) const {
    const auto* view = qobject_cast<QAbstractItemView*>(editor.parent()->parent());
    if (!view) return std::nullopt;
    const auto sets = grid_.setsFor(view->currentIndex(), editor.text());
    return sets ? std::nullopt : std::optional(sets.why());
}

bool ClassDelegate::eventFilter(QObject* object, QEvent* event) {
    auto* editor = qobject_cast<CellEditor*>(object);
    if (!editor || event->type() != QEvent::KeyPress)
        return CellDelegate::eventFilter(object, event);
    const auto way = wayOut(*static_cast<QKeyEvent*>(event));
    if (!way) return CellDelegate::eventFilter(object, event);
    if (!mayLeave(editor)) return true;
    Q_EMIT commitData(editor);
    Q_EMIT closeEditor(editor, NoHint);
    Q_EMIT leave(way->first, way->second);
    return true;
}

} // namespace bw
