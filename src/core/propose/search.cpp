// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/search.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <numeric>

namespace bw::proposing {

namespace {
constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSlip = 1e-9; // of sums of doubles
constexpr int kOften = 1024;   // nodes between two looks at whether to stop

std::size_t idx(int i) { return static_cast<std::size_t>(i); }
} // namespace

// One walk down a part of the tree.
class Walk {
public:
    Walk(const Search& search, double most, const Apart& apart)
        : s_(search), m_(search.model_), most_(most), apart_(apart), picks_(idx(m_.size())),
          depths_(idx(m_.size()) + 1) {
        for (Depth& d : depths_) {
            d.least.resize(idx(m_.size()));
            d.forms.resize(s_.forms_);
        }
        Depth& root = depths_[0];
        for (int i = 0; i < m_.size(); ++i) root.least[idx(i)] = s_.levels_[idx(i)].alone.front();
        for (std::size_t f = 0; f < s_.forms_; ++f) root.forms[f] = m_.formStart(f);
    }

    // Everything that begins with these choices, in the order of the search.
    template <class Ended> Outcome from(const std::vector<int>& first, Ended ended) {
        outcome_ = {};
        ended_ = [ended] { return ended(); };
        int depth = 0;
        for (const int choice : first) {
            if (!step(depth, choice)) return outcome_;
            ++depth;
        }
        descend(depth);
        return outcome_;
    }

    // At least, at a depth; above most_ when nothing there keeps within it.
    double bound(int depth) const {
        const Depth& d = depths_[idx(depth)];
        double near = s_.start_ + d.cost;
        for (int i = depth; i < m_.size(); ++i) near += d.least[idx(s_.order_[idx(i)])];
        double bound = near;
        constexpr int kRounds = 4;
        for (int round = 0; round < kRounds; ++round) {
            if (bound > most_ + kSlip) return bound;
            if (!widest(depth, most_ - bound)) return kNever;
            const double then = near + matters();
            if (then <= bound) break;
            bound = then;
        }
        return bound;
    }

private:
    struct Depth {
        double cost = 0; // of the choices made
        double bound = 0;
        std::vector<double> least; // by seat, of those that are not chosen
        std::vector<double> forms; // the sums so far
    };

    // The most that each form can still be, when no seat costs more than it may.
    bool widest(int depth, double slack) const {
        const Depth& d = depths_[idx(depth)];
        widest_ = d.forms;
        for (int i = depth; i < m_.size(); ++i) {
            const auto seat = idx(s_.order_[idx(i)]);
            const auto& level = s_.levels_[seat];
            const double may = d.least[seat] + slack + kSlip;
            const auto n =
                std::upper_bound(level.alone.begin(), level.alone.end(), may) - level.alone.begin();
            if (n == 0) return false;
            const double* row = level.most.data() + (idx(static_cast<int>(n)) - 1) * s_.forms_;
            for (std::size_t f = 0; f < s_.forms_; ++f) widest_[f] += row[f];
        }
        return true;
    }
    double matters() const {
        double sum = 0; // above the least of each
        for (const Matter& m : m_.matters()) {
            double cost = m.least;
            for (const Matter::Case& c : m.cases)
                if (c.cost > cost && std::all_of(c.broken.begin(), c.broken.end(),
                                                 [&](int f) { return widest_[idx(f)] < -kSlip; }))
                    cost = c.cost;
            sum += cost - m.least;
        }
        return sum;
    }

    // Makes a choice for the seat of this depth; false when nothing with it keeps within.
    bool step(int depth, int choice) {
        const int seat = s_.order_[idx(depth)];
        const Depth& now = depths_[idx(depth)];
        Depth& then = depths_[idx(depth) + 1];
        const Choice& c = m_.seats()[idx(seat)].choices[idx(choice)];
        picks_[idx(seat)] = choice;
        then.cost = now.cost + c.alone;
        then.least = now.least;
        for (int i = 0; i < depth; ++i) {
            const int before = s_.order_[idx(i)];
            for (const Search::Pull& p : s_.later_[idx(before)])
                if (p.seat == seat)
                    then.cost += before < seat ? p.table->at(picks_[idx(before)], choice)
                                               : p.table->at(choice, picks_[idx(before)]);
        }
        for (const Search::Pull& p : s_.later_[idx(seat)])
            then.least[idx(p.seat)] = std::max(then.least[idx(p.seat)], p.least[idx(choice)]);
        for (std::size_t f = 0; f < s_.forms_; ++f) then.forms[f] = now.forms[f] + c.forms[f];
        then.bound = bound(depth + 1);
        const bool within = then.bound <= most_ + kSlip;
        outcome_.cut = outcome_.cut || !within;
        return within;
    }

