// SPDX-License-Identifier: GPL-3.0-or-later
// Type-ahead for an exercise: a part of the name, a pattern word, a kit word; best first. The last
// line of the list adds what was typed to the Shelf.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/shelf_search.hpp"
#include "desk/bench/cell_editor.hpp"

class QCompleter;
class QStandardItemModel;

namespace bw {

class ExerciseEditor : public CellEditor {
    Q_OBJECT
public:
    ExerciseEditor(const Gym& gym, SearchWish wish, QWidget* parent); // the gym must outlive it

    // The exercise of the line that is lit in the list, or whose name was typed out; null: none.
    [[nodiscard]] const Exercise* chosen() const;
    // The lit line is the one that adds to the Shelf.
    [[nodiscard]] bool wantsNew() const;
    void offerNew(bool offer) { offersNew_ = offer; } // by a last line; true at first
    void look(); // fills and shows the list for the text as it is

Q_SIGNALS:
    void lit(const bw::Exercise* exercise); // null: none, or the line that adds
    void taken(int step); // a line was clicked or entered (0), or left by Tab (1) or Shift+Tab (-1)

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void fill();
    void take(int step);
    [[nodiscard]] QString litId() const;

    const Gym& gym_;
    SearchWish wish_;
    QCompleter* completer_;
    QStandardItemModel* list_;
    bool offersNew_ = true;
    QString taken_; // what was taken, once the list has gone
};

} // namespace bw
