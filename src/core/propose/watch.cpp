// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/watch.hpp"

#include <algorithm>

namespace bw::proposing {

namespace {
constexpr double kSlip = 1e-9; // of sums of doubles
constexpr double kPerExchange = 0.5, kMostExchanges = 4;
} // namespace

Watch::Watch(const Model& model)
    : m_(model), tables_(model.seats().size()), stride_(model.forms().size(), kSlip),
      room_(model.forms().size()) {
    for (const PairTable& t : model.pairs()) {
        tables_[static_cast<std::size_t>(t.a)].push_back(&t);
        tables_[static_cast<std::size_t>(t.b)].push_back(&t);
    }
    for (const Seat& seat : model.seats()) {
        only_.emplace_back();
        std::vector<double> least = seat.choices.front().forms, most = least;
        for (const Choice& c : seat.choices) {
            only_.back().push_back(c.members.size() == 1 ? c.members.front() : nullptr);
            for (std::size_t f = 0; f < stride_.size(); ++f) {
                least[f] = std::min(least[f], c.forms[f]);
                most[f] = std::max(most[f], c.forms[f]);
            }
        }
        for (std::size_t f = 0; f < stride_.size(); ++f)
            stride_[f] = std::max(stride_[f], most[f] - least[f]);
    }
}

void Watch::enter(const Picks& picks) {
    picks_ = picks;
    values_.clear();
    for (std::size_t f = 0; f < stride_.size(); ++f) {
        values_.push_back(m_.formStart(f));
        for (std::size_t s = 0; s < picks.size(); ++s)
            values_.back() += m_.seats()[s].choices[static_cast<std::size_t>(picks[s])].forms[f];
    }
}

void Watch::change(std::size_t seat, int choice) {
    picks_[seat] = choice;
    enter(Picks(picks_)); // anew, so that no error of a sum lasts
}

double Watch::score(std::size_t seat, int choice) const {
    const auto& choices = m_.seats()[seat].choices;
    const auto& before = choices[static_cast<std::size_t>(picks_[seat])].forms;
    const auto& then = choices[static_cast<std::size_t>(choice)].forms;
    for (std::size_t f = 0; f < room_.size(); ++f) room_[f] = values_[f] + (then[f] - before[f]);
    return near(seat, choice) - near(seat, picks_[seat]) + whole();
}

double Watch::near(std::size_t seat, int choice) const {
    double cost = m_.seats()[seat].choices[static_cast<std::size_t>(choice)].alone;
    for (const PairTable* t : tables_[seat])
        cost += static_cast<std::size_t>(t->a) == seat
                    ? t->at(choice, picks_[static_cast<std::size_t>(t->b)])
                    : t->at(picks_[static_cast<std::size_t>(t->a)], choice);
    return cost;
}

double Watch::whole() const {
    double sum = 0;
    for (const Matter& m : m_.matters()) {
        double cost = m.least;
        for (const Matter::Case& c : m.cases) {
            double away = kMostExchanges;
            for (const int f : c.broken) {
                const auto form = static_cast<std::size_t>(f);
                if (room_[form] >= -kSlip) away = -1;
                away = std::min(away, -room_[form] / stride_[form]);
            }
            if (away > 0) cost = std::max(cost, c.cost * (1 + kPerExchange * away));
        }
        sum += cost;
    }
    return sum;
}

bool Watch::clash(std::size_t seat, int choice) const {
    const Exercise* mine = only_[seat][static_cast<std::size_t>(choice)];
    for (std::size_t s = 0; mine && s < picks_.size(); ++s)
        if (s != seat && only_[s][static_cast<std::size_t>(picks_[s])] == mine) return true;
    return false;
}

} // namespace bw::proposing
