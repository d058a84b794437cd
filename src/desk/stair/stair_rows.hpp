// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the two tables, worded: they outlive the gym they were made of.
#pragma once
#include "desk/stair/stair_member.hpp"

#include <QString>

namespace bw {

struct StairCell {
    QString plan;   // of the class
    QString target; // of the member; empty: nobody chosen, or nothing to say
    QString spoken; // the whole in sentences
};

struct StairRow {
    Place place;
    QString label, name, dose;        // "C1", "Trap bar deadlift", "5"
    QString section;                  // named on its first row, else empty
    bool startsGroup = false;         // not the first group of its section
    bool main = false, ruled = false; // ruled: a flag of the member rules the draft's exercise out
    std::vector<StairCell> weeks;
};
// With a member, name is of the substitute where there is one.
[[nodiscard]] std::vector<StairRow> stairRows(const Gym& gym, const Block& block,
                                              const MemberStair* member);

struct LoadRow {
    QString name, tip;
    std::vector<QString> weeks;
    bool done = false; // of the member, not of the plan
};
[[nodiscard]] std::vector<LoadRow> loadRows(const Gym& gym, const Block& block,
                                            const MemberStair* member);

} // namespace bw
