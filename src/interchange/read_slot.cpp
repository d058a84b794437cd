// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_parts.hpp"

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
struct DoseKey {
    Node at = kNone; // of the one key that gives the dose
    Measure measure = Measure::Reps;
    int count = 0; // how many of the four keys there are
};

DoseKey takeDose(Fields& f) {
    DoseKey key;
    for (std::size_t i = 0; i < kCount<Measure>; ++i) {
        const auto measure = static_cast<Measure>(i);
        const Node n = f.take(wordOf(measure));
        if (n == kNone) continue;
        if (key.count++ == 0) {
            key.at = n;
            key.measure = measure;
        }
    }
    return key;
}

std::optional<Dose> readDose(Reading& r, Node n, Measure measure) {
    const auto perUnit = Dose::smallestPerUnit(measure);
    const auto most = Dose::most(measure) / perUnit;
    const auto one = [&](Node at) -> std::optional<std::int64_t> {
        if (measure == Measure::Reps) return readWhole(r, at, 1, static_cast<int>(most));
        return readGrains(r, at, {0, static_cast<double>(most), true}, perUnit);
    };
    const auto amount = readRange(r, n, one);
    if (!amount) return std::nullopt;
    const auto dose = Dose::of(measure, amount->lo(), amount->hi());
    if (dose) return dose.value();
    r.error(n, dose.why());
    return std::nullopt;
}

// Null is an open slot; the key must be there, so that a slip in its spelling opens no slot.
std::optional<ExerciseId> readSlotExercise(Reading& r, Node n) {
    if (n == kNone || r.tree.is(n, Kind::Null)) return std::nullopt;
    auto id = readParsed<ExerciseId>(r, n);
    if (id) r.refs.toExercise(n);
    return id;
}

std::optional<Pattern> readPattern(Reading& r, Node n) { return readWord<Pattern>(r, n); }

void checkDose(Reading& r, const Fields& f, const DoseKey& key, bool open) {
    if (key.count > 1)
        r.error(f.node(), {"A slot has one dose only: reps, seconds, metres or kcal.", {}});
    else if (key.count == 0 && !open && f.there())
        r.error(f.node(), {"A slot needs a dose: reps, seconds, metres or kcal.", {}});
}
} // namespace

std::optional<Slot> readSlot(Reading& r, Node n) {
    Fields f(r, n);
    Slot s;
    const Node exerciseAt = f.need("exercise");
    s.exercise = readSlotExercise(r, exerciseAt);
    s.role = readRole(r, f.take("role"));
    s.patterns = readList<Pattern>(r, f.take("patterns"), readPattern, kCount<Pattern>);
    const auto key = takeDose(f);
    checkDose(r, f, key, exerciseAt == kNone || r.tree.is(exerciseAt, Kind::Null));
    s.dose = readDose(r, key.at, key.measure);
    s.tempo = readParsed<Tempo>(r, f.take("tempo"));
    if (s.exercise && s.dose && !(s.tempo && key.measure == Measure::Reps))
        r.refs.toTimed(key.at, exerciseAt, key.measure);
    const auto rir = [&](Node one) { return readRir(r, one); };
    s.effort = readRange(r, f.take("effort_rir"), rir);
    s.main = orElse(readBool(r, f.take("main")), false);
    s.locked = orElse(readBool(r, f.take("locked")), false);
    s.note = orElse(readText(r, f.take("note"), kNote), std::string{});
    s.extras = f.rest();
    return s;
}

} // namespace bw
