// SPDX-License-Identifier: GPL-3.0-or-later
// One open gym on the screen: the column of places, the line on top, the page of the chosen place
// and the status line. Owns the gym and what is shown of it.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/floor/floor_runner.hpp"
#include "desk/frame/kept_view.hpp"

#include <QWidget>

class QAction;
class QActionGroup;
class QStackedWidget;

namespace bw {

class Actions;
class BenchPage;
class FloorPage;
class GymPage;
class LimitsPage;
class Notice;
class PlacesColumn;
class ShelfPage;
class SheetsPage;
class StatusLine;

class Workspace : public QWidget {
    Q_OBJECT
public:
    // `actions` gets entries that must not be used after this has gone.
    Workspace(std::unique_ptr<OpenGym> gym, Actions& actions, QWidget* parent);
    ~Workspace() override;

    [[nodiscard]] Draft& draft() { return draft_; }
    [[nodiscard]] FloorRunner& floor() { return floor_; }
    [[nodiscard]] OpenGym& gym() { return *gym_; }
    [[nodiscard]] Notice& notice() { return *notice_; }
    [[nodiscard]] StatusLine& status() { return *status_; }
    [[nodiscard]] BenchPage& bench() { return *bench_; }
    [[nodiscard]] QWidget* page() const; // on show
    // For another workspace; this one is good for nothing but to be deleted then.
    // Nothing may be done with it afterwards but to delete it.
    [[nodiscard]] std::unique_ptr<OpenGym> letGo();
    // What is not there any more is left as it is.
    void goBackTo(const KeptView& view);
    [[nodiscard]] KeptView view() const;

private:
    void assemble(Actions& actions);
    void addPlaces(Actions& actions);
    void addActions(Actions& actions);
    void addLimits(Actions& actions);
    void addGymPage(Actions& actions);
    void addHandbook();
    void addProposals(Actions& actions);
    void addPlace(Actions& actions, int number, const QString& icon, const QString& word,
                  QWidget* page);
    QWidget* emptyMonth(Actions& actions);
    void goTo(QWidget* page);
    [[nodiscard]] bool isBeside(const QWidget* page) const;
    void nextFinding(int step);
    void print();
    void follow();

    std::unique_ptr<OpenGym> gym_;
    Draft draft_;
    FloorRunner floor_;
    QWidget* content_; // all that is seen; goes before the draft it looks at
    Notice* notice_;
    StatusLine* status_;
    PlacesColumn* column_;
    QStackedWidget* pages_;
    QActionGroup* places_;
    QList<QAction*> ofMonth_; // need one
    BenchPage* bench_ = nullptr;
    ShelfPage* shelf_ = nullptr;
    SheetsPage* sheets_ = nullptr;
    LimitsPage* limits_ = nullptr;
    GymPage* gymPage_ = nullptr;
    QWidget *noMonth_ = nullptr,
            *wanted_ = nullptr,     // the page chosen, though there may be no month
                *before_ = nullptr; // where a page beside the places leads back to
    Connection listening_;
};

} // namespace bw
