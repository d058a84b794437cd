// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/climb.hpp"

#include "core/propose/watch.hpp"

#include <algorithm>
#include <random>

namespace bw::proposing {

namespace {
constexpr double kSlip = 1e-9;
constexpr std::size_t kMostKept = 400;
constexpr int kMovesOfAPair = 12; // of seats, each with each
constexpr int kPatience = 60;     // moves without a better answer, then some seats are drawn anew
constexpr std::size_t kMostKicked = 4;
constexpr int kLeastRest = 2, kMostRest = 6; // moves that a seat stays as it was changed to

class Climber {
public:
    Climber(const Model& model, std::uint64_t seed, double bound,
            const std::function<bool()>& stopped, const std::function<void(double)>& better)
        : m_(model), watch_(model), draw_(seed), bound_(bound), stopped_(stopped), better_(better),
          free_(static_cast<std::size_t>(model.size()), 0) {}

    Pool all() {
        const int most = kMovesOfAPair * m_.size() * m_.size();
        enter(Picks(free_.size(), 0));
        for (int since = 0; move_ < most && !done(); ++move_) {
            since = step() ? 0 : since + 1;
            if (since < kPatience) continue;
            kick();
            since = 0;
        }
        return std::move(pool_);
    }

private:
    bool done() const {
        const bool enough = pool_.size() >= 2 && pool_.begin()->first <= bound_ + kSlip;
        return (stopped_() || enough) && !pool_.empty();
    }
    int width(std::size_t seat) const { return static_cast<int>(m_.seats()[seat].choices.size()); }
    int drawn(int below) { return static_cast<int>(draw_() % static_cast<std::uint64_t>(below)); }

    void enter(const Picks& picks) {
        watch_.enter(picks);
        for (std::size_t s = 0; s < picks.size(); ++s)
            for (int c = 0; watch_.clash(s, watch_.picks()[s]) && c < width(s); ++c)
                watch_.change(s, c);
        take();
    }
    // Some seats of the best so far drawn anew.
    void kick() {
        Picks picks = pool_.begin()->second;
        const std::size_t seats = 1 + draw_() % std::min(kMostKicked, picks.size());
        for (std::size_t n = 0; n < seats; ++n) {
            const std::size_t s = draw_() % picks.size();
            picks[s] = drawn(width(s));
        }
        enter(picks);
    }
    bool take() {
        const double penalty = m_.penalty(watch_.picks(), room_);
        const bool best = pool_.empty() || penalty < pool_.begin()->first - kSlip;
        pool_.emplace(penalty, watch_.picks());
        if (best) better_(penalty);
        if (pool_.size() > kMostKept) pool_.erase(std::prev(pool_.end()));
        return best;
    }
    // The best change of one seat, for better or worse; a seat that was changed rests for some
    // moves, so that the way does not lead straight back. True when it is the best so far.
    bool step() {
        double best = 1e300;
        std::size_t seat = 0;
        int choice = -1, alike = 0;
        for (std::size_t s = 0; s < free_.size(); ++s)
            for (int c = 0; free_[s] <= move_ && c < width(s); ++c) {
                if (c == watch_.picks()[s] || watch_.clash(s, c)) continue;
                const double score = watch_.score(s, c);
                if (score > best + kSlip) continue;
                alike = score < best - kSlip ? 1 : alike + 1;
                if (alike > 1 && drawn(alike) > 0) continue;
                best = std::min(best, score);
                seat = s;
                choice = c;
            }
        if (choice < 0) return false;
        watch_.change(seat, choice);
        free_[seat] = move_ + 1 + kLeastRest + drawn(kMostRest - kLeastRest + 1);
        return take();
    }

    const Model& m_;
    Watch watch_;
    std::mt19937_64 draw_;
    double bound_;
    const std::function<bool()>& stopped_;
    const std::function<void(double)>& better_;
    std::vector<int> free_; // by seat: the move from which it may change again
    Sums room_;
    int move_ = 0;
    Pool pool_;
};
} // namespace

Pool climb(const Model& model, std::uint64_t seed, double bound,
           const std::function<bool()>& stopped, const std::function<void(double)>& better) {
    return Climber(model, seed, bound, stopped, better).all();
}

} // namespace bw::proposing
