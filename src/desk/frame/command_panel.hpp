// SPDX-License-Identifier: GPL-3.0-or-later
// "Find a command": a small panel over the page, gone as soon as the keyboard is elsewhere.
#pragma once
#include "desk/frame/command_lines.hpp"

#include <QFrame>
#include <QPointer>

class QLabel;
class QLineEdit;
class QListWidget;

namespace bw {

class CommandPanel : public QFrame {
    Q_OBJECT
public:
    explicit CommandPanel(QWidget* window);
    void open(QList<CommandLine> lines);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool next) override; // only within

private:
    void assemble();
    void fill();
    void place();
    void walk(int step);
    void tellLine();
    void runLine();
    void leave(); // the keyboard goes back to where it was
    [[nodiscard]] bool takesKey(int key);
    [[nodiscard]] const CommandLine* line() const; // null: none

    QLineEdit* words_;
    QListWidget* list_;
    QLabel* none_;
    QList<CommandLine> all_, found_;
    QPointer<QWidget> before_;
};

} // namespace bw
