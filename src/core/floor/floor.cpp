// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/floor.hpp"

#include "core/floor/best_start.hpp"
#include "core/floor/class_pass.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/load_plan.hpp"

#include <numeric>

namespace bw {

namespace {
constexpr std::int64_t kMostSteps = 5'000'000; // sets and rests of a class

// False for what is not a number, too.
bool within(double x, double lo, double hi) { return x >= lo && x <= hi; }

std::optional<Message> wrongOption(const FloorOptions& o) {
    if (o.members < 0 || o.members > FloorOptions::kMostMembers)
        return Message{"A class has 1 to %1 members.",
                       {std::to_string(FloorOptions::kMostMembers)}};
    if (o.runs < 1 || o.runs > FloorOptions::kMostRuns)
        return Message{"Play 1 to %1 runs.", {std::to_string(FloorOptions::kMostRuns)}};
    if (o.threads < 1 || o.threads > FloorOptions::kMostThreads)
        return Message{"Use 1 to %1 threads.", {std::to_string(FloorOptions::kMostThreads)}};
    if (!within(o.paceSigma, 0, 1) || !within(o.setSigma, 0, 1))
        return Message{"How varied a class is goes from 0 to 1.", {}};
    return std::nullopt;
}

std::optional<Message> wrongStart(const Block& block, const FloorStart& start) {
    const auto* counts = std::get_if<StartCounts>(&start);
    if (!counts) return std::nullopt;
    int sum = 0;
    for (const int heads : counts->heads) {
        if (heads < 0 || heads > FloorOptions::kMostMembers)
            return Message{"At each group 0 to %1 members start.",
                           {std::to_string(FloorOptions::kMostMembers)}};
        sum += heads;
    }
    if (sum == 0) return Message{"Somebody must start somewhere: no count is above 0.", {}};
    for (const Section& s : block.sections)
        if (s.groups.size() == counts->heads.size()) return std::nullopt;
    return Message{"No section has %1 groups, so %1 head counts fit nowhere.",
                   {std::to_string(counts->heads.size())}};
}

std::optional<Message> neverServed(const Gym& gym, const Block& block) {
    const auto shortages = floorShortages(gym, block);
    if (shortages.empty()) return std::nullopt;
    const FloorShortage& first = shortages.front();
    const KitItem* item = gym.findKit(first.kit);
    return Message{"%1 can never be served: it takes %2 of “%3” and the gym has %4. Choose another "
                   "exercise, or change what this one needs.",
                   {placeText(block, first.place), std::to_string(first.needed),
                    item ? item->name : first.kit.text(), std::to_string(first.units)}};
}

class FloorJob {
public:
    FloorJob(const Gym& gym, const Block& block, const FloorOptions& options, Crew& crew)
        : gym_(gym), block_(block), options_(options), crew_(crew),
          members_(options.members > 0 ? options.members : gym.settings.places),
          plan_(planClass(gym, block, options, members_)) {
        if (options_.steady) options_.runs = 1;
    }

    bool tooLarge() const { return std::int64_t{plan_.steps} * members_ > kMostSteps; }

    // What was done until it was stopped, if it was.
    FloorAnswer answer() {
        FloorAnswer out;
        out.members = members_;
        out.runs = options_.runs;
        if (std::holds_alternative<StartBest>(options_.start)) {
            out.best = BestStart(plan_, options_, members_, crew_).find();
            if (!out.best) return out;
        }
        starts_ = startsFor(out.best, members_);
        crew_.tellAs(FloorStage::Classes, options_.runs);
        PlayedClasses played = playClasses(plan_, options_, starts_, members_, crew_);
        if (crew_.stopped()) return out;
        tellTimes(played, out);
        played.tally.tell(out);
        if (options_.timeline) tellTimeline(out);
        if (options_.buys) tellBuys(played, out);
        return out;
    }

private:
    FloorStarts startsFor(const std::optional<FloorHeads>& best, int members) const {
        return best ? startsOf(plan_, *best, members) : startsOf(plan_, options_.start, members);
    }

    void tellTimes(const PlayedClasses& played, FloorAnswer& out) const {
        out.finish = timesOf(played.finishes);
        out.overrunChance = chance(played.finishes, [&](Ticks t) { return t > plan_.classTime; });
        for (const Ticks t : played.finishes) out.finishes.emplace_back(t);
        for (const Ticks t : played.waits) out.waits.emplace_back(t);
        const auto median = std::ranges::find(out.finishes, out.finish.p50);
        out.medianRun = static_cast<int>(median - out.finishes.begin());
        for (std::size_t s = 0; s < plan_.sections.size(); ++s)
            out.sections.push_back({.kind = plan_.sections[s].kind,
                                    .end = timesOf(played.sectionEnds[s]),
                                    .overBudget = overBudget(played, s),
                                    .groups = {}});
    }

