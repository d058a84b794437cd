// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/casting.hpp"

#include <algorithm>

namespace bw::proposing {

namespace {
int difference(const Cast& a, const Cast& b, std::size_t seats) {
    int n = 0;
    for (std::size_t s = 0; s < seats; ++s) n += a[s] == b[s] ? 0 : 1;
    return n;
}

class Casting {
public:
    Casting(const Model& model, const Picks& picks, const Apart& apart)
        : model_(model), picks_(picks), apart_(apart) {}

    std::optional<Cast> first() {
        if (!matches()) return std::nullopt;
        return fill() ? std::optional(cast_) : std::nullopt;
    }

private:
    const std::vector<const Exercise*>& membersOf(std::size_t seat) const {
        return model_.seats()[seat].choices[static_cast<std::size_t>(picks_[seat])].members;
    }
    bool used(const Exercise* e) const {
        return std::find(cast_.begin(), cast_.end(), e) != cast_.end();
    }
    // Can the answers before still be left far enough behind?
    bool hopeful() const {
        const int left = model_.size() - static_cast<int>(cast_.size());
        return std::all_of(apart_.from.begin(), apart_.from.end(), [&](const Cast& other) {
            return difference(cast_, other, cast_.size()) + left >= apart_.seats;
        });
    }
    bool fill() {
        if (cast_.size() == picks_.size()) return true;
        for (const Exercise* e : membersOf(cast_.size())) {
            if (used(e)) continue;
            cast_.push_back(e);
            if (hopeful() && fill()) return true;
            cast_.pop_back();
        }
        return false;
    }
    // Is there an exercise for each seat at all? (Augmenting paths, after Kuhn.)
    bool matches() const {
        std::vector<std::pair<const Exercise*, std::size_t>> taken;
        for (std::size_t s = 0; s < picks_.size(); ++s) {
            std::vector<const Exercise*> tried;
            if (!seatOne(s, taken, tried)) return false;
        }
        return true;
    }
    bool seatOne(std::size_t seat, std::vector<std::pair<const Exercise*, std::size_t>>& taken,
                 std::vector<const Exercise*>& tried) const {
        for (const Exercise* e : membersOf(seat)) {
            if (std::find(tried.begin(), tried.end(), e) != tried.end()) continue;
            tried.push_back(e);
            const auto it = std::find_if(taken.begin(), taken.end(),
                                         [&](const auto& t) { return t.first == e; });
            if (it == taken.end()) {
                taken.emplace_back(e, seat);
                return true;
            }
            if (!seatOne(it->second, taken, tried)) continue;
            std::find_if(taken.begin(), taken.end(), [&](const auto& t) {
                return t.first == e;
            })->second = seat;
            return true;
        }
        return false;
    }

    const Model& model_;
    const Picks& picks_;
    const Apart& apart_;
    Cast cast_;
};
} // namespace

bool Apart::holds(const Cast& cast) const {
    return std::all_of(from.begin(), from.end(), [&](const Cast& other) {
        return difference(cast, other, cast.size()) >= seats;
    });
}

std::optional<Cast> castOf(const Model& model, const Picks& picks, const Apart& apart) {
    return Casting(model, picks, apart).first();
}

} // namespace bw::proposing
