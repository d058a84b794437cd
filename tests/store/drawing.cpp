// SPDX-License-Identifier: GPL-3.0-or-later
#include "gyms.hpp"

#include "support/fixtures.hpp"

#include <array>

namespace bw::test {

std::int64_t Draw::number(std::int64_t lo, std::int64_t hi) {
    return lo + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(hi - lo + 1));
}

std::string Draw::text(int most) {
    static const std::array<std::string, 12> kPieces{
        "squat ", "Ü",  "“low tide”", "'; DROP TABLE member; --", "\n",  "\t", "”",
        "\\",     "%1", "🛶",       std::string(1, '\0'),       "5–10"};
    std::string out;
    for (auto n = number(0, most); n > 0; --n)
        out += kPieces[static_cast<std::size_t>(number(0, kPieces.size() - 1))];
    return out;
}

std::string Draw::idText() {
    std::string out;
    for (auto n = number(1, 3); n > 0; --n) {
        if (!out.empty()) out += '-';
        for (auto m = number(1, 8); m > 0; --m) out += static_cast<char>('a' + number(0, 25));
    }
    return out;
}

namespace {
template <class I> I drawId(Draw& d) { return I::parse(d.idText()).value(); }
template <class I> std::vector<I> drawIds(Draw& d, int most) {
    std::vector<I> ids;
    for (auto n = d.number(0, most); n > 0; --n) ids.push_back(drawId<I>(d));
    return ids;
}
std::vector<std::string> drawLines(Draw& d) {
    std::vector<std::string> lines;
    for (auto n = d.number(0, 4); n > 0; --n) lines.push_back(d.text(6));
    return lines;
}
Extras drawExtras(Draw& d) {
    return {d.chance(20) ? R"({"later":)" + std::to_string(d.number(0, 99)) + "}" : ""};
}
Share drawShare(Draw& d) { return Share::fromBillionths(d.number(0, Share::kWhole)).value(); }
Mass drawMass(Draw& d) { return Mass::fromMicrograms(d.number(0, Mass::kMost)).value(); }
std::optional<Rate> drawRate(Draw& d, bool must) {
    if (!must && d.chance(60)) return std::nullopt;
    return Rate::fromBillionths(d.number(1, 1000 * Rate::kUnit)).value();
}
std::map<Mass, int> drawStock(Draw& d) {
    std::map<Mass, int> stock;
    for (auto n = d.number(0, 4); n > 0; --n)
        stock[drawMass(d)] = static_cast<int>(d.number(0, 30));
    return stock;
}
Range<Millis> drawMillis(Draw& d, int most) {
    return Range<Millis>::between(Millis{d.number(0, most)}, Millis{d.number(0, most)});
}
Rir drawRir(Draw& d) { return Rir::fromTenths(static_cast<int>(d.number(0, 100))).value(); }

// Up to all of the words, adding up to the whole.
template <class E> Shares<E> drawShares(Draw& d) {
    std::vector<std::pair<E, Share>> parts;
    std::int64_t left = Share::kWhole;
    for (std::size_t i = 0; i + 1 < kCount<E> && left > 0; ++i) {
        const auto n = d.chance(60) ? 0 : d.number(0, left);
        parts.emplace_back(static_cast<E>(i), Share::fromBillionths(n).value());
        left -= n;
    }
    parts.emplace_back(static_cast<E>(kCount<E> - 1), Share::fromBillionths(left).value());
    return Shares<E>::of(parts).value();
}

Pace drawPace(Draw& d) {
    const auto usual = d.word<Measure>();
    return Pace::of(usual,
                    {drawRate(d, usual == Measure::Reps), drawRate(d, usual == Measure::Metres),
                     drawRate(d, usual == Measure::Kcal)})
        .value();
}

KitNeeds drawNeeds(Draw& d) {
    KitNeeds needs(static_cast<std::size_t>(d.number(0, 3)));
    for (auto& together : needs)
        for (auto n = d.number(0, 2); n > 0; --n)
            together.push_back(
                {drawId<KitId>(d), static_cast<int>(d.number(1, 100)), drawExtras(d)});
    return needs;
}

Dose drawDose(Draw& d) {
    const auto measure = d.word<Measure>();
    const auto range = Range<std::int64_t>::between(d.number(1, Dose::most(measure)),
                                                    d.number(1, Dose::most(measure)));
    return Dose::of(measure, range.lo(), range.hi()).value();
}

Tempo drawTempo(Draw& d) {
    std::string text = "1";
    for (int i = 0; i < 3; ++i) text += "0123456789X"[d.number(0, 10)];
    return Tempo::parse(text).value();
}

Slot drawSlot(Draw& d) {
    Slot s;
    if (d.chance(80)) s.exercise = drawId<ExerciseId>(d);
    if (d.chance(30)) s.role = drawId<RoleId>(d);
    for (auto n = d.number(0, 2); n > 0; --n) s.patterns.push_back(d.word<Pattern>());
    if (d.chance(90)) s.dose = drawDose(d);
    if (d.chance(50)) s.tempo = drawTempo(d);
    if (d.chance(50)) s.effort = Range<Rir>::between(drawRir(d), drawRir(d));
    s.main = d.chance(30);
    s.locked = d.chance(30);
    s.note = d.text(5);
    s.extras = drawExtras(d);
    return s;
}

Group drawGroup(Draw& d) {
    Group g;
    g.rounds =
        Range<int>::between(static_cast<int>(d.number(1, 20)), static_cast<int>(d.number(1, 20)));
    g.rest = drawMillis(d, 1'800'000);
    for (auto n = d.number(0, 4); n > 0; --n) g.slots.push_back(drawSlot(d));
    g.extras = drawExtras(d);
    return g;
}

Start drawStart(Draw& d) {
    if (d.chance(33)) return StartTogether{};
    if (d.chance(50)) return StartSpread{};
    StartCounts counts;
    for (auto n = d.number(0, 5); n > 0; --n)
        counts.heads.push_back(static_cast<int>(d.number(0, 400)));
    return counts;
}

Section drawSection(Draw& d) {
    Section s;
    s.kind = d.word<SectionKind>();
    s.talk = Millis{d.number(0, 3'600'000)};
    if (d.chance(50)) s.budget = drawMillis(d, 7'200'000);
    s.start = drawStart(d);
    for (auto n = d.number(0, 4); n > 0; --n) s.groups.push_back(drawGroup(d));
    s.extras = drawExtras(d);
    return s;
}

LimitValue drawLimit(Draw& d) {
    return {static_cast<double>(d.number(0, 1'000'000)) / 3,
            static_cast<double>(d.number(0, 1'000'000)) / 7, d.chance(50)};
}

Acceptance drawAcceptance(Draw& d) {
    Acceptance a{.rule = d.idText(),
                 .place = "slot strength " + d.idText(),
                 .about = d.text(2),
                 .level = d.word<Level>(),
                 .measured = {},
                 .limit = drawLimit(d),
                 .reason = d.text(5),
                 .extras = drawExtras(d)};
    if (d.chance(80)) a.measured = static_cast<double>(d.number(-1000, 1'000'000)) / 1000;
    return a;
}
} // namespace

