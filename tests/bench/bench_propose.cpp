// SPDX-License-Identifier: GPL-3.0-or-later
// How long proposals take, and how far they are proved: on each of the demo's months with the
// demo's Shelf, members and kit, one slot open, then six, then the whole session; one core. Prints
// the worst of each in processor time, and ends with 1 when a mark is missed.
#include "blockwright/propose/propose.hpp"
#include "interchange/bundle.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <thread>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostMsOfOne = 30, kMostMsOfFirst = 200;
constexpr double kMostGapOfSix = 0.05; // of the penalty, after a second

Gym demo() {
    Gym gym;
    layOver(gym,
            *readBundle(readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"), &gym)
                 .bundle);
    return gym;
}

std::vector<Place> slotsOf(const Block& block) {
    std::vector<Place> out;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
        for (int g = 0; g < static_cast<int>(sectionAt(block, {s})->groups.size()); ++g)
            for (int i = 0; i < static_cast<int>(groupAt(block, {s, g})->slots.size()); ++i)
                out.push_back({s, g, i});
    return out;
}

// So many slots of a month opened, evenly; their doses kept or not.
Block opened(const Block& month, std::size_t slots, bool doses) {
    Block draft = month;
    const auto all = slotsOf(draft);
    slots = std::min(slots, all.size());
    for (std::size_t i = 0; i < slots; ++i) {
        Slot& slot = *slotAt(draft, all[i * all.size() / slots]);
        slot.exercise.reset();
        slot.locked = false;
        if (!doses) slot.dose.reset();
    }
    return draft;
}

double spent() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

struct Worst {
    int asked = 0, proved = 0;
    double worst = 0, first = 0, gap = 0; // milliseconds; gap as a share of the penalty
};

void measure(const Gym& gym, const Block& draft, double most, Worst& out) {
    std::stop_source end;
    const std::jthread timer([&](const std::stop_token& done) {
        const double until = spent() + most;
        while (!done.stop_requested() && spent() < until)
            std::this_thread::sleep_for(std::chrono::milliseconds{2});
        end.request_stop();
    });
    const double start = spent();
    double first = 0;
    ProposeOptions options;
    options.floor.emplace(); // as the program asks: the classes will be played
    const auto answer = propose(gym, draft, options, end.get_token(), [&](double, double) {
        if (first <= 0) first = spent() - start;
    });
    if (!answer) std::abort();
    out.asked += 1;
    out.proved += answer->provedBest() ? 1 : 0;
    out.worst = std::max(out.worst, spent() - start);
    out.first = std::max(out.first, first);
    const double gap = answer->gap() / std::max(1.0, answer->answers.front().penalty);
    out.gap = std::max(out.gap, gap);
    if (std::getenv("BLOCKWRIGHT_BENCH_ALL"))
        std::printf("  %s: %.0f ms, first %.0f ms, penalty %g, bound %g\n",
                    draft.month.text().c_str(), spent() - start, first,
                    answer->answers.front().penalty, answer->bound);
}

Worst measureAll(const Gym& gym, std::size_t slots, bool doses, double most) {
    Worst out;
    for (const auto& month : gym.blocks)
        measure(gym, opened(*month.second, slots, doses), most, out);
    std::printf("%2zu open, %s doses: %d of %d proved, worst %.0f ms, first answer %.0f ms, "
                "largest gap %.1f %%\n",
                slots, doses ? "with" : "without", out.proved, out.asked, out.worst, out.first,
                100 * out.gap);
    return out;
}
} // namespace

int main() {
    const Gym gym = demo();
    bool good = true;
    for (const bool doses : {true, false}) {
        const Worst one = measureAll(gym, 1, doses, 1000);
        const Worst six = measureAll(gym, 6, doses, 1000);
        const Worst all = measureAll(gym, 99, doses, 3000);
        good = good && one.worst <= kMostMsOfOne && six.gap <= kMostGapOfSix &&
               all.first <= kMostMsOfFirst;
    }
    return good ? 0 : 1;
}
