// SPDX-License-Identifier: GPL-3.0-or-later
// The month as drafted: sections in the order they run, each with groups (pair, superset, tri-set,
// circuit), each with slots; and the stair of its weeks. Plain values: a copy is a draft of its
// own.
#pragma once
#include "blockwright/model/acceptance.hpp"
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/dose.hpp"
#include "blockwright/model/effort.hpp"
#include "blockwright/model/extras.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/tempo.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace bw {

struct Slot {
    std::optional<ExerciseId> exercise; // none: an open slot
    std::optional<RoleId> role;         // wanted of an open slot
    std::vector<Pattern> patterns;      // wanted of an open slot; empty: any
    std::optional<Dose> dose;           // none only in an open slot
    std::optional<Tempo> tempo;
    std::optional<Range<Rir>> effort;
    bool main = false;   // a main lift of the month
    bool locked = false; // proposals leave it alone
    std::string note;    // up to 2 000 characters
    Extras extras;

    [[nodiscard]] bool open() const { return !exercise; }
    bool operator==(const Slot&) const = default;
};

struct Group {
    Range<int> rounds{1};          // 1 to 20
    Range<Millis> rest{Millis{0}}; // after a round; 0 to 30 min
    std::vector<Slot> slots;       // up to 40
    Extras extras;
    bool operator==(const Group&) const = default;
};

// How members start in a section: all at its first group, spread evenly, or by head count.
struct StartTogether {
    bool operator==(const StartTogether&) const = default;
};
struct StartSpread {
    bool operator==(const StartSpread&) const = default;
};
struct StartCounts {
    std::vector<int> heads; // one a group, each 0 to 400
    bool operator==(const StartCounts&) const = default;
};
using Start = std::variant<StartTogether, StartSpread, StartCounts>;

struct Section {
    SectionKind kind = SectionKind::Strength;
    Millis talk{0};                      // the coach explains; 0 to 60 min
    std::optional<Range<Millis>> budget; // how long it should take, talk included
    Start start = StartTogether{};
    std::vector<Group> groups; // up to 40
    Extras extras;
    bool operator==(const Section&) const = default;
};

// One week of the stair.
struct StairStep {
    RoundsMode rounds = RoundsMode::Open;
    Rir rir;
    Intent intent = Intent::Build;
    Extras extras;
    bool operator==(const StairStep&) const = default;
};

// Week 1 low rounds, RIR 4, learn; 2 and 3 open, RIR 3 and 2, build; 4 open, RIR 1, challenge.
[[nodiscard]] std::vector<StairStep> defaultStair();

struct Block {
    Month month;
    std::string title;                             // up to 200 characters
    std::optional<Format> format;                  // of the strength sections
    int visitsPerWeek = 3;                         // 1 to 14
    std::vector<Section> sections;                 // up to 20
    std::vector<StairStep> stair = defaultStair(); // 1 to Week::kMost steps
    std::vector<Acceptance> accepted{};            // up to 200
    Extras extras;

    [[nodiscard]] const StairStep& step(Week w) const; // a week past the end: the last step
    bool operator==(const Block&) const = default;
};

} // namespace bw
