// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages of the desk are made of.
#pragma once
#include <QFont>

class QFrame;
class QLabel;
class QWidget;

namespace bw {

// The look of a sheet of paper on the desk.
void lookLikePaper(QFrame& frame);

// For what stands beside the print: smaller, but never too small to read.
[[nodiscard]] QFont smallFont(QFont font);

// Words as they are, over as many lines as they take. `name` is the object's.
[[nodiscard]] QLabel* makeWords(QWidget* parent, const char* name);
// One line under a page that says the current thing; however long, it never widens the page.
[[nodiscard]] QLabel* makeSentence(QWidget* parent, const char* name);

} // namespace bw
