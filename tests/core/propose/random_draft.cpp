// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/random_draft.hpp"

#include "blockwright/model/fitting.hpp"
#include "support/fixtures.hpp"

#include <array>
#include <random>

namespace bw::test {

namespace {
constexpr std::array<std::string_view, 5> kRoles{"warm-up", "power", "strength-heavy",
                                                 "strength-long", "finisher"};

class Draw {
public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    int count(int lo, int hi) {
        return lo + static_cast<int>(engine_() % static_cast<std::uint64_t>(hi - lo + 1));
    }
    bool once(int in) { return count(1, in) == 1; }
    template <class E> E any() { return static_cast<E>(count(0, kCount<E> - 1)); }

private:
    std::mt19937_64 engine_;
};

std::string nameOf(int n) { return "x" + std::to_string(n); }
KitId kitOf(int n) { return kit("kit-" + std::to_string(n)); }

Exercise anExercise(Draw& draw, int n) {
    const Pattern main = draw.any<Pattern>();
    Exercise e = exercise(nameOf(n), main, draw.count(10, 50) / 10.0, draw.count(0, 20));
    const Pattern other = draw.any<Pattern>();
    if (other != main && draw.once(2)) {
        const double share = draw.count(1, 4) / 10.0;
        e.patterns = Shares<Pattern>::of(
                         {{main, Share::of(1 - share).value()}, {other, Share::of(share).value()}})
                         .value();
    }
    e.planes = Shares<Plane>::of({{draw.any<Plane>(), Share::whole()}}).value();
    for (int i = 0; i < 2; ++i) {
        const auto word = shippedMuscles()[static_cast<std::size_t>(
            draw.count(0, static_cast<int>(shippedMuscles().size()) - 1))];
        e.muscles[MuscleId::parse(word).value()] = Share::of(draw.count(3, 10) / 10.0).value();
    }
    e.sides = draw.any<Sides>();
    for (const std::string_view role : kRoles)
        if (draw.once(2)) e.roles.push_back(RoleId::parse(role).value());
    for (int i = 0; i < 2; ++i) (void)e.demands.set(draw.any<Demand>(), draw.count(0, 3));
    e.skill = draw.count(1, 3);
    if (draw.once(2)) e.needs = {{{kitOf(draw.count(0, 3)), draw.count(1, 2), {}}}};
    if (draw.once(2)) e.cues = {"Stand tall"};
    if (draw.once(2)) e.cautions = {"Stop on pain"};
    if (draw.once(2)) e.easier = {ex(nameOf(draw.count(0, 9)))};
    if (draw.once(2)) e.noHarder = "It ends here.";
    e.retired = draw.once(12);
    return e;
}

Slot aSlot(Draw& draw, int exercises) {
    Slot s = slot(nameOf(draw.count(0, exercises - 1)), reps(draw.count(3, 6), draw.count(6, 14)));
    if (draw.once(3)) s.effort = Range<Rir>(Rir::fromTenths(draw.count(0, 4) * 10).value());
    if (draw.once(5)) s.tempo = Tempo::parse("3010").value();
    s.main = draw.once(3);
    return s;
}

Section aSection(Draw& draw, SectionKind kind, int exercises) {
    std::vector<Group> groups;
    const int count = draw.count(1, 2);
    for (int g = 0; g < count; ++g) {
        std::vector<Slot> slots;
        const int size = draw.once(3) ? draw.count(1, 3) : 2;
        for (int i = 0; i < size; ++i) slots.push_back(aSlot(draw, exercises));
        const int lo = draw.count(1, 3);
        groups.push_back(group(rounds(lo, lo + draw.count(0, 1)),
                               secondsRange(draw.count(2, 8) * 10, draw.count(8, 14) * 10),
                               std::move(slots)));
    }
    Section s = section(kind, std::move(groups));
    if (draw.once(2)) {
        const int least = draw.count(2, 12) * 60;
        s.budget = secondsRange(least, least + draw.count(1, 6) * 60);
    }
    if (draw.once(2)) s.start = StartSpread{};
    return s;
}

Block aBlock(Draw& draw, std::string_view month, int exercises) {
    std::vector<Section> sections;
    if (draw.once(2)) sections.push_back(aSection(draw, SectionKind::WarmUp, exercises));
    if (draw.once(2)) sections.push_back(aSection(draw, SectionKind::Power, exercises));
    sections.push_back(aSection(draw, SectionKind::Strength, exercises));
    sections.push_back(aSection(draw, SectionKind::Finisher, exercises));
    Block b = block(month, std::move(sections));
    if (!draw.once(3)) b.format = draw.any<Format>();
    b.visitsPerWeek = draw.count(1, 4);
    return b;
}

void setLimits(Draw& draw, Gym& gym) {
    auto& limits = gym.settings.limits;
    const auto one = [&](const char* key, double value) {
        if (draw.once(3)) limits[key] = {value, value, false};
    };
    const auto band = [&](const char* key, double lo, double hi) {
        if (draw.once(3)) limits[key] = {lo, hi, true};
    };
    one("overlap.demand", draw.count(1, 3));
    one("pattern-missing.slots", draw.count(1, 2));
    one("novelty.weight_look", draw.count(1, 30) / 2.0);
    one("overlap.weight_look", draw.count(0, 12));
    one("options.ways", draw.count(0, 2));
    one("carry-over.lifts", draw.count(1, 2));
    one("staleness.main_months", draw.count(1, 2));
    one("stair-jump.percent", draw.count(2, 6));
    one("balance.window_months", draw.count(1, 4));
    one("one-sided.weight_note", draw.count(1, 5));
    one("finisher-dose.table_share", draw.count(1, 4));
    one("power-dose.look_reps", draw.count(4, 12));
    band("novelty.new", draw.count(0, 2), draw.count(2, 5));
    band("push-pull.block", draw.count(0, 8) / 10.0, draw.count(10, 20) / 10.0);
    band("horizontal-vertical.block", draw.count(0, 5) / 10.0, draw.count(10, 30) / 10.0);
    band("knee-hip.window", draw.count(3, 9) / 10.0, draw.count(10, 15) / 10.0);
    band("planes.block", draw.count(0, 20) / 100.0, draw.count(50, 100) / 100.0);
    band("muscle-dose.sets", draw.count(1, 6), draw.count(8, 30));
    band("superset-work.seconds", draw.count(20, 60), draw.count(70, 120));
}

void fillGym(Draw& draw, Gym& gym, int exercises) {
    gym.settings.classMinutes = draw.count(20, 60);
    for (int n = 0; n < 4; ++n) {
        KitItem item{kitOf(n), "Kit", draw.count(0, 6), Claim::Group, {}, {}, {}, {}};
        gym.put(std::move(item));
    }
    for (int n = 0; n < exercises; ++n) gym.shelf.put(anExercise(draw, n));
    const int members = draw.count(0, 3);
    for (int n = 0; n < members; ++n) {
        Member m{MemberId::parse("m-" + std::to_string(n)).value(), "Member", {}, true, {}};
        m.flags = {{draw.any<Demand>(), draw.any<FlagLevel>(), {}, {}}};
        gym.put(std::move(m));
    }
    const int months = draw.count(0, 3);
    for (int n = 0; n < months; ++n)
        gym.put(aBlock(draw, month("2026-08").plus(-n).text(), exercises));
    setLimits(draw, gym);
}

void open(Draw& draw, Slot& slot) {
    slot.exercise.reset();
    if (draw.once(2)) slot.dose.reset();
    if (draw.once(3))
        slot.role = RoleId::parse(kRoles[static_cast<std::size_t>(draw.count(0, 4))]).value();
    while (draw.once(2) && slot.patterns.size() < 8) slot.patterns.push_back(draw.any<Pattern>());
    if (slot.patterns.size() < 3) slot.patterns.clear();
}
} // namespace

RandomDraft randomDraft(std::uint64_t seed, int exercises, int openSlots) {
    Draw draw(seed);
    RandomDraft out{{}, block("2026-09", {})};
    fillGym(draw, out.gym, exercises);
    out.block = aBlock(draw, "2026-09", exercises);
    std::vector<Slot*> slots;
    for (Section& section : out.block.sections)
        for (Group& group : section.groups)
            for (Slot& slot : group.slots) slots.push_back(&slot);
    for (int n = 0; n < openSlots && !slots.empty(); ++n) {
        const auto at = draw.count(0, static_cast<int>(slots.size()) - 1);
        open(draw, *slots[static_cast<std::size_t>(at)]);
        slots.erase(slots.begin() + at);
    }
    return out;
}

Block withExercises(const Gym& gym, Block block, const std::vector<Place>& places,
                    const std::vector<ExerciseId>& exercises) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        Slot& slot = *slotAt(block, places[i]);
        slot.exercise = exercises[i];
        if (!slot.dose)
            slot.dose = usualDose(*gym.shelf.find(exercises[i]), sectionAt(block, places[i])->kind);
    }
    return block;
}

} // namespace bw::test
