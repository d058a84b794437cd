// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that can be done, as lines to be found by words: like the index at the back of a
// handbook, with the key where the page number would stand.
#pragma once
#include <QStringList>

#include <functional>

class QMenuBar;

namespace bw {

class Actions;
class Draft;

struct CommandLine {
    QString group, text;
    QStringList keys;
    bool atHand = true;
    QString whyNot; // empty when it is at hand, or when nobody knows
    std::function<void()> run;
};

// All of the registry. What stands in no menu of the bar belongs to a gym that is not on show.
[[nodiscard]] QList<CommandLine> commandLines(const Actions& actions, const QMenuBar& bar);
// The months of the gym, newest first; running one shows it. The draft must be there then.
[[nodiscard]] QList<CommandLine> monthLines(Draft& draft);

// The lines in which each typed word begins a word of the text, the group or the keys, whatever
// the case, the accents and the order. Group by group, that of the nearest line first.
[[nodiscard]] QList<CommandLine> linesFor(const QList<CommandLine>& all, const QString& typed);

} // namespace bw
