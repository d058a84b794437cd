// SPDX-License-Identifier: GPL-3.0-or-later
// The head counts per start group that give the lowest p90 finish, then the lowest mean wait, then
// the most even. Sections don't touch each other (SectionRun), so each is played alone, under each
// of its head counts, and finishes are sums. A head count is dropped as soon as so many of its runs
// are later than the best p90 known that its own must be; what is left is compared in full.
#pragma once
#include "core/floor/crew.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/section_run.hpp"

namespace bw {

class BestStart {
public:
    BestStart(const FloorPlan& plan, const FloorOptions& options, int members, Crew& crew);

    // None when stopped.
    [[nodiscard]] std::optional<FloorHeads> find();
    [[nodiscard]] int played() const { return played_; } // sections played so far

private:
    struct Played {
        Ticks length = 0, wait = 0;
    };
    struct Candidate {
        std::vector<int> heads, starts;
        std::vector<Played> runs; // the first so many
        int late = 0;             // of them, surely later than the limit
        bool out = false;
    };
    using Field = std::vector<Candidate>;    // of one section
    using Choice = std::vector<std::size_t>; // a candidate of each section
    struct Worth {
        Ticks p90 = 0, wait = 0;
        auto operator<=>(const Worth&) const = default;
    };
    struct Worker {
        Draws draws;
        FloorSteps steps;
        SectionRun run;
        ClassRecord record;
    };

    void listCandidates(int section);
    // Plays the runs up to `to` of those candidates for which `wanted` is true.
    template <class Wanted> void play(int to, Wanted wanted);
    void playRun(Worker& worker, int run, const std::vector<std::vector<Candidate*>>& due) const;
    void tightenLimit(int seen);
    void sieve(int from, int to);
    [[nodiscard]] std::vector<Ticks> quickest(int run) const;
    [[nodiscard]] std::size_t mostPromising(const Field& field, int seen) const;
    [[nodiscard]] Worth worthOf(const Choice& choice) const;
    [[nodiscard]] bool surelyWorse(const Choice& choice, Ticks p90) const;
    [[nodiscard]] Choice bestOfAll();
    [[nodiscard]] Choice bestOneByOne() const;
    [[nodiscard]] bool nextChoice(Choice& choice) const;
    [[nodiscard]] Ticks finishOf(const Choice& choice, int run) const;

    const FloorPlan& plan_;
    int members_, runs_;
    Crew& crew_;
    std::vector<Worker> workers_;
    std::vector<Field> fields_; // by section
    Ticks always_ = 0;          // opening, talks, closing
    Ticks limit_;               // the lowest p90 that some choice is known to have
    bool allTried_ = true;
    int played_ = 0;
};

} // namespace bw
