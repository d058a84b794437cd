// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/block_rows.hpp"
#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
using sqlite::Database;

const char* startWord(const Start& start) {
    if (std::holds_alternative<StartTogether>(start)) return "together";
    return std::holds_alternative<StartSpread>(start) ? "spread" : "counts";
}

template <class T> std::optional<std::string_view> textOf(const std::optional<T>& id) {
    return id ? std::optional<std::string_view>(id->text()) : std::nullopt;
}
template <class T, class F>
std::optional<std::int64_t> numberOf(const std::optional<T>& value, const F& number) {
    return value ? std::optional<std::int64_t>(number(*value)) : std::nullopt;
}

struct SlotKey {
    std::int64_t month;
    int section, group, at;
};

void putSlot(Database& db, const SlotKey& k, const Slot& s) {
    const auto measure = s.dose ? std::optional(wordOf(s.dose->measure())) : std::nullopt;
    const auto tempo = s.tempo ? std::optional(s.tempo->text()) : std::nullopt;
    db.run("INSERT INTO slot VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", k.month,
           k.section, k.group, k.at, textOf(s.exercise), textOf(s.role), measure,
           numberOf(s.dose, [](const Dose& d) { return d.amount().lo(); }),
           numberOf(s.dose, [](const Dose& d) { return d.amount().hi(); }), tempo,
           numberOf(s.effort, [](const Range<Rir>& r) { return r.lo().tenths(); }),
           numberOf(s.effort, [](const Range<Rir>& r) { return r.hi().tenths(); }), s.main,
           s.locked, s.note, s.extras.json);
    int at = 0;
    for (const Pattern p : s.patterns)
        db.run("INSERT INTO slot_pattern VALUES (?, ?, ?, ?, ?, ?)", k.month, k.section, k.group,
               k.at, at++, wordOf(p));
}

void putGroup(Database& db, std::int64_t month, int section, int at, const Group& g) {
    db.run("INSERT INTO section_group VALUES (?, ?, ?, ?, ?, ?, ?, ?)", month, section, at,
           g.rounds.lo(), g.rounds.hi(), g.rest.lo().count(), g.rest.hi().count(), g.extras.json);
    int slot = 0;
    for (const Slot& s : g.slots) putSlot(db, {month, section, at, slot++}, s);
}

void putSection(Database& db, std::int64_t month, int at, const Section& s) {
    db.run("INSERT INTO section VALUES (?, ?, ?, ?, ?, ?, ?, ?)", month, at, wordOf(s.kind),
           s.talk.count(),
           numberOf(s.budget, [](const Range<Millis>& r) { return r.lo().count(); }),
           numberOf(s.budget, [](const Range<Millis>& r) { return r.hi().count(); }),
           startWord(s.start), s.extras.json);
    if (const auto* counts = std::get_if<StartCounts>(&s.start)) {
        int i = 0;
        for (const int heads : counts->heads)
            db.run("INSERT INTO section_heads VALUES (?, ?, ?, ?)", month, at, i++, heads);
    }
    int group = 0;
    for (const Group& g : s.groups) putGroup(db, month, at, group++, g);
}
} // namespace

void putBlock(Database& db, const Block& b) {
    removeBlock(db, b.month);
    const auto month = monthNumber(b.month);
    const auto format = b.format ? std::optional(wordOf(*b.format)) : std::nullopt;
    db.run("INSERT INTO block VALUES (?, ?, ?, ?, ?)", month, b.title, format, b.visitsPerWeek,
           b.extras.json);
    int at = 0;
    for (const StairStep& step : b.stair)
        db.run("INSERT INTO stair_step VALUES (?, ?, ?, ?, ?, ?)", month, at++, wordOf(step.rounds),
               step.rir.tenths(), wordOf(step.intent), step.extras.json);
    at = 0;
    for (const Section& s : b.sections) putSection(db, month, at++, s);
    at = 0;
    for (const Acceptance& a : b.accepted)
        db.run("INSERT INTO accepted VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", month, at++,
               a.rule, a.place, a.about, wordOf(a.level), a.measured, a.limit.lo, a.limit.hi,
               a.limit.band, a.reason, a.extras.json);
}

void removeBlock(Database& db, Month month) {
    db.run("DELETE FROM block WHERE month = ?", monthNumber(month));
}

} // namespace bw::store
