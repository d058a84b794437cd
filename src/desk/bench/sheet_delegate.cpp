// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_delegate.hpp"

#include "desk/bench/exercise_editor.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/bench/sheet_paint.hpp"
#include "desk/frame/words.hpp"

#include <QAbstractItemView>

namespace bw {

SheetDelegate::SheetDelegate(SheetModel& sheet, QObject* parent)
    : CellDelegate(parent), sheet_(sheet) {}

void SheetDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    paintSheetCell(*painter, option, index);
}

QWidget* SheetDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                     const QModelIndex& index) const {
    const auto cell = sheet_.cellAt(index);
    if (!cell) return nullptr;
    const bool exercise =
        cell->row.kind == SheetRow::Kind::Slot && cell->column == SheetColumn::Exercise;
    auto* editor =
        exercise ? static_cast<CellEditor*>(exerciseEditor(parent, index)) : new CellEditor(parent);
    editor->setAccessibleName(cellName(*cell));
    follow(editor, index);
    return editor;
}

QWidget* SheetDelegate::exerciseEditor(QWidget* parent, const QModelIndex& index) const {
    const auto cell = sheet_.cellAt(index);
    const Slot* slot = slotAt(cell->block, cell->row.place);
    auto* editor = new ExerciseEditor(
        cell->gym, {sectionAt(cell->block, cell->row.place)->kind, slot->patterns}, parent);
    const QPersistentModelIndex at(index);
    connect(editor, &ExerciseEditor::lit, this, [this, at](const Exercise* e) {
        if (e) sheet_.tryExercise(at, *e);
        tellOf(e);
    });
    connect(editor, &ExerciseEditor::taken, this, [this, editor](int step) {
        auto* self = const_cast<SheetDelegate*>(this);
        Q_EMIT self->commitData(editor);
        Q_EMIT self->closeEditor(editor, step > 0   ? EditNextItem
                                         : step < 0 ? EditPreviousItem
                                                    : NoHint);
    });
    return editor;
}

void SheetDelegate::follow(CellEditor* editor, const QModelIndex& index) const {
    const QPersistentModelIndex at(index);
    const auto* finder = qobject_cast<ExerciseEditor*>(editor);
    connect(editor, &QLineEdit::textEdited, this, [this, editor, at, finder](const QString& text) {
        editor->setTrouble({});
        tellOf(finder ? finder->chosen() : nullptr);
        if (!finder) (void)sheet_.tryText(at, text); // said only when the coach wants to leave
    });
}

void SheetDelegate::tellOf(const Exercise* lit) const {
    if (lit && lit->retired)
        Q_EMIT trouble({"“%1” is retired: no longer offered, but it may stand here. Ctrl+R on "
                        "the Shelf brings it back.",
                        {lit->name}});
    else
        Q_EMIT clear();
}

void SheetDelegate::setModelData(QWidget* widget, QAbstractItemModel* model,
                                 const QModelIndex& index) const {
    auto* editor = static_cast<CellEditor*>(widget);
    if (auto* finder = qobject_cast<ExerciseEditor*>(editor)) {
        if (finder->wantsNew()) {
            Q_EMIT addWanted(index, editor->text().trimmed());
            return;
        }
        const bool typed = editor->isModified() && !editor->text().trimmed().isEmpty();
        if (const Exercise* e = typed ? finder->chosen() : nullptr) {
            model->setData(index, plain(e->id.text()), SheetModel::ChosenIdRole);
            return;
        }
    }
    CellDelegate::setModelData(widget, model, index);
}

void SheetDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex&) const {
    editor->setGeometry(option.rect.adjusted(0, 1, -2, -1));
}

std::optional<Message> SheetDelegate::fault(CellEditor& editor) const {
    if (auto* finder = qobject_cast<ExerciseEditor*>(&editor))
        if (finder->chosen() || finder->wantsNew() || editor.text().trimmed().isEmpty())
            return std::nullopt;
    const auto* view = qobject_cast<QAbstractItemView*>(editor.parent()->parent());
    const auto cell = view ? sheet_.cellAt(view->currentIndex()) : std::nullopt;
    if (!cell) return std::nullopt;
    const auto read = readCell(*cell, editor.text());
    return read ? std::nullopt : std::optional(read.why());
}

} // namespace bw
