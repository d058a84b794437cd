// SPDX-License-Identifier: GPL-3.0-or-later
// Help where one is. Parts of the screen say which place of the Handbook is theirs; F1 opens it at
// that of the part that has the focus.
#pragma once
#include <QString>

class QWidget;

namespace bw {

class HandbookWindow;

// As links in docs name it: "guide.md#the-stair".
void setHandbookPlace(QWidget* part, const QString& place);
// Of the part or the nearest one around it; where none has one, the Handbook's beginning.
[[nodiscard]] QString handbookPlaceFor(const QWidget* part);

// Opens the one Handbook of the window that `part` is in; it goes with that window.
HandbookWindow& openHandbook(QWidget* part, const QString& place);
void closeHandbook(QWidget& window); // if it is open

} // namespace bw