    template <class Late> static double chance(const std::vector<Ticks>& times, Late late) {
        return static_cast<double>(std::ranges::count_if(times, late)) /
               static_cast<double>(times.size());
    }
    double overBudget(const PlayedClasses& played, std::size_t s) const {
        if (!plan_.sections[s].budget) return 0;
        std::vector<Ticks> lengths = played.sectionEnds[s];
        for (std::size_t r = 0; r < lengths.size(); ++r)
            lengths[r] -= s == 0 ? plan_.opening : played.sectionEnds[s - 1][r];
        return chance(lengths, [&](Ticks t) { return t > *plan_.sections[s].budget; });
    }

    void tellTimeline(FloorAnswer& out) const {
        FloorSteps steps(plan_, members_);
        Draws(plan_, options_).fill(out.medianRun, members_, steps);
        ClassTimeline timeline = ClassRun(plan_, starts_, members_).timeline(steps);
        out.timeline = std::move(timeline.rows);
        out.holds = std::move(timeline.holds);
    }

    void tellBuys(const PlayedClasses& played, FloorAnswer& out) {
        std::vector<FloorVariant> variants;
        for (std::size_t k = 0; k < plan_.kit.size(); ++k) {
            if (!played.tally.waitedFor(static_cast<int>(k))) continue;
            for (OneMoreUnit& more : oneMoreOf(static_cast<int>(k))) {
                variants.push_back({planWith(more), starts_, members_});
                out.buys.push_back({std::move(more), {}});
            }
        }
        if (!out.best && worthSpreading()) {
            const auto heads = BestStart(plan_, options_, members_, crew_).find();
            if (!heads) return;
            out.buys.push_back({BestHeads{*heads}, {}});
            variants.push_back({plan_, startsOf(plan_, *heads, members_), members_});
        }
        if (members_ > 1) {
            out.buys.push_back({OneMemberFewer{}, {}});
            variants.push_back({plan_, startsFor(out.best, members_ - 1), members_ - 1});
        }
        crew_.tellAs(FloorStage::Buys, options_.runs);
        const auto sums = playVariants(plan_, options_, variants, members_, crew_);
        const Ticks now = std::accumulate(played.finishes.begin(), played.finishes.end(), Ticks{0});
        for (std::size_t v = 0; v < variants.size(); ++v)
            out.buys[v].saves = MeanTime{static_cast<double>(now - sums[v]) / options_.runs};
        std::erase_if(out.buys, hardlyHelps);
        std::ranges::stable_sort(out.buys, std::greater{}, &FloorBuy::saves);
    }
    // By the load where members want one.
    std::vector<OneMoreUnit> oneMoreOf(int kit) const {
        std::vector<OneMoreUnit> out;
        for (const auto& [load, units] : wantedLoads(plan_, kit))
            out.push_back({plan_.kit[kit].id, load, units});
        if (out.empty()) out.push_back({plan_.kit[kit].id});
        return out;
    }
    FloorPlan planWith(const OneMoreUnit& more) const {
        Gym richer = gym_;
        KitItem item = *gym_.findKit(more.kit);
        item.units += more.units;
        if (more.load) item.loads[*more.load] += more.units;
        richer.put(std::move(item));
        return planClass(richer, block_, options_, members_);
    }
    // A gym has many loads; those that would change nothing are not worth a line.
    static bool hardlyHelps(const FloorBuy& buy) {
        const auto* more = std::get_if<OneMoreUnit>(&buy.change);
        return more && more->load && buy.saves < MeanTime{1000};
    }
    bool worthSpreading() const {
        return members_ > 1 && std::ranges::any_of(plan_.sections, [](const PlanSection& s) {
                   return s.groups.size() > 1;
               });
    }

    const Gym& gym_;
    const Block& block_;
    FloorOptions options_;
    Crew& crew_;
    int members_;
    FloorPlan plan_;
    FloorStarts starts_;
};
} // namespace

Result<FloorAnswer> simulateFloor(const Gym& gym, const Block& block, const FloorOptions& options,
                                  std::stop_token stop, const FloorProgress& progress) {
    if (auto wrong = wrongOption(options)) return std::move(*wrong);
    if (auto wrong = wrongStart(block, options.start)) return std::move(*wrong);
    if (auto never = neverServed(gym, block)) return std::move(*never);
    Crew crew(options.threads, std::move(stop), progress);
    FloorJob job(gym, block, options, crew);
    if (job.tooLarge())
        return Message{"So many members and rounds are too much to simulate. Take fewer.", {}};
    FloorAnswer answer = job.answer();
    if (crew.stopped()) return Message{"Stopped as asked; there is no answer.", {}};
    return answer;
}

} // namespace bw
