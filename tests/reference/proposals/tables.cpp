// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/proposals/tables.hpp"

#include "blockwright/balance/balance.hpp"
#include "blockwright/rules/check.hpp"
#include "core/propose/may_stand.hpp"
#include "core/propose/random_draft.hpp"
#include "core/rules/gym_limit.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace bw::test {

namespace {
using nlohmann::json;
using Whole = std::int64_t;
using Rows = std::vector<std::vector<Whole>>;

constexpr double kHalves = 2;      // of a point of penalty
constexpr double kGrains = 20'000; // of a set: half rounds, weights and shares in hundredths
constexpr std::array kLevels{"stop", "look", "note"};
constexpr std::array kWhole{"session-length", "section-length", "pattern-missing",     "push-pull",
                            "knee-hip",       "one-sided",      "horizontal-vertical", "planes",
                            "muscle-dose",    "novelty",        "carry-over"};
constexpr std::array kMuscles{"quadriceps", "hamstrings", "glutes", "chest", "upper-back", "lats"};

Whole whole(double x) {
    if (std::abs(x - std::round(x)) > 1e-3) throw std::logic_error("finer than the grain");
    return std::llround(x);
}

void weigh(Gym& gym, const std::string& rule, double weight) {
    for (const char* level : kLevels)
        gym.settings.limits[rule + ".weight_" + level] = {weight, weight, false};
}

const Rule& ruleOf(std::string_view id) {
    return *std::find_if(ruleBook().begin(), ruleBook().end(),
                         [&](const Rule& r) { return r.id == id; });
}

std::string underscored(std::string text) {
    std::replace(text.begin(), text.end(), '-', '_');
    return text;
}

// Newest first.
std::vector<const Block*> monthsBefore(const Gym& gym, const Block& draft) {
    std::vector<const Block*> out;
    for (const auto& [month, block] : gym.blocks)
        if (month < draft.month) out.insert(out.begin(), block.get());
    return out;
}

bool uses(const Block& block, const ExerciseId& id, bool asMain) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise == id && (slot.main || !asMain)) return true;
    return false;
}

class Data {
public:
    Data(const Gym& gym, const Block& draft, const Seating& seating)
        : gym_(gym), draft_(draft), seating_(seating), before_(monthsBefore(gym, draft)) {}

    json all() {
        addSeats();
        addNear();
        addBalance();
        addCounts();
        addTimes();
        addLimits();
        return data_;
    }

private:
    [[nodiscard]] Block with(std::size_t seat, const ExerciseId& id) const {
        return withExercises(gym_, draft_, {seating_.places[seat]}, {id});
    }
    // A row for each sum: the draft with its slots open, then what each choice adds.
    template <class Sums> void addRows(const std::string& name, const Sums& sums) {
        const std::vector<Whole> fixed = sums(draft_);
        Rows parts(fixed.size());
        for (std::size_t s = 0; s < seating_.fits.size(); ++s)
            for (const ExerciseId& id : seating_.fits[s]) {
                const std::vector<Whole> now = sums(with(s, id));
                for (std::size_t i = 0; i < fixed.size(); ++i)
                    parts[i].push_back(now[i] - fixed[i]);
            }
        data_[name + "_fixed"] = fixed;
        data_[name + "_part"] = parts;
    }
    void addSeats();
    void addNear();
    void addPair(std::size_t a, std::size_t b);
    void addBalance();
    void addCounts();
    void addTimes();
    void addLimits();
    [[nodiscard]] double near(const std::vector<ExerciseId>& exercises) const {
        return kHalves *
               check(nearGym_, withExercises(nearGym_, draft_, seating_.places, exercises)).penalty;
    }
    [[nodiscard]] std::vector<Whole> countsOf(const Block& block) const;

    const Gym& gym_;
    const Block& draft_;
    const Seating& seating_;
    std::vector<const Block*> before_;
    Gym nearGym_; // no rule of the whole session costs anything
    std::vector<ExerciseId> fillers_;
    std::vector<std::vector<double>> alone_;
    json data_;
};

void Data::addSeats() {
    std::vector<int> first, last, exercise;
    std::vector<ExerciseId> known;
    for (const auto& fits : seating_.fits) {
        first.push_back(static_cast<int>(exercise.size()) + 1);
        for (const ExerciseId& id : fits) {
            const auto it = std::find(known.begin(), known.end(), id);
            exercise.push_back(static_cast<int>(it - known.begin()));
            if (it == known.end()) known.push_back(id);
        }
        last.push_back(static_cast<int>(exercise.size()));
    }
    data_["seats"] = first.size();
    data_["choices"] = exercise.size();
    data_["first"] = first;
    data_["last"] = last;
    data_["exercise"] = exercise;
}

