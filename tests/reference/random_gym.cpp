// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/random_gym.hpp"

#include "support/fixtures.hpp"

#include <algorithm>
#include <random>

namespace bw::test {

namespace {
class Draw {
public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    std::int64_t upTo(std::int64_t lo, std::int64_t hi) {
        return lo + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(hi - lo + 1));
    }
    int count(int lo, int hi) { return static_cast<int>(upTo(lo, hi)); }
    bool once(int in) { return upTo(1, in) == 1; }
    template <class E> E any() { return static_cast<E>(upTo(0, kCount<E> - 1)); }

    // Whole seconds as a coach writes them, or any millisecond.
    Millis time(int mostSeconds) {
        return Millis{once(2) ? upTo(0, mostSeconds) * 1000 : upTo(0, mostSeconds * 1000)};
    }
    Range<Millis> times(int mostSeconds) {
        return Range<Millis>::between(time(mostSeconds), time(mostSeconds));
    }
    // A tenth, or as odd as a pace can be.
    Rate rate() {
        return Rate::fromBillionths(once(2) ? upTo(1, 200) * 100'000'000 : upTo(1, 20'000'000'000))
            .value();
    }

private:
    std::mt19937_64 engine_;
};

Exercise randomExercise(Draw& draw, int n) {
    Exercise e = exercise("x" + std::to_string(n), draw.any<Pattern>());
    Pace::Rates rates;
    if (draw.once(2)) rates.secondsPerRep = draw.rate();
    if (draw.once(2)) rates.metresPerSecond = draw.rate();
    if (draw.once(2)) rates.kcalPerMinute = draw.rate();
    const auto pace = Pace::of(draw.any<Measure>(), rates);
    e.pace = pace ? *pace : Pace::of(Measure::Seconds, rates).value();
    e.sides = draw.any<Sides>();
    e.setup = draw.time(40);
    return e;
}

Dose randomDose(Draw& draw, Measure m) {
    const std::int64_t grain = m == Measure::Reps || draw.once(2) ? 1 : 1'000;
    const std::int64_t most = m == Measure::Reps ? 30 : 120'000 / grain;
    const std::int64_t a = draw.upTo(1, most) * grain;
    const std::int64_t b = draw.once(2) ? a : draw.upTo(1, most) * grain;
    return Dose::of(m, std::min(a, b), std::max(a, b)).value();
}

std::optional<Tempo> randomTempo(Draw& draw) {
    std::string text;
    for (int i = 0; i < 4; ++i) text += "0123456789X"[draw.upTo(0, 10)];
    const auto tempo = Tempo::parse(text);
    return tempo ? std::optional(*tempo) : std::nullopt;
}

Slot randomSlot(Draw& draw, const Shelf& shelf) {
    Slot s;
    if (draw.once(8)) return s;
    const auto& e = shelf.entries()[static_cast<std::size_t>(
        draw.upTo(0, static_cast<std::int64_t>(shelf.size()) - 1))];
    s.exercise = e->id;
    if (draw.once(3)) s.tempo = randomTempo(draw);
    Measure m = draw.any<Measure>();
    if (!e->pace.times(m) && !(m == Measure::Reps && s.tempo)) m = Measure::Seconds;
    s.dose = randomDose(draw, m);
    return s;
}

Section randomSection(Draw& draw, const Shelf& shelf) {
    Section s = section(draw.any<SectionKind>(), {});
    s.talk = draw.time(120);
    for (int g = draw.count(0, 4); g > 0; --g) {
        std::vector<Slot> slots;
        for (int n = draw.count(1, 4); n > 0; --n) slots.push_back(randomSlot(draw, shelf));
        const int lo = draw.count(1, 4);
        s.groups.push_back(
            group(rounds(lo, lo + draw.count(0, 3)), draw.times(180), std::move(slots)));
    }
    return s;
}
} // namespace

Gym randomGym(std::uint64_t seed) {
    Draw draw(seed);
    Gym gym;
    gym.settings.name = "A drawn gym";
    gym.settings.opening = draw.time(300);
    gym.settings.closing = draw.time(300);
    for (int n = 0; n < 12; ++n) gym.shelf.put(randomExercise(draw, n));
    Block b = block("2026-09", {});
    for (int s = draw.count(1, 5); s > 0; --s) b.sections.push_back(randomSection(draw, gym.shelf));
    for (StairStep& step : b.stair) step.rounds = draw.any<RoundsMode>();
    gym.put(std::move(b));
    return gym;
}

} // namespace bw::test
