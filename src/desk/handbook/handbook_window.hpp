// SPDX-License-Identifier: GPL-3.0-or-later
// The Handbook in a window of its own beside the program's: contents or what was found on the left,
// the page on the right. Ctrl+F goes to the words to find, F6 from part to part, Alt+Left back, Esc
// first empties the search and then closes the window.
#pragma once
#include "desk/handbook/handbook_search.hpp"

#include <QWidget>

#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QStackedWidget;
class QToolButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace bw {

class HandbookView;

class HandbookWindow : public QWidget {
    Q_OBJECT
public:
    HandbookWindow();

    // One that the Handbook does not have changes nothing but the focus, which goes to the page.
    void goTo(const QString& place);
    [[nodiscard]] QString place() const; // on show, with its heading

protected:
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Stop {
        HandbookSpot spot;
        int sight = 0; // how far down the page was read
    };

    QWidget* makeSide();
    QWidget* makePage();
    QToolButton* makeStep(const QString& text, const QString& name, int step);
    void fillContents();
    void addKeys();
    void open(HandbookSpot spot, bool instead = false); // of the one on show, on the way back
    void step(int by);
    [[nodiscard]] Stop& stop() { return way_[static_cast<std::size_t>(now_)]; }
    void put(const Stop& stop);
    void follow(); // what stands beside the page
    void find(const QString& typed);
    void choose(int hit);
    void goRound();

    QLineEdit* words_;
    QStackedWidget* side_;
    QTreeWidget* contents_;
    QListWidget* found_;
    QLabel* count_;
    QToolButton *back_, *forward_;
    HandbookView* view_;
    QList<HandbookHit> hits_;
    std::vector<Stop> way_; // pages that were read, up to
    int now_ = -1;          // the one on show
    bool looking_ = false;  // it is there because of the words to find
};

} // namespace bw
