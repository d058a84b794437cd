// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals against a general solver (MiniZinc with Gecode) on the same model, the one that
// tests/reference holds them to: demo months with six slots open, the demo's Shelf, members and
// kit. Processor time of each, the solver's with its start; ends with 1 when an answer is not the
// same, or the program is not so many times as fast.
#include "blockwright/propose/propose.hpp"
#include "interchange/bundle.hpp"
#include "reference/proposals/tables.hpp"
#include "support/fixtures.hpp"

#include <cmath>
#include <cstdio>
#include <sys/resource.h>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kLeastRatio = 20;
constexpr int kMostSeconds = 60;
constexpr std::size_t kOpen = 6;

double seconds(int whose) {
    rusage use{};
    getrusage(whose, &use);
    const auto of = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return of(use.ru_utime) + of(use.ru_stime);
}

Gym demo() {
    Gym gym;
    layOver(gym,
            *readBundle(readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"), &gym)
                 .bundle);
    return comparable(std::move(gym));
}

Block opened(Block draft) {
    std::vector<Slot*> all;
    for (Section& section : draft.sections)
        for (Group& group : section.groups)
            for (Slot& slot : group.slots) all.push_back(&slot);
    for (std::size_t i = 0; i < kOpen; ++i) {
        Slot& slot = *all[i * all.size() / kOpen];
        slot.exercise.reset();
        slot.locked = false;
    }
    draft.accepted.clear();
    return draft;
}

struct Total {
    double program = 0, solver = 0;
    int proved = 0, asked = 0;
    bool same = true;
};

void measure(const Gym& gym, const Block& draft, const TempFolder& folder, Total& total) {
    const Seating seating = seatingOf(gym, draft);
    const std::string data = dataOf(gym, draft, seating);
    const double start = seconds(RUSAGE_SELF);
    const auto proposal = propose(gym, draft, {.answers = 1});
    const double program = seconds(RUSAGE_SELF) - start;
    const double before = seconds(RUSAGE_CHILDREN);
    const auto solved = solve(folder.path(), draft.month.text(), seating, data, kMostSeconds);
    const double solver = seconds(RUSAGE_CHILDREN) - before;
    if (!proposal || !solved) return void(total.same = false);
    const double penalty = proposal->answers.front().penalty;
    std::printf("%s: penalty %g in %.0f ms; solver %g in %.1f s%s\n", draft.month.text().c_str(),
                penalty, 1000 * program, solved->penalty, solver,
                solved->proved ? "" : ", not proved");
    std::fflush(stdout);
    const bool same = proposal->provedBest() && std::abs(penalty - solved->penalty) < 1e-9;
    total.same = total.same && (same || (!solved->proved && penalty <= solved->penalty));
    total.program += program;
    total.solver += solver;
    total.proved += solved->proved ? 1 : 0;
    ++total.asked;
}
} // namespace

int main() {
    if (!hasMiniZinc()) {
        std::puts("MiniZinc with Gecode is not installed (Debian: minizinc, flatzinc).");
        return 0;
    }
    const Gym gym = demo();
    const TempFolder folder;
    Total total;
    for (const auto& [month, block] : gym.blocks) measure(gym, opened(*block), folder, total);
    const double ratio = total.solver / total.program;
    std::printf("the solver proved %d of %d; the program is %.0f times as fast\n", total.proved,
                total.asked, ratio);
    return total.same && ratio >= kLeastRatio ? 0 : 1;
}