// Around an exercise of no role in each seat, a cost of one slot is what changes when that slot
// does, and a cost of two what then changes beyond both.
void Data::addNear() {
    nearGym_ = gym_;
    for (const char* rule : kWhole) weigh(nearGym_, rule, 0);
    for (std::size_t s = 0; s < seating_.fits.size(); ++s) {
        Exercise filler = *gym_.shelf.find(seating_.fits[s].front());
        filler.id = ExerciseId::parse("filler-" + std::to_string(s)).value();
        filler.roles.clear();
        nearGym_.shelf.put(filler);
        fillers_.push_back(filler.id);
    }
    const double standing = near(fillers_);
    std::vector<Whole> all;
    for (std::size_t s = 0; s < seating_.fits.size(); ++s) {
        auto now = fillers_;
        alone_.emplace_back();
        for (const ExerciseId& id : seating_.fits[s]) {
            now[s] = id;
            alone_.back().push_back(near(now) - standing);
            all.push_back(whole(alone_.back().back()));
        }
    }
    data_["standing"] = whole(standing);
    data_["alone"] = all;
    for (const char* name : {"one", "other", "start", "together"}) data_[name] = json::array();
    for (std::size_t a = 0; a < seating_.places.size(); ++a)
        for (std::size_t b = a + 1; b < seating_.places.size(); ++b) addPair(a, b);
    data_["pairs"] = data_["one"].size();
}

// Only slots of one section are ever looked at together.
void Data::addPair(std::size_t a, std::size_t b) {
    if (seating_.places[a].section != seating_.places[b].section) return;
    const double standing = data_["standing"].get<double>();
    data_["one"].push_back(a + 1);
    data_["other"].push_back(b + 1);
    data_["start"].push_back(data_["together"].size() + 1);
    auto now = fillers_;
    for (std::size_t i = 0; i < seating_.fits[a].size(); ++i)
        for (std::size_t j = 0; j < seating_.fits[b].size(); ++j) {
            now[a] = seating_.fits[a][i];
            now[b] = seating_.fits[b][j];
            const double both = now[a] == now[b]
                                    ? 0 // never: nothing stands twice
                                    : near(now) - standing - alone_[a][i] - alone_[b][j];
            data_["together"].push_back(whole(both));
        }
}

void Data::addBalance() {
    const double weeks = static_cast<double>(draft_.stair.size());
    const auto setsOf = [](const Balance& balance) {
        std::vector<Whole> out;
        const auto add = [&](double sets) { out.push_back(whole(kGrains * balance.weeks * sets)); };
        for (const double sets : balance.patterns) add(sets);
        for (const double sets : balance.planes) add(sets);
        add(balance.sets);
        add(balance.oneSided);
        return out;
    };
    addRows("balance", [&](const Block& b) { return setsOf(measureBalance(gym_, b)); });
    auto months = windowOf(gym_, draft_);
    months.erase(months.begin()); // the draft
    data_["before"] = setsOf(measureBalance(gym_, months));
    data_["months_before"] = !months.empty();
    addRows("hard", [&](const Block& b) {
        const Balance balance = measureBalance(gym_, b);
        std::vector<Whole> out;
        double all = 0;
        for (const auto& muscle : balance.muscles) all += muscle.second;
        for (const char* m : kMuscles)
            out.push_back(whole(kGrains * weeks * balance.hardSets(MuscleId::parse(m).value())));
        out.push_back(whole(kGrains * weeks * all));
        return out;
    });
    Whole common = 0; // keeps the numbers small for solvers of 32 bits
    for (const char* name : {"balance_fixed", "before"})
        for (const json& x : data_[name]) common = std::gcd(common, x.get<Whole>());
    for (const json& row : data_["balance_part"])
        for (const json& x : row) common = std::gcd(common, x.get<Whole>());
    common = std::max<Whole>(common, 1);
    for (const char* name : {"balance_fixed", "before"})
        for (json& x : data_[name]) x = x.get<Whole>() / common;
    for (json& row : data_["balance_part"])
        for (json& x : row) x = x.get<Whole>() / common;
}

