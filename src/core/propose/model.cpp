// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/model.hpp"

#include "blockwright/rules/check.hpp"
#include "core/rules/gym_limit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>

namespace bw::proposing {

namespace {
constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSlip = 1e-9; // of sums of doubles

double valueOf(const Form& form, const Sums& sums) {
    double value = 0;
    for (const auto& [index, factor] : form.terms)
        value += factor * static_cast<double>(sums[static_cast<std::size_t>(index)]);
    return value;
}

Block anyFilled(const Task& task) {
    Block block = *task.block;
    for (const Target& t : task.targets) {
        Slot* slot = slotAt(block, t.place);
        const SlotFact& open = *std::find_if(task.facts->slots.begin(), task.facts->slots.end(),
                                             [&](const SlotFact& s) { return s.place == t.place; });
        *slot = Filling(open, *t.fits.front()).slot;
    }
    return block;
}
} // namespace

// A seat while it is made; a choice has one member yet.
struct Model::Raw {
    const SlotFact* slot = nullptr;
    std::vector<Choice> choices;
    std::vector<std::vector<double>> rows; // by choice: what tells it from others besides the sums
};

Model::Model(std::shared_ptr<const Task> task)
    : task_(std::move(task)), adder_(*task_), near_(*task_), whole_(*task_, adder_) {
    std::vector<Raw> raw;
    const auto& slots = task_->facts->slots;
    for (const Target& t : task_->targets) {
        seats_.push_back({t.place, {}});
        raw.push_back({&*std::find_if(slots.begin(), slots.end(),
                                      [&](const SlotFact& s) { return s.place == t.place; }),
                       {},
                       {}});
        for (const Exercise* e : t.fits) {
            auto filling = std::make_shared<const Filling>(*raw.back().slot, *e);
            const bool own = raw.back().slot->section->kind == SectionKind::Strength &&
                             filling->slot.dose->measure() == Measure::Reps;
            const double reps = own ? filling->slot.dose->middle() : kNever;
            raw.back().choices.push_back({{e},
                                          filling,
                                          near_.alone(filling->fact),
                                          reps < whole_.fewestReps() ? reps : kNever,
                                          adder_.of(*filling),
                                          {}});
        }
        raw.back().rows.resize(raw.back().choices.size());
    }
    settleFixed();
    findLateGroups();
    findTables(raw);
    keepLiveForms(raw);
    joinAlike(raw);
    findGrain();
}

void Model::settleFixed() {
    const Standing standing = standingOf(*task_, anyFilled(*task_));
    fixed_ = standing.cost + standing.least;
    unsure_ = standing.unsure || whole_.unsure();
}

int Model::seatOf(const SlotFact& slot) const {
    for (int i = 0; i < size(); ++i)
        if (seats_[static_cast<std::size_t>(i)].place == slot.place) return i;
    return -1;
}

void Model::findLateGroups() {
    const SlotFact* before = nullptr;
    for (const SlotFact& slot : task_->facts->slots) {
        if (slot.section->kind != SectionKind::Finisher) continue;
        if (!before || before->group != slot.group) late_.emplace_back();
        before = &slot;
        const int seat = seatOf(slot);
        if (seat < 0 && !slot.exercise) continue;
        late_.back().slots.push_back(seat < 0 ? &slot : nullptr);
        if (seat >= 0) late_.back().seats.push_back(seat);
    }
    std::erase_if(late_, [](const LateGroup& g) { return g.seats.empty(); });
}

void Model::findTables(std::vector<Raw>& raw) {
    const auto& slots = task_->facts->slots;
    for (const Link& link : linksOf(*task_->facts)) {
        const SlotFact& from = slots[static_cast<std::size_t>(link.from)];
        const SlotFact& to = slots[static_cast<std::size_t>(link.to)];
        const int a = seatOf(from), b = seatOf(to);
        if (a < 0 && b < 0) continue;
        if (a < 0 || b < 0) {
            if (!(a < 0 ? from : to).exercise) continue;
            for (Choice& c : raw[static_cast<std::size_t>(std::max(a, b))].choices)
                c.alone += a < 0 ? near_.together(link, from, c.filling->fact)
                                 : near_.together(link, c.filling->fact, to);
            continue;
        }
        Raw& first = raw[static_cast<std::size_t>(std::min(a, b))];
        Raw& second = raw[static_cast<std::size_t>(std::max(a, b))];
        PairTable table{std::min(a, b), std::max(a, b), second.choices.size(), {}};
        for (std::size_t i = 0; i < first.choices.size(); ++i)
            for (std::size_t j = 0; j < second.choices.size(); ++j) {
                const SlotFact& x = first.choices[i].filling->fact;
                const SlotFact& y = second.choices[j].filling->fact;
                const double cost = a < b ? near_.together(link, x, y) : near_.together(link, y, x);
                table.cost.push_back(cost);
                first.rows[i].push_back(cost);
                second.rows[j].push_back(cost);
            }
        const auto idle = [&](double cost) { return cost == table.cost.front(); };
        if (!std::all_of(table.cost.begin(), table.cost.end(), idle))
            pairs_.push_back(std::move(table));
        else
            fixed_ += table.cost.front();
    }
}

double Model::leastStair(const std::vector<Raw>& raw) const {
    double least = kNever;
    bool always = false; // some seat brings reps of its own, whatever is chosen
    for (const Raw& r : raw) {
        bool all = true;
        for (const Choice& c : r.choices) {
            if (c.reps < kNever) least = std::min(least, whole_.stairCost(c.reps));
            all = all && c.reps < kNever;
        }
        always = always || all;
    }
    return always ? least : std::min(least, whole_.stairCost(whole_.fewestReps()));
}

// A case of a matter that no choice can bring about is dropped, and so are its forms.
void Model::keepLiveForms(std::vector<Raw>& raw) {
    const auto& all = whole_.forms();
    std::vector<double> least(all.size());
    for (std::size_t f = 0; f < all.size(); ++f) {
        least[f] = all[f].constant + valueOf(all[f], adder_.fixed());
        for (const Raw& r : raw) {
            double low = kNever;
            for (const Choice& c : r.choices) low = std::min(low, valueOf(all[f], c.sums));
            least[f] += low;
        }
    }
    std::map<int, int> kept;
    for (const Matter& m : whole_.matters()) {
        matters_.push_back({{}, m.least});
        for (const Matter::Case& c : m.cases) {
            const bool dead = std::any_of(c.broken.begin(), c.broken.end(), [&](int f) {
                return least[static_cast<std::size_t>(f)] > kSlip;
            });
            if (dead) continue;
            matters_.back().cases.push_back(c);
            for (int& f : matters_.back().cases.back().broken) {
                const auto [it, fresh] = kept.try_emplace(f, static_cast<int>(forms_.size()));
                if (fresh) forms_.push_back(all[static_cast<std::size_t>(f)]);
                f = it->second;
            }
        }
        if (matters_.back().cases.empty() && m.least == 0) matters_.pop_back();
    }
    matters_.push_back({{}, leastStair(raw)});
    for (const Form& form : forms_) {
        formStarts_.push_back(form.constant + valueOf(form, adder_.fixed()));
        for (Raw& r : raw)
            for (Choice& c : r.choices) c.forms.push_back(valueOf(form, c.sums));
    }
}

namespace {
using Kept = std::vector<std::vector<int>>; // by seat, indices of the choices that stand for others

// All that may matter, once each.
std::vector<int> sumsOf(const std::vector<Form>& forms) {
    std::vector<int> sums;
    for (const Form& form : forms)
        for (const auto& term : form.terms) sums.push_back(term.first);
    std::sort(sums.begin(), sums.end());
    sums.erase(std::unique(sums.begin(), sums.end()), sums.end());
    return sums;
}

PairTable shrunk(const PairTable& table, const Kept& kept) {
    PairTable small{table.a, table.b, kept[static_cast<std::size_t>(table.b)].size(), {}};
    for (const int i : kept[static_cast<std::size_t>(table.a)])
        for (const int j : kept[static_cast<std::size_t>(table.b)])
            small.cost.push_back(table.at(i, j));
    return small;
}
} // namespace

// Exercises with the same costs, and the same part in every sum that may matter.
void Model::joinAlike(std::vector<Raw>& raw) {
    const std::vector<int> sums = sumsOf(forms_);
    Kept kept(raw.size());
    for (std::size_t s = 0; s < raw.size(); ++s) {
        std::map<std::vector<double>, std::size_t> known;
        auto& choices = raw[s].choices;
        const bool late = std::any_of(late_.begin(), late_.end(), [&](const LateGroup& g) {
            return std::find(g.seats.begin(), g.seats.end(), static_cast<int>(s)) != g.seats.end();
        });
        for (std::size_t i = 0; i < choices.size(); ++i) {
            auto key = raw[s].rows[i];
            const SlotFact& fact = choices[i].filling->fact;
            key.insert(key.end(), {choices[i].alone, choices[i].reps});
            for (const int index : sums)
                key.push_back(
                    static_cast<double>(choices[i].sums[static_cast<std::size_t>(index)]));
            if (late) {
                key.push_back(near_.allOut(fact) ? 1 : 0);
                key.push_back(static_cast<double>(fact.work.middle.count()));
                key.push_back(static_cast<double>(fact.exercise->setup.count()));
            }
            if (unsure_) key.push_back(static_cast<double>(i));
            const auto [it, fresh] = known.try_emplace(std::move(key), i);
            if (fresh)
                kept[s].push_back(static_cast<int>(i));
            else
                choices[it->second].members.push_back(choices[i].members.front());
        }
        std::stable_sort(kept[s].begin(), kept[s].end(), [&](int a, int b) {
            return choices[static_cast<std::size_t>(a)].alone <
                   choices[static_cast<std::size_t>(b)].alone;
        });
        for (const int i : kept[s])
            seats_[s].choices.push_back(std::move(choices[static_cast<std::size_t>(i)]));
    }
    for (PairTable& table : pairs_) table = shrunk(table, kept);
}

// The largest number of ten-thousandths that all weights of the rule book are multiples of.
void Model::findGrain() {
    constexpr double kParts = 10'000;
    std::int64_t common = 0;
    for (const Rule& rule : ruleBook())
        for (const Level level : {Level::Stop, Level::Look, Level::Note}) {
            const double weight = kParts * weightIn(task_->gym.settings, rule, level);
            if (!(std::abs(weight) < 1e12) || weight != std::floor(weight)) return;
            common = std::gcd(common, static_cast<std::int64_t>(weight));
        }
    grain_ = static_cast<double>(common) / kParts;
}

const PairTable* Model::pairOf(int a, int b) const {
    const auto it = std::find_if(pairs_.begin(), pairs_.end(), [&](const PairTable& t) {
        return t.a == std::min(a, b) && t.b == std::max(a, b);
    });
    return it == pairs_.end() ? nullptr : &*it;
}

double Model::lateCost(const Picks& picks) const {
    double cost = 0;
    for (const LateGroup& g : late_) {
        std::vector<const SlotFact*> slots = g.slots;
        auto seat = g.seats.begin();
        for (const SlotFact*& slot : slots) {
            if (slot) continue;
            const auto s = static_cast<std::size_t>(*seat++);
            slot = &seats_[s].choices[static_cast<std::size_t>(picks[s])].filling->fact;
        }
        cost += near_.finisher(slots);
    }
    return cost;
}

double Model::penalty(const Picks& picks, Sums& sums) const {
    double cost = fixed_, reps = kNever;
    sums = adder_.fixed();
    for (std::size_t s = 0; s < seats_.size(); ++s) {
        const Choice& c = seats_[s].choices[static_cast<std::size_t>(picks[s])];
        cost += c.alone;
        reps = std::min(reps, c.reps);
        for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += c.sums[i];
    }
    for (const PairTable& t : pairs_)
        cost += t.at(picks[static_cast<std::size_t>(t.a)], picks[static_cast<std::size_t>(t.b)]);
    return cost + whole_.of(sums, reps) + whole_.queueing(sums) + lateCost(picks);
}

Block Model::filled(const Cast& cast) const {
    Block block = *task_->block;
    const auto& slots = task_->facts->slots;
    for (std::size_t s = 0; s < cast.size(); ++s) {
        const SlotFact& open = *std::find_if(slots.begin(), slots.end(), [&](const SlotFact& f) {
            return f.place == seats_[s].place;
        });
        *slotAt(block, seats_[s].place) = Filling(open, *cast[s]).slot;
    }
    return block;
}

double Model::queueing(const Cast& cast) const {
    Sums sums = adder_.fixed();
    for (std::size_t s = 0; s < seats_.size(); ++s)
        for (const Choice& c : seats_[s].choices)
            if (std::ranges::find(c.members, cast[s]) != c.members.end())
                for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += c.sums[i];
    return whole_.queueing(sums);
}

double Model::checked(const Cast& cast) const {
    return check(task_->gym, filled(cast)).penalty + queueing(cast);
}

} // namespace bw::proposing
