// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/search.hpp"

#include <atomic>
#include <cmath>
#include <limits>
#include <memory>

namespace bw::proposing {

namespace {
constexpr double kSlip = 1e-9; // of sums of doubles
} // namespace

Search::Search(const Model& model) : model_(model) {
    const Apart none;
    bound_ = Walk(model, std::numeric_limits<double>::infinity(), none).bound();
    if (const double grain = model.grain(); grain > 0)
        bound_ = std::ceil(bound_ / grain - kSlip) * grain + 0.0; // no -0
}

double Search::next(double penalty) const {
    constexpr double kStep = 0.01; // where weights have no common measure
    return penalty + (model_.grain() > 0 ? model_.grain() : kStep);
}

Outcome Search::within(double penalty, const Apart& apart, const Crew& crew) const {
    const Walk root(model_, penalty, apart);
    if (root.bound() > penalty + kSlip) return {{}, true, true};
    const int parts = root.width();
    std::atomic<int> best{parts}; // the first part with an answer
    std::atomic<bool> cut{root.cut()};
    std::vector<Outcome> outcomes(static_cast<std::size_t>(parts));
    std::vector<std::unique_ptr<Walk>> walks(static_cast<std::size_t>(crew.size()));
    crew.work(0, parts, [&](int worker, int part) {
        if (part > best) return;
        auto& walk = walks[static_cast<std::size_t>(worker)];
        if (!walk) walk = std::make_unique<Walk>(root);
        Outcome& out = outcomes[static_cast<std::size_t>(part)];
        out = walk->from(part, [&] { return part > best || crew.stopped(); });
        if (out.cut) cut = true;
        for (int seen = best; out.found && part < seen;)
            if (best.compare_exchange_weak(seen, part)) break;
    });
    Outcome all;
    if (best < parts) all.found = outcomes[static_cast<std::size_t>(best.load())].found;
    all.complete = !crew.stopped();
    all.cut = cut;
    return all;
}

} // namespace bw::proposing
