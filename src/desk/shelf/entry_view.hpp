// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of one exercise, as on paper: what a line is in quiet print on the left, what it says
// beside it. Enter or typing opens a line in place, Delete empties it; Enter on a month opens that.
#pragma once
#include "desk/shelf/entry_model.hpp"

#include <QListView>

namespace bw {

class EntryView : public QListView {
    Q_OBJECT
public:
    EntryView(EntryModel& model, QWidget* parent);

Q_SIGNALS:
    void monthWanted(int row);
    void trouble(const bw::Message& why); // what is typed is not understood
    void clear();
    void left(); // Esc: back to the table

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    EntryModel& entry_;
};

} // namespace bw
