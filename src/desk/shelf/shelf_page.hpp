// SPDX-License-Identifier: GPL-3.0-or-later
// The Shelf: every exercise in a table that words narrow, and beside it everything of one of them.
#pragma once
#include "blockwright/model/id.hpp"
#include "blockwright/model/message.hpp"
#include "blockwright/model/shelf.hpp"

#include <QWidget>

#include <optional>

class QAction;
class QLabel;

namespace bw {

class Actions;
class Draft;
class EntryModel;
class EntryView;
class FamilyView;
class ReasonLine;
class ShelfModel;
class ShelfTable;
class WordLine;

class ShelfPage : public QWidget {
    Q_OBJECT
public:
    ShelfPage(Draft& draft, Actions& actions, QWidget* parent); // the draft must outlive it
    ~ShelfPage() override;                                      // what is being typed is entered

    void goTo(const ExerciseId& id); // a filter that hides it is taken off

Q_SIGNALS:
    void benchWanted(); // the month to look at is on show

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeBar(const QList<QAction*>& buttons);
    QWidget* makeLeft();
    QWidget* makeRight();
    QList<QAction*> addActions(Actions& actions);
    void wire();
    void draftChanged(); // a page out of sight is filled when it is next shown
    void refresh();
    void choose();        // by the filter
    void arrive(int row); // in the table; -1: nowhere
    void follow(int row);
    void showEntry(bool same);
    void showCount();
    void askName(bool copy);
    void takeName(const QString& name);
    void retire();
    void openMonth(int row);
    void tell(const Message& what);
    void say(const QString& what);
    void quiet();

    Draft& draft_;
    ShelfModel* model_;
    EntryModel* entry_;
    ShelfTable* table_;
    EntryView* view_;
    FamilyView* family_;
    ReasonLine* name_;
    WordLine* filter_;
    QLabel *count_, *none_, *notice_;
    QAction *copy_ = nullptr, *retire_ = nullptr;
    Shelf shown_;                    // as the table last had it
    std::optional<ExerciseId> here_; // on show at the right
    std::uint64_t revision_ = 0,     // of the gym when it was last looked at
        read_ = 0;                   // of the gym when the right side was written
    bool stale_ = true, copying_ = false;
};

} // namespace bw