Exercise drawExercise(Draw& d, const std::string& id) {
    Exercise e = exercise(id, Pattern::Squat);
    e.name = d.text(4);
    e.patterns = drawShares<Pattern>(d);
    e.planes = d.chance(80) ? drawShares<Plane>(d) : Shares<Plane>{};
    for (auto n = d.number(0, 3); n > 0; --n) e.muscles.emplace(drawId<MuscleId>(d), drawShare(d));
    e.sides = d.word<Sides>();
    e.roles = drawIds<RoleId>(d, 3);
    for (std::size_t i = 0; i < kCount<Demand>; ++i)
        (void)e.demands.set(static_cast<Demand>(i), static_cast<int>(d.number(0, 3))).ok();
    e.skill = static_cast<int>(d.number(1, 3));
    e.pace = drawPace(d);
    e.setup = Millis{d.number(0, 600'000)};
    e.needs = drawNeeds(d);
    e.load = drawId<LoadId>(d);
    e.easier = drawIds<ExerciseId>(d, 3);
    e.harder = drawIds<ExerciseId>(d, 3);
    e.swaps = drawIds<ExerciseId>(d, 3);
    e.noEasier = d.text(2);
    e.noHarder = d.text(2);
    e.cues = drawLines(d);
    e.cautions = drawLines(d);
    e.retired = d.chance(10);
    e.extras = drawExtras(d);
    return e;
}

Block drawBlock(Draw& d, Month month) {
    Block b{.month = month,
            .title = d.text(4),
            .format = {},
            .visitsPerWeek = static_cast<int>(d.number(1, 14)),
            .sections = {},
            .stair = {},
            .extras = drawExtras(d)};
    if (d.chance(70)) b.format = d.word<Format>();
    for (auto n = d.number(0, 5); n > 0; --n) b.sections.push_back(drawSection(d));
    for (auto n = d.number(1, Week::kMost); n > 0; --n)
        b.stair.push_back({d.word<RoundsMode>(), drawRir(d), d.word<Intent>(), drawExtras(d)});
    for (auto n = d.number(0, 3); n > 0; --n) b.accepted.push_back(drawAcceptance(d));
    return b;
}

Member drawMember(Draw& d, const std::string& id) {
    Member m{memberId(id), d.text(3), {}, d.chance(80), drawExtras(d)};
    for (auto n = d.number(0, 3); n > 0; --n)
        m.flags.push_back({d.word<Demand>(), d.word<FlagLevel>(), d.text(4), drawExtras(d)});
    return m;
}

KitItem drawKit(Draw& d, const std::string& id) {
    KitItem item{kit(id),         d.text(3),    static_cast<int>(d.number(0, 1000)),
                 d.word<Claim>(), drawStock(d), {},
                 drawStock(d),    drawExtras(d)};
    if (d.chance(50)) item.bar = drawMass(d);
    return item;
}

GymSettings drawSettings(Draw& d) {
    GymSettings s;
    s.name = d.text(4);
    s.massUnit = d.word<MassUnit>();
    s.paper = d.word<Paper>();
    s.classMinutes = static_cast<int>(d.number(5, 300));
    s.places = static_cast<int>(d.number(1, 400));
    s.opening = Millis{d.number(0, 3'600'000)};
    s.closing = Millis{d.number(0, 3'600'000)};
    for (auto& weight : s.weights.of) weight = drawShare(d);
    for (auto n = d.number(0, 5); n > 0; --n) s.limits[d.idText() + ".look"] = drawLimit(d);
    s.extras = drawExtras(d);
    return s;
}

LiftResult drawResult(Draw& d, const MemberId& member) {
    LiftResult r{member,
                 date("2026-01-01").plusDays(static_cast<int>(d.number(0, 700))),
                 drawId<ExerciseId>(d),
                 static_cast<int>(d.number(1, 100)),
                 static_cast<int>(d.number(0, 1000)),
                 {},
                 {},
                 drawExtras(d)};
    if (d.chance(70)) r.rir = drawRir(d);
    if (d.chance(70)) r.load = drawMass(d);
    return r;
}

Gym drawGym(Draw& d, const Size& size) {
    Gym gym;
    gym.settings = drawSettings(d);
    const auto id = [&](int i) { return d.idText() + "-" + std::to_string(i); };
    for (int i = 0; i < size.kit; ++i) gym.put(drawKit(d, id(i)));
    for (int i = 0; i < size.exercises; ++i) gym.shelf.put(drawExercise(d, id(i)));
    for (int i = 0; i < size.months; ++i) gym.put(drawBlock(d, month("2021-01").plus(i)));
    for (int i = 0; i < size.members; ++i) gym.put(drawMember(d, id(i)));
    return gym;
}

} // namespace bw::test
