// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/low_tide.hpp"
#include "support/fixtures.hpp"

#include <initializer_list>
#include <random>

namespace bw::test {

namespace {
using Ids = std::initializer_list<const char*>;

std::vector<ExerciseId> ids(Ids words) {
    std::vector<ExerciseId> out;
    for (const char* word : words) out.push_back(ex(word));
    return out;
}

Exercise shelved(const char* id, const char* name, Sides sides, Ids easier, Ids harder) {
    Exercise e = exercise(id, Pattern::Squat, 3.0, 10);
    e.name = name;
    e.sides = sides;
    e.easier = ids(easier);
    e.harder = ids(harder);
    return e;
}

Slot dosed(const char* id, Dose dose, const char* tempo, int rirLo, int rirHi, bool main = false) {
    Slot s = slot(id, dose);
    if (*tempo) s.tempo = Tempo::parse(tempo).value();
    s.effort = Range<Rir>::of(Rir::of(rirLo).value(), Rir::of(rirHi).value()).value();
    s.main = main;
    return s;
}

void stockLegs(Shelf& shelf) {
    const auto both = Sides::Both, each = Sides::Each, alternating = Sides::Alternating;
    shelf.put(shelved("ankle-rock-wall", "Ankle rock at wall", each, {}, {"ankle-rock-loaded"}));
    shelf.put(shelved("ankle-rock-loaded", "Half-kneeling ankle rock, weighted", each, {}, {}));
    shelf.put(shelved("glute-bridge-hold", "Glute bridge hold", both, {}, {"glute-bridge-march"}));
    shelf.put(shelved("glute-bridge-march", "Glute bridge march", alternating,
                      {"glute-bridge-hold"}, {}));
    shelf.put(shelved("heels-raised-goblet-squat", "Heels-raised goblet squat", both, {}, {}));
    shelf.put(shelved("front-rack-squat", "Kettlebell front-rack squat", both,
                      {"heels-raised-goblet-squat"}, {"barbell-front-squat"}));
    shelf.put(
        shelved("barbell-front-squat", "Barbell front squat", both, {"front-rack-squat"}, {}));
    shelf.put(shelved("goblet-box-squat", "Goblet box squat", both, {}, {"goblet-squat"}));
    shelf.put(
        shelved("goblet-squat", "Goblet squat", both, {"goblet-box-squat"}, {"front-rack-squat"}));
    shelf.put(shelved("kettlebell-deadlift", "Kettlebell deadlift", both, {}, {}));
    shelf.put(shelved("dumbbell-romanian-deadlift", "Dumbbell Romanian deadlift", both,
                      {"kettlebell-deadlift"}, {"staggered-romanian-deadlift"}));
    shelf.put(shelved("staggered-romanian-deadlift", "Staggered Romanian deadlift", each, {}, {}));
}

void stockUpper(Shelf& shelf) {
    const auto both = Sides::Both, each = Sides::Each;
    shelf.put(shelved("all-fours-reach-through", "All-fours reach-through", each, {}, {}));
    shelf.put(shelved("wall-slide", "Wall slide", both, {}, {"band-pull-apart"}));
    shelf.put(shelved("band-pull-apart", "Band pull-apart", both, {"wall-slide"}, {"face-pull"}));
    shelf.put(shelved("face-pull", "Face pull", both, {"band-pull-apart"}, {}));
    shelf.put(
        shelved("medicine-ball-throw-for-height", "Medicine ball throw for height", both, {}, {}));
    shelf.put(shelved("anti-rotation-press-half-kneeling", "Half-kneeling anti-rotation press",
                      each, {}, {"anti-rotation-press-standing"}));
    shelf.put(
        shelved("anti-rotation-press-standing", "Standing anti-rotation press", each, {}, {}));
    shelf.put(shelved("cable-chest-press", "Cable chest press", both, {}, {}));
    shelf.put(shelved("dumbbell-floor-press", "Dumbbell floor press", both, {"cable-chest-press"},
                      {"dumbbell-bench-press"}));
    shelf.put(shelved("dumbbell-bench-press", "Dumbbell bench press", both, {}, {}));
    shelf.put(shelved("single-arm-cable-row", "Single-arm cable row", each, {}, {}));
    shelf.put(shelved("single-arm-dumbbell-row", "Single-arm dumbbell row", each,
                      {"single-arm-cable-row"}, {"bent-over-dumbbell-row"}));
    shelf.put(shelved("bent-over-dumbbell-row", "Bent-over dumbbell row", both, {}, {}));
}

void stockFinishers(Shelf& shelf) {
    Exercise sled =
        shelved("light-sled-push", "Light sled push", Sides::Both, {}, {"heavy-sled-push"});
    sled.pace = Pace::of(Measure::Metres, {{}, Rate::of(1.2).value(), {}}).value();
    shelf.put(sled);
    shelf.put(shelved("heavy-sled-push", "Heavy sled push", Sides::Both, {"light-sled-push"}, {}));
    Exercise bike = shelved("air-bike", "Air bike", Sides::Both, {}, {});
    bike.pace = Pace::of(Measure::Kcal, {{}, {}, Rate::of(12).value()}).value();
    shelf.put(bike);
}

Section timed(SectionKind kind, int talkSeconds, std::vector<Group> groups) {
    Section s = section(kind, std::move(groups));
    s.talk = Millis{talkSeconds * 1000};
    return s;
}
} // namespace

Gym saltmarsh() {
    Gym gym;
    gym.settings.name = "Saltmarsh Boathouse";
    stockLegs(gym.shelf);
    stockUpper(gym.shelf);
    stockFinishers(gym.shelf);
    gym.put(lowTide());
    return gym;
}

Block lowTide() {
    const auto none = secondsRange(0, 0);
    const Dose sled = Dose::of(Measure::Metres, 15'000, 15'000).value();
    const Dose bike = Dose::of(Measure::Kcal, 8'000, 10'000).value();
    Block b = block(
        "2026-09",
        {timed(SectionKind::WarmUp, 60,
               {group(rounds(2, 2), none,
                      {slot("ankle-rock-wall", reps(8, 8)),
                       slot("all-fours-reach-through", reps(6, 6))}),
                group(rounds(2, 2), none,
                      {slot("glute-bridge-march", reps(10, 10)),
                       slot("band-pull-apart", reps(12, 15))})}),
         timed(SectionKind::Power, 60,
               {group(rounds(3, 4), secondsRange(60, 60),
                      {slot("medicine-ball-throw-for-height", reps(4, 5)),
                       slot("anti-rotation-press-half-kneeling", reps(6, 8))})}),
         timed(SectionKind::Strength, 120,
               {group(rounds(2, 3), secondsRange(60, 120),
                      {dosed("front-rack-squat", reps(5, 5), "31X0", 1, 3, true),
                       dosed("goblet-squat", reps(10, 12), "20X0", 1, 3)}),
                group(rounds(2, 3), secondsRange(60, 90),
                      {dosed("dumbbell-floor-press", reps(5, 6), "21X0", 1, 3, true),
                       dosed("single-arm-dumbbell-row", reps(8, 10), "20X1", 2, 3)}),
                group(rounds(2, 3), secondsRange(60, 90),
                      {dosed("dumbbell-romanian-deadlift", reps(8, 10), "31X0", 2, 3), Slot{}})}),
         timed(SectionKind::Finisher, 30,
               {group(rounds(3, 5), secondsRange(30, 45),
                      {slot("light-sled-push", sled), slot("air-bike", bike)})})});
    b.title = "Low tide";
    b.format = Format::HeavyThenLong;
    return b;
}

namespace {
class Dice {
public:
    explicit Dice(std::uint32_t seed) : engine_(seed) {}
    // The standard fixes the engine's numbers, not those of its distributions.
    int upTo(int most) {
        return static_cast<int>(engine_() % static_cast<std::uint32_t>(most + 1));
    }
    int from(int lo, int hi) { return lo + upTo(hi - lo); }

private:
    std::mt19937 engine_;
};

std::string randomName(Dice& dice, int longest) {
    static const std::string letters = "aeimorstuwWMlgjpqyQ";
    std::string name;
    const int length = dice.from(1, longest);
    const int wordMost = dice.upTo(4) == 0 ? 60 : 11;
    for (int word = 0; static_cast<int>(name.size()) < length; ++word) {
        if (word > 0) name += dice.upTo(5) == 0 ? '-' : ' ';
        for (int n = dice.from(1, wordMost); n > 0; --n)
            name +=
                letters[static_cast<std::size_t>(dice.upTo(static_cast<int>(letters.size()) - 1))];
    }
    name.resize(static_cast<std::size_t>(length));
    return name.front() == ' ' || name.front() == '-' ? "x" + name.substr(1) : name;
}

Dose randomDose(Dice& dice) {
    const auto measure = static_cast<Measure>(dice.upTo(3));
    const std::int64_t unit = Dose::smallestPerUnit(measure);
    const std::int64_t lo = dice.from(1, 1000) * unit;
    return Dose::of(measure, lo, std::min(Dose::most(measure), lo + dice.upTo(30) * unit)).value();
}

Slot randomSlot(Dice& dice, Gym& gym, int longest) {
    if (dice.upTo(9) == 0) return Slot{};
    const std::string id = "exercise-" + std::to_string(gym.shelf.size());
    Exercise e = exercise(id, Pattern::Hinge);
    e.name = randomName(dice, longest);
    e.sides = static_cast<Sides>(dice.upTo(2));
    if (gym.shelf.size() > 0) {
        e.easier = {gym.shelf.entries().back()->id};
        e.harder = {gym.shelf.entries().front()->id};
    }
    gym.shelf.put(e);
    Slot s = slot(id, randomDose(dice));
    if (dice.upTo(1)) s.tempo = Tempo::parse("31X0").value();
    if (dice.upTo(1))
        s.effort = Range<Rir>::between(Rir::fromTenths(dice.upTo(100)).value(),
                                       Rir::fromTenths(dice.upTo(100)).value());
    s.main = dice.upTo(3) == 0;
    return s;
}
} // namespace

RandomMonth randomMonth(std::uint32_t seed, int longest) {
    Dice dice(seed);
    RandomMonth m{Gym{}, block("2027-02", {})};
    m.gym.settings.name = randomName(dice, longest);
    m.block.title = randomName(dice, longest);
    m.block.format = static_cast<Format>(dice.upTo(4));
    m.block.stair.resize(static_cast<std::size_t>(dice.from(1, 6)), m.block.stair.back());
    for (int s = dice.from(1, 5); s > 0; --s) {
        Section made = section(static_cast<SectionKind>(dice.upTo(3)), {});
        for (int g = dice.upTo(4); g > 0; --g) {
            const int low = dice.from(1, 10), rest = dice.upTo(900);
            Group group = test::group(rounds(low, low + dice.upTo(10)),
                                      secondsRange(rest, rest + dice.upTo(200)), {});
            for (int n = dice.from(1, dice.upTo(20) == 0 ? 40 : 4); n > 0; --n)
                group.slots.push_back(randomSlot(dice, m.gym, longest));
            made.groups.push_back(group);
        }
        m.block.sections.push_back(made);
    }
    return m;
}

} // namespace bw::test
