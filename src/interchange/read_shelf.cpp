// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_parts.hpp"

#include <array>

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
constexpr TextSize kLine{1, 200, false};
constexpr int kLongestSetup = 600;

template <class E> std::optional<Shares<E>> readShares(Reading& r, Node n) {
    std::vector<std::pair<E, Share>> parts;
    bool whole = n != kNone && r.tree.is(n, Kind::Object);
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto e = readWordKey<E>(r, child);
        const auto share = readShare(r, child);
        whole = whole && e && share;
        if (whole) parts.emplace_back(*e, *share);
    });
    if (!whole) return std::nullopt;
    const auto shares = Shares<E>::of(parts);
    if (shares) return shares.value();
    r.error(n, shares.why());
    return std::nullopt;
}

// Planes may be left out, and then nothing is known of them.
Shares<Plane> readPlanes(Reading& r, Node n) {
    if (n != kNone && r.tree.is(n, Kind::Object) && r.tree.count(n) == 0) return {};
    return orElse(readShares<Plane>(r, n), Shares<Plane>{});
}

std::map<MuscleId, Share> readMuscles(Reading& r, Node n) {
    std::map<MuscleId, Share> out;
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto muscle = MuscleId::parse(r.tree.key(child));
        const auto share = readShare(r, child);
        if (!muscle) return r.error(child, muscle.why());
        noteNewWord(r, child, muscle->text(), shippedMuscles());
        if (share) out.emplace(*muscle, *share);
    });
    return out;
}

Demands readDemands(Reading& r, Node n) {
    Demands demands;
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto demand = readWordKey<Demand>(r, child);
        const auto level = readWhole(r, child, 0, 3);
        if (!demand || !level) return;
        const auto set = demands.set(*demand, *level);
        if (!set) r.error(child, set.why());
    });
    return demands;
}

std::optional<Pace> readPace(Reading& r, Fields& f) {
    const Node measureAt = f.take("measure");
    const auto measure = readWord<Measure>(r, measureAt);
    const std::array at{f.take("seconds_per_rep"), f.take("metres_per_second"),
                        f.take("kcal_per_minute")};
    const Pace::Rates rates{readRate(r, at[0]), readRate(r, at[1]), readRate(r, at[2])};
    for (std::size_t i = 0; i < at.size(); ++i) // a rate that is wrong is not a missing one, too
        if (at[i] != kNone && !(i == 0   ? rates.secondsPerRep
                                : i == 1 ? rates.metresPerSecond
                                         : rates.kcalPerMinute))
            return std::nullopt;
    if (!f.there() || (measureAt != kNone && !measure)) return std::nullopt;
    const auto pace = Pace::of(orElse(measure, Measure::Reps), rates);
    if (pace) return pace.value();
    r.error(f.node(), pace.why());
    return std::nullopt;
}

std::optional<KitNeed> readNeed(Reading& r, Node n) {
    Fields f(r, n);
    const Node kitAt = f.need("kit");
    auto kit = readParsed<KitId>(r, kitAt);
    if (kit) r.refs.toKit(kitAt);
    const auto count = readWhole(r, f.take("count"), 1, 100);
    auto extras = f.rest();
    if (!kit) return std::nullopt;
    return KitNeed{std::move(*kit), orElse(count, 1), std::move(extras)};
}

std::optional<std::vector<KitNeed>> readAlternative(Reading& r, Node n) {
    return readList<KitNeed>(r, n, readNeed);
}

std::optional<LoadId> readLoad(Reading& r, Node n) {
    if (n == kNone) return LoadId::parse("bodyweight").value();
    auto load = readParsed<LoadId>(r, n);
    if (load) noteNewWord(r, n, load->text(), shippedLoads());
    return load;
}

std::vector<std::string> readLines(Reading& r, Node n) {
    return readList<std::string>(r, n,
                                 [](Reading& x, Node line) { return readText(x, line, kLine); });
}

std::string readReason(Reading& r, Node n) { return orElse(readText(r, n, kTitle), std::string{}); }

// The keys that need no more than to be read.
void readTheRest(Reading& r, Fields& f, Exercise& e) {
    e.planes = readPlanes(r, f.take("planes"));
    e.muscles = readMuscles(r, f.take("muscles"));
    e.sides = orElse(readWord<Sides>(r, f.take("sides")), Sides::Both);
    e.roles = readList<RoleId>(r, f.take("roles"), readRole);
    e.demands = readDemands(r, f.take("demands"));
    e.skill = orElse(readWhole(r, f.take("skill"), 1, 3), 1);
    e.setup = orElse(readSeconds(r, f.take("setup_seconds"), 0, kLongestSetup), Millis{0});
    e.needs = readList<std::vector<KitNeed>>(r, f.take("needs"), readAlternative);
    e.easier = readNeighbours(r, f.take("easier"));
    e.harder = readNeighbours(r, f.take("harder"));
    e.swaps = readNeighbours(r, f.take("swaps"));
    e.noEasier = readReason(r, f.take("no_easier"));
    e.noHarder = readReason(r, f.take("no_harder"));
    e.cues = readLines(r, f.take("cues"));
    e.cautions = readLines(r, f.take("cautions"));
    e.retired = orElse(readBool(r, f.take("retired")), false);
}

const ExerciseId& anyId() {
    static const ExerciseId id = ExerciseId::parse("none").value();
    return id;
}
const Pace& anyPace() {
    static const Pace pace = Pace::of(Measure::Seconds, {}).value();
    return pace;
}
} // namespace

std::optional<RoleId> readRole(Reading& r, Node n) {
    auto role = readParsed<RoleId>(r, n);
    if (role) noteNewWord(r, n, role->text(), shippedRoles());
    return role;
}

std::vector<ExerciseId> readNeighbours(Reading& r, Node n) {
    return readList<ExerciseId>(r, n, [](Reading& x, Node at) {
        auto id = readParsed<ExerciseId>(x, at);
        if (id) x.refs.toExercise(at);
        return id;
    });
}

std::optional<Exercise> readExercise(Reading& r, Node n) {
    Fields f(r, n);
    const Node idAt = f.need("id");
    r.refs.haveExercise(idAt);
    auto id = readParsed<ExerciseId>(r, idAt);
    auto name = readText(r, f.need("name"), kName);
    auto patterns = readShares<Pattern>(r, f.need("patterns"));
    const auto pace = readPace(r, f);
    auto load = readLoad(r, f.take("load"));
    if (id && pace) r.refs.havePace(idAt, *pace);
    Exercise e = blankExercise(orElse(id, anyId()), {}, orElse(pace, anyPace()));
    if (load) e.load = *load;
    readTheRest(r, f, e);
    e.extras = f.rest();
    if (!id || !name || !patterns || !pace || !load) return std::nullopt;
    e.name = std::move(*name);
    e.patterns = *patterns;
    return e;
}

} // namespace bw
