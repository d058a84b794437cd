// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/walk.hpp"

#include <algorithm>
#include <limits>

namespace bw::proposing {

namespace {
constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSlip = 1e-9; // of sums of doubles
constexpr int kOften = 64;     // nodes between two looks at whether to stop

std::size_t idx(int i) { return static_cast<std::size_t>(i); }
} // namespace

Walk::Walk(const Model& model, double most, const Apart& apart)
    : m_(model), most_(most), apart_(apart), picks_(idx(model.size())),
      depths_(idx(model.size()) + 1), widest_(model.forms().size()) {
    Depth& root = depths_.front();
    root.made.assign(picks_.size(), 0);
    root.cost = model.fixed();
    for (const Matter& m : model.matters()) root.cost += m.least;
    for (std::size_t f = 0; f < widest_.size(); ++f) root.forms.push_back(model.formStart(f));
    for (const Seat& seat : model.seats()) {
        Left left;
        for (int c = 0; c < static_cast<int>(seat.choices.size()); ++c) {
            left.choices.push_back(c);
            left.near.push_back(seat.choices[idx(c)].alone);
        }
        root.left.push_back(std::move(left));
    }
    if (!thin(root)) root.bound = kNever;
}

int Walk::width() const {
    return static_cast<int>(depths_.front().left[idx(firstSeat())].choices.size());
}

Outcome Walk::from(int first, const std::function<bool()>& ended) {
    outcome_ = {};
    ended_ = ended;
    const int seat = firstSeat();
    if (step(0, seat, depths_.front().left[idx(seat)].choices[idx(first)])) descend(1);
    return outcome_;
}

void Walk::refresh(Depth& d) {
    widest_ = d.forms;
    const std::size_t forms = widest_.size();
    for (std::size_t s = 0; s < d.left.size(); ++s) {
        if (d.made[s]) continue;
        Left& left = d.left[s];
        if (left.stale) {
            left.most.assign(forms, -kNever);
            left.least = kNever;
            double* most = left.most.data(); // plain, as nearly all the time goes here
            for (const int c : left.choices) {
                const double* adds = m_.seats()[s].choices[idx(c)].forms.data();
                for (std::size_t f = 0; f < forms; ++f)
                    most[f] = adds[f] > most[f] ? adds[f] : most[f];
                left.least = std::min(left.least, left.near[idx(c)]);
            }
            left.stale = false;
        }
        for (std::size_t f = 0; f < forms; ++f) widest_[f] += left.most[f];
    }
}

double Walk::matters() const {
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

// Where a finding would cost more than is left, and hangs on one form alone.
void Walk::findRequired(double slack) {
    required_.clear();
    for (const Matter& m : m_.matters()) {
        double sure = m.least;
        for (const Matter::Case& c : m.cases)
            if (std::all_of(c.broken.begin(), c.broken.end(),
                            [&](int f) { return widest_[idx(f)] < -kSlip; }))
                sure = std::max(sure, c.cost);
        for (const Matter::Case& c : m.cases) {
            if (c.cost <= sure + slack + kSlip) continue;
            int open = 0, last = -1;
            for (const int f : c.broken)
                if (widest_[idx(f)] >= -kSlip) {
                    ++open;
                    last = f;
                }
            if (open == 1) required_.push_back(last);
        }
    }
}

bool Walk::drop(Depth& d, double slack) {
    bool any = false;
    for (std::size_t s = 0; s < d.left.size(); ++s) {
        if (d.made[s]) continue;
        Left& left = d.left[s];
        const auto& choices = m_.seats()[s].choices;
        const auto gone = std::erase_if(left.choices, [&](int c) {
            if (left.near[idx(c)] > left.least + slack + kSlip) return true;
            const auto& forms = choices[idx(c)].forms;
            return std::any_of(required_.begin(), required_.end(), [&](int f) {
                return widest_[idx(f)] - left.most[idx(f)] + forms[idx(f)] < -kSlip;
            });
        });
        if (gone == 0) continue;
        any = left.stale = true;
    }
    return any;
}

bool Walk::thin(Depth& d) {
    constexpr int kRounds = 8;
    for (int round = 0; round < kRounds; ++round) {
        for (std::size_t s = 0; s < d.left.size(); ++s)
            if (!d.made[s] && d.left[s].choices.empty()) return false;
        refresh(d);
        d.bound = d.cost + matters();
        for (std::size_t s = 0; s < d.left.size(); ++s)
            if (!d.made[s]) d.bound += d.left[s].least;
        if (d.bound > most_ + kSlip) {
            outcome_.cut = true;
            return false;
        }
        findRequired(most_ - d.bound);
        if (!drop(d, most_ - d.bound)) return true;
        outcome_.cut = true;
    }
    return true;
}

int Walk::narrowest(int depth) const {
    const Depth& d = depths_[idx(depth)];
    int best = -1;
    std::size_t width = 0;
    for (int s = 0; s < m_.size(); ++s) {
        if (d.made[idx(s)]) continue;
        const std::size_t now = d.left[idx(s)].choices.size();
        if (best >= 0 && now >= width) continue;
        best = s;
        width = now;
    }
    return best;
}

bool Walk::step(int depth, int seat, int choice) {
    Depth& then = depths_[idx(depth) + 1];
    then = depths_[idx(depth)];
    const auto& chosen = m_.seats()[idx(seat)].choices[idx(choice)];
    picks_[idx(seat)] = choice;
    then.made[idx(seat)] = 1;
    then.cost += then.left[idx(seat)].near[idx(choice)];
    for (std::size_t f = 0; f < widest_.size(); ++f) then.forms[f] += chosen.forms[f];
    for (const PairTable& t : m_.pairs()) {
        if (t.a != seat && t.b != seat) continue;
        const int other = t.a == seat ? t.b : t.a;
        if (then.made[idx(other)]) continue;
        Left& left = then.left[idx(other)];
        for (const int c : left.choices)
            left.near[idx(c)] += t.a == seat ? t.at(choice, c) : t.at(c, choice);
        left.stale = true;
    }
    const Exercise* only = chosen.members.size() == 1 ? chosen.members.front() : nullptr;
    for (std::size_t s = 0; only && s < then.left.size(); ++s) {
        if (then.made[s]) continue;
        const auto& choices = m_.seats()[s].choices;
        if (std::erase_if(then.left[s].choices, [&](int c) {
                const auto& members = choices[idx(c)].members;
                return members.size() == 1 && members.front() == only;
            }) > 0)
            then.left[s].stale = true;
    }
    return thin(then);
}

void Walk::descend(int depth) {
    if (depth == m_.size()) return arrive();
    const int seat = narrowest(depth);
    for (const int choice : depths_[idx(depth)].left[idx(seat)].choices) {
        if (++nodes_ % kOften == 0 && ended_()) outcome_.complete = false;
        if (!outcome_.complete || outcome_.found) return;
        if (step(depth, seat, choice)) descend(depth + 1);
    }
}

void Walk::arrive() {
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

} // namespace bw::proposing