    void descend(int depth) {
        if (depth == m_.size()) return arrive();
        const auto& alone = s_.levels_[idx(s_.order_[idx(depth)])].alone;
        const double may = depths_[idx(depth)].least[idx(s_.order_[idx(depth)])] + most_ -
                           depths_[idx(depth)].bound + kSlip;
        for (int c = 0; c < static_cast<int>(alone.size()); ++c) {
            if (++nodes_ % kOften == 0 && ended_()) outcome_.complete = false;
            if (!outcome_.complete || outcome_.found) return;
            if (alone[idx(c)] > may) {
                outcome_.cut = true;
                return;
            }
            if (step(depth, c)) descend(depth + 1);
        }
    }
    void arrive() {
        if (m_.penalty(picks_, room_) > most_ + kSlip) {
            outcome_.cut = true;
            return;
        }
        auto cast = castOf(m_, picks_, apart_);
        if (!cast) return;
        if (m_.unsure() && m_.checked(*cast) > most_ + kSlip)
            outcome_.cut = true;
        else
            outcome_.found = std::move(cast);
    }

    const Search& s_;
    const Model& m_;
    double most_;
    const Apart& apart_;
    Picks picks_;
    std::vector<Depth> depths_;
    mutable std::vector<double> widest_;
    Sums room_;
    Outcome outcome_;
    std::function<bool()> ended_;
    int nodes_ = 0;
};

Search::Search(const Model& model)
    : model_(model), forms_(model.forms().size()), order_(idx(model.size())),
      levels_(idx(model.size())), later_(idx(model.size())), start_(model.fixed()) {
    std::iota(order_.begin(), order_.end(), 0);
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) {
        return model.seats()[idx(a)].choices.size() < model.seats()[idx(b)].choices.size();
    });
    for (const Matter& m : model.matters()) start_ += m.least;
    for (int s = 0; s < model.size(); ++s) {
        Level& level = levels_[idx(s)];
        for (const Choice& c : model.seats()[idx(s)].choices) {
            level.alone.push_back(c.alone);
            const std::size_t before = level.most.size();
            level.most.insert(level.most.end(), c.forms.begin(), c.forms.end());
            for (std::size_t f = 0; before > 0 && f < forms_; ++f)
                level.most[before + f] = std::max(c.forms[f], level.most[before - forms_ + f]);
        }
    }
    for (int i = 0; i < model.size(); ++i)
        for (int j = i + 1; j < model.size(); ++j) {
            const int seat = order_[idx(i)], other = order_[idx(j)];
            const PairTable* table = model.pairOf(seat, other);
            if (!table) continue;
            Pull pull{other, table, {}};
            const auto& mine = model.seats()[idx(seat)].choices;
            const auto& theirs = model.seats()[idx(other)].choices;
            for (std::size_t c = 0; c < mine.size(); ++c) {
                double least = kNever;
                for (std::size_t d = 0; d < theirs.size(); ++d) {
                    const auto [a, b] = seat < other ? std::pair{c, d} : std::pair{d, c};
                    least = std::min(least, theirs[d].alone + table->at(static_cast<int>(a),
                                                                        static_cast<int>(b)));
                }
                pull.least.push_back(least);
            }
            later_[idx(seat)].push_back(std::move(pull));
        }
    const Apart none;
    bound_ = Walk(*this, kNever, none).bound(0);
    if (const double grain = model.grain(); grain > 0)
        bound_ = std::ceil(bound_ / grain - kSlip) * grain + 0.0; // no -0
}

double Search::next(double penalty) const {
    constexpr double kStep = 0.01; // where weights have no common measure
    return penalty + (model_.grain() > 0 ? model_.grain() : kStep);
}

Outcome Search::within(double penalty, const Apart& apart, const Crew& crew) const {
    const auto width = [&](int depth) {
        return static_cast<int>(model_.seats()[idx(order_[idx(depth)])].choices.size());
    };
    const int second = model_.size() > 1 ? width(1) : 1;
    const int parts = width(0) * second;
    std::atomic<int> best{parts}; // the first part with an answer
    std::atomic<bool> cut{false};
    std::vector<Outcome> outcomes(idx(parts));
    std::vector<std::unique_ptr<Walk>> walks(idx(crew.size()));
    crew.work(0, parts, [&](int worker, int part) {
        if (part > best) return;
        auto& walk = walks[idx(worker)];
        if (!walk) walk = std::make_unique<Walk>(*this, penalty, apart);
        std::vector<int> first{part / second};
        if (model_.size() > 1) first.push_back(part % second);
        Outcome& out = outcomes[idx(part)];
        out = walk->from(first, [&] { return part > best || crew.stopped(); });
        if (out.cut) cut = true;
        for (int seen = best; out.found && part < seen;)
            if (best.compare_exchange_weak(seen, part)) break;
    });
    Outcome all;
    if (best < parts) all.found = outcomes[idx(best)].found;
    all.complete = !crew.stopped();
    all.cut = cut;
    return all;
}

} // namespace bw::proposing