std::vector<Whole> Data::countsOf(const Block& block) const {
    using enum Pattern;
    constexpr std::array<std::array<Pattern, 2>, 5> kFamilies{{{Squat, Lunge},
                                                               {Hinge, Hinge},
                                                               {HorizontalPush, VerticalPush},
                                                               {HorizontalPull, VerticalPull},
                                                               {TrunkStability, Rotation}}};
    const double least = limitIn(gym_.settings, "pattern-missing", "least_share").lo;
    std::vector<Whole> out(7);
    for (const auto& e : gym_.shelf.entries()) {
        if (!uses(block, e->id, false)) continue;
        const bool known = std::any_of(before_.begin(), before_.end(),
                                       [&](const Block* b) { return uses(*b, e->id, false); });
        out[5] += known ? 0 : 1;
        const bool carried = !before_.empty() && uses(*before_.front(), e->id, true);
        out[6] += carried && uses(block, e->id, true) ? 1 : 0;
    }
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                for (std::size_t f = 0; slot.exercise && f < kFamilies.size(); ++f) {
                    const auto& patterns = gym_.shelf.find(*slot.exercise)->patterns;
                    const auto& [one, two] = kFamilies[f];
                    const double share =
                        patterns[one].part() + (one == two ? 0 : patterns[two].part());
                    out[f] += share >= least - 1e-12 ? 1 : 0;
                }
    return out;
}

void Data::addCounts() {
    addRows("count", [&](const Block& b) { return countsOf(b); });
    data_["any_month_before"] = !before_.empty();
    const auto& shelf = gym_.shelf.entries();
    data_["any_main_before"] =
        !before_.empty() && std::any_of(shelf.begin(), shelf.end(), [&](const auto& e) {
            return uses(*before_.front(), e->id, true);
        });
}

void Data::addTimes() {
    std::vector<Week> kinds;
    for (int w = 1; w <= static_cast<int>(draft_.stair.size()); ++w) {
        const Week week = Week::of(w).value();
        if (std::none_of(kinds.begin(), kinds.end(),
                         [&](Week k) { return draft_.step(k).rounds == draft_.step(week).rounds; }))
            kinds.push_back(week);
    }
    json fixed = json::array(), parts = json::array();
    for (const Week week : kinds) {
        addRows("time", [&](const Block& b) {
            const SessionTime time = timeSession(gym_.settings, gym_.shelf, b, week);
            std::vector<Whole> out;
            for (const SectionTime& s : time.sections) out.push_back(s.total.planned.count());
            out.push_back(time.total.planned.count());
            return out;
        });
        fixed.push_back(data_["time_fixed"]);
        parts.push_back(data_["time_part"]);
    }
    data_["time_fixed"] = fixed;
    data_["time_part"] = parts;
    data_["kinds"] = kinds.size();
    data_["sections"] = draft_.sections.size();
    const auto slack =
        std::llround(1000 * limitIn(gym_.settings, "section-length", "slack_seconds").hi);
    for (const char* name : {"budget_least", "budget_most"}) data_[name] = json::array();
    for (const Section& s : draft_.sections) {
        constexpr Whole kNone = 100'000'000;
        data_["budget_least"].push_back(s.budget ? s.budget->lo().count() - slack : -kNone);
        data_["budget_most"].push_back(s.budget ? s.budget->hi().count() + slack : kNone);
    }
    const double most = 60'000.0 * gym_.settings.classMinutes;
    data_["class_most"] = whole(most);
    data_["class_look"] =
        std::llround(most * limitIn(gym_.settings, "session-length", "look_share").hi);
}

void Data::addLimits() {
    const auto band = [&](const char* rule, const char* name, double unit) {
        const LimitValue value = limitIn(gym_.settings, rule, name);
        return json{whole(unit * value.lo), whole(unit * value.hi)};
    };
    for (const char* rule : kWhole) {
        json& weights = data_[underscored(rule)] = json::array();
        for (const Level level : {Level::Stop, Level::Look, Level::Note})
            weights.push_back(whole(kHalves * weightIn(gym_.settings, ruleOf(rule), level)));
    }
    constexpr double kHundredths = 100;
    for (const char* rule : {"push-pull", "knee-hip", "horizontal-vertical", "one-sided", "planes"})
        for (const char* name : {"block", "window"})
            data_[underscored(rule) + "_" + name] = band(rule, name, kHundredths);
    const double weeks = static_cast<double>(draft_.stair.size());
    data_["muscle_dose_sets"] = band("muscle-dose", "sets", kGrains * weeks);
    data_["novelty_new"] = band("novelty", "new", 1);
    data_["pattern_missing_slots"] = band("pattern-missing", "slots", 1)[0];
    data_["carry_over_lifts"] = band("carry-over", "lifts", 1)[0];
}
} // namespace

Gym comparable(Gym gym) {
    for (const char* rule : {"finisher-dose", "stair-jump"}) weigh(gym, rule, 0);
    weigh(gym, "member-flag", 1);
    return gym;
}

Seating seatingOf(const Gym& gym, const Block& draft) {
    Seating out{openSlots(draft), {}};
    for (const Place p : out.places) out.fits.push_back(mayStand(gym, draft, p));
    return out;
}

std::string dataOf(const Gym& gym, const Block& draft, const Seating& seating) {
    return Data(gym, draft, seating).all().dump();
}

} // namespace bw::test
