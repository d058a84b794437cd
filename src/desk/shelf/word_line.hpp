// SPDX-License-Identifier: GPL-3.0-or-later
// A line of words out of a list: the rest of the word being typed stands behind the cursor in quiet
// print, and Right or End takes it.
#pragma once
#include "desk/bench/cell_editor.hpp"

#include <QStringList>

namespace bw {

class WordLine : public CellEditor {
    Q_OBJECT
public:
    enum class Between { Blanks, Commas }; // what stands between two words; or a plus, or “or”

    WordLine(Between between, QWidget* parent);
    void setWords(QStringList words) { words_ = std::move(words); }
    [[nodiscard]] QString rest() const; // of the word at the cursor; empty: none

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    Between between_;
    QStringList words_;
};

} // namespace bw
