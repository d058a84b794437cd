// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/climb.hpp"

#include <algorithm>
#include <random>

namespace bw::proposing {

namespace {
constexpr double kSlip = 1e-9;
constexpr std::size_t kMostKept = 400;
constexpr int kStarts = 60, kOftenPairs = 20; // every so many starts also two seats at a time
constexpr std::size_t kMostKicked = 4;
constexpr std::int64_t kMostPairTrials = 60'000; // of one sweep over two seats at a time

class Climber {
public:
    Climber(const Model& model, std::uint64_t seed, double bound,
            const std::function<bool()>& stopped, const std::function<void(double)>& better)
        : m_(model), draw_(seed), bound_(bound), stopped_(stopped), better_(better),
          picks_(static_cast<std::size_t>(model.size()), 0) {}

    Pool all() {
        for (int start = 0; start < kStarts; ++start) {
            if (start > 0) kick();
            enter();
            const bool pairs = start % kOftenPairs == 0;
            while (!done() && (oneByOne() || (pairs && twoByTwo()))) {
            }
            if (done()) break;
        }
        return std::move(pool_);
    }

private:
    bool done() const {
        const bool enough = pool_.size() >= 2 && pool_.begin()->first <= bound_ + kSlip;
        return (stopped_() || enough) && !pool_.empty();
    }
    int width(std::size_t seat) const { return static_cast<int>(m_.seats()[seat].choices.size()); }
    // Some seats of the best so far drawn anew.
    void kick() {
        picks_ = pool_.begin()->second;
        const std::size_t seats = 1 + draw_() % std::min(kMostKicked, picks_.size());
        for (std::size_t n = 0; n < seats; ++n) {
            const std::size_t s = draw_() % picks_.size();
            picks_[s] = static_cast<int>(draw_() % static_cast<std::uint64_t>(width(s)));
        }
    }
    // Two seats that can only have one and the same exercise are no answer.
    bool clash(std::size_t seat) const {
        const auto alone = [&](std::size_t s) -> const Exercise* {
            const auto& members =
                m_.seats()[s].choices[static_cast<std::size_t>(picks_[s])].members;
            return members.size() == 1 ? members.front() : nullptr;
        };
        const Exercise* mine = alone(seat);
        for (std::size_t s = 0; mine && s < picks_.size(); ++s)
            if (s != seat && alone(s) == mine) return true;
        return false;
    }
    void enter() {
        now_ = 1e300;
        for (std::size_t s = 0; s < picks_.size(); ++s)
            for (int c = 0; clash(s) && c < width(s); ++c) picks_[s] = c;
        take(picks_, m_.penalty(picks_, room_));
    }
    void take(const Picks& picks, double penalty) {
        now_ = penalty;
        const bool best = pool_.empty() || penalty < pool_.begin()->first - kSlip;
        pool_.emplace(penalty, picks);
        if (best) better_(penalty);
        if (pool_.size() > kMostKept) pool_.erase(std::prev(pool_.end()));
    }
    bool oneByOne() {
        bool better = false;
        for (std::size_t s = 0; s < picks_.size(); ++s) {
            int best = picks_[s];
            for (int c = 0; c < width(s); ++c) {
                picks_[s] = c;
                const double penalty = clash(s) ? 1e300 : m_.penalty(picks_, room_);
                if (penalty >= now_ - kSlip) continue;
                best = c;
                better = true;
                take(picks_, penalty);
            }
            picks_[s] = best;
            if (done()) return false;
        }
        return better;
    }
    bool tryPair(std::size_t a, std::size_t b) {
        const int first = picks_[a], second = picks_[b];
        for (int c = 0; c < width(a); ++c)
            for (int d = 0; d < width(b); ++d) {
                picks_[a] = c;
                picks_[b] = d;
                if (clash(a) || clash(b)) continue;
                const double penalty = m_.penalty(picks_, room_);
                if (penalty >= now_ - kSlip) continue;
                take(picks_, penalty);
                return true;
            }
        picks_[a] = first;
        picks_[b] = second;
        return false;
    }
    bool twoByTwo() {
        std::int64_t left = kMostPairTrials;
        std::vector<std::pair<std::size_t, std::size_t>> two;
        for (std::size_t a = 0; a < picks_.size(); ++a)
            for (std::size_t b = a + 1; b < picks_.size(); ++b) two.emplace_back(a, b);
        for (std::size_t i = two.size(); i > 1; --i)
            std::swap(two[i - 1], two[draw_() % static_cast<std::uint64_t>(i)]);
        for (const auto& [a, b] : two) {
            left -= std::int64_t{width(a)} * width(b);
            if (left < 0 || done()) return false;
            if (tryPair(a, b)) return true;
        }
        return false;
    }

    const Model& m_;
    std::mt19937_64 draw_;
    double bound_;
    const std::function<bool()>& stopped_;
    const std::function<void(double)>& better_;
    Sums room_;
    Picks picks_;
    double now_ = 0;
    Pool pool_;
};
} // namespace

Pool climb(const Model& model, std::uint64_t seed, double bound,
           const std::function<bool()>& stopped, const std::function<void(double)>& better) {
    return Climber(model, seed, bound, stopped, better).all();
}

} // namespace bw::proposing
