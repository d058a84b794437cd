// SPDX-License-Identifier: GPL-3.0-or-later
// Which exercises of the Shelf are shown, out of what the coach types. All of it must fit:
//   hinge kettle       beginnings of words: name, pattern, role, kit, load, muscle, demand
//   grip 2, skill 1    a demand of at least so much; that skill
//   no barbell         not with that word
//   unused, unused 3   by no month; by none of the gym's last three; used and used 3 likewise
//   since July         used in July or later; not since July
//   retired            those that are retired, which are left out otherwise
#pragma once
#include "desk/shelf/shelf_line.hpp"

#include <QStringList>

#include <vector>

namespace bw {

struct Gym;

struct ShelfFilter {
    struct Word {
        QString text;                 // findable()
        std::optional<Demand> demand; // its name
        bool no = false;
    };
    std::vector<Word> words;
    std::vector<std::pair<Demand, int>> atLeast;
    std::optional<int> skill;
    std::optional<bool> everUsed;
    std::optional<Month> usedFrom, unusedFrom; // used then or later; not
    bool retired = false;
    QString trouble; // what is missing behind a word

    // `latest`: the gym's latest month; none: no month has used anything.
    static ShelfFilter parse(const QString& text, std::optional<Month> latest);
    [[nodiscard]] bool fits(const ShelfLine& line) const;
};

// Whether the last word may become one of the filter's own (“unus”) when it is written out.
[[nodiscard]] bool isUnfinished(const QString& text);
// What can be written in the line, for completing it: the filter's own words and those of the gym.
[[nodiscard]] QStringList filterWords(const Gym& gym);

} // namespace bw
