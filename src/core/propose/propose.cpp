// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/propose/propose.hpp"

#include "core/propose/climb.hpp"
#include "core/propose/search.hpp"
#include "core/propose/why.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
using namespace proposing;
constexpr double kSlip = 1e-6; // penalties that are nearer to each other are the same

struct Found {
    double penalty = 0;
    Cast cast;
};

class Proposer {
public:
    Proposer(const Model& model, const ProposeOptions& options, const std::stop_token& stop,
             const ProposeProgress& progress)
        : m_(model), options_(options), stop_(stop), progress_(progress), search_(model),
          crew_(options.threads, stop, kSilent), bound_(search_.bound()) {
        apart_.seats = std::min(2, model.size());
    }

    std::vector<Found> all() {
        pool_ = climb(
            m_, options_.seed, bound_, [this] { return stop_.stop_requested(); },
            [this](double best) {
                if (progress_) progress_(best, bound_);
            });
        std::vector<Found> out;
        double least = bound_; // of the answers that are left
        while (static_cast<int>(out.size()) < options_.answers) {
            auto next = best(least, out.empty());
            if (!next) break;
            apart_.from.push_back(next->cast);
            out.push_back(std::move(*next));
        }
        return out;
    }
    [[nodiscard]] double bound() const { return bound_; } // of the first answer

private:
    static const inline FloorProgress kSilent{};

    // The best of the pool that is apart from the answers before.
    std::optional<Found> known() const {
        constexpr int kMostChecks = 24; // where only the check can tell
        std::optional<Found> best;
        int checks = 0;
        for (const auto& [penalty, picks] : pool_) {
            if (best && best->penalty <= penalty + kSlip) break;
            auto cast = castOf(m_, picks, apart_);
            if (!cast) continue;
            const double exact = m_.unsure() ? m_.checked(*cast) : penalty;
            if (!best || exact < best->penalty - kSlip) best = Found{exact, std::move(*cast)};
            if (!m_.unsure() || ++checks >= kMostChecks) break;
        }
        return best;
    }
    void tell(const std::optional<Found>& best, double bound) const {
        if (progress_ && best) progress_(best->penalty, bound);
    }
    // None: there is no other. `least` rises to what is known of the answers that are left.
    std::optional<Found> best(double& least, bool first) {
        std::optional<Found> known = this->known();
        for (;;) {
            if (first) {
                bound_ = least;
                tell(known, bound_);
            }
            if (stop_.stop_requested() || !options_.prove ||
                (known && known->penalty <= least + kSlip))
                return known;
            Outcome outcome = search_.within(least, apart_, crew_);
            if (outcome.found) {
                const double exact = m_.checked(*outcome.found);
                return Found{exact, std::move(*outcome.found)};
            }
            if (!outcome.complete) return known;
            if (!outcome.cut) return known;
            least = search_.next(least);
        }
    }

    const Model& m_;
    const ProposeOptions& options_;
    std::stop_token stop_;
    const ProposeProgress& progress_;
    Search search_;
    Crew crew_;
    double bound_;
    Apart apart_;
    Pool pool_;
};

double whole(const ProposedMonth& month) { return month.penalty + month.queueing; }

ProposedMonth monthOf(const Model& model, const Found& found, const CheckResult& now) {
    const Task& task = model.task();
    ProposedMonth out{
        .block = model.filled(found.cast), .slots = {}, .penalty = 0, .queueing = 0, .shift = {}};
    const CheckResult then = check(task.gym, out.block);
    out.penalty = then.penalty;
    out.queueing = model.queueing(found.cast);
    out.shift = shiftBetween(now, then);
    for (std::size_t s = 0; s < found.cast.size(); ++s) {
        const Place place = model.seats()[s].place;
        const Slot& slot = *slotAt(out.block, place);
        out.slots.push_back(
            {place, found.cast[s]->id, *slot.dose, whyOf(task, out.block, place, *found.cast[s])});
    }
    return out;
}

Message noAnswer() {
    return {"There are not enough different exercises for these slots: each may stand only once in "
            "a session. Fill some of them by hand, or add exercises to the Shelf.",
            {}};
}
} // namespace

double Proposal::gap() const {
    if (answers.empty()) return 0;
    const double open = whole(answers.front()) - bound;
    return open > kSlip ? open : 0;
}

Result<Proposal> propose(const Gym& gym, const Block& draft, const ProposeOptions& options,
                         const std::stop_token& stop, const ProposeProgress& progress) {
    auto task = taskOf(gym, draft, options);
    if (!task) return task.why();
    const Model model(*task);
    Proposer proposer(model, options, stop, progress);
    const auto found = proposer.all();
    if (found.empty()) return noAnswer();
    const CheckResult now = check(gym, draft);
    Proposal out;
    out.penaltyNow = now.penalty;
    out.bound = proposer.bound();
    for (const Found& f : found) {
        out.answers.push_back(monthOf(model, f, now));
        // What was searched must be what is checked; where it is not, nothing is proved.
        if (!model.unsure() && std::abs(whole(out.answers.back()) - f.penalty) > kSlip)
            out.bound = std::min(out.bound, model.fixed());
    }
    std::stable_sort(out.answers.begin(), out.answers.end(),
                     [](const auto& a, const auto& b) { return whole(a) < whole(b) - kSlip; });
    return out;
}

} // namespace bw
