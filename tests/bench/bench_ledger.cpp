// SPDX-License-Identifier: GPL-3.0-or-later
// How fast the ledger answers from a gym file of 400 members and ten years, three million results:
// the page of one member with every estimate over time, the grid of a class (last time and target
// of every slot), and everybody's targets for the month. Each with the file as the system left it
// in its cache. Prints milliseconds and how much memory the answers took; ends with 1 when a mark
// named in kMost... is missed by the time of the processor (the time on the wall also has what else
// the machine does).
#include "blockwright/ledger/target.hpp"
#include "blockwright/ramp/session_load.hpp"
#include "desk/ledger/class_day.hpp"
#include "desk/ledger/member_story.hpp"
#include "interchange/bundle.hpp"
#include "store/gym_file.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <functional>
#include <random>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostMsOfPage = 50, kMostMsOfGrid = 50, kMostMsOfAll = 1000, kMostMsOfDrag = 8,
                 kMostMegabytes = 64;
constexpr int kMembers = 400, kYears = 10, kResultsEach = 7500, kSets = 5;
constexpr std::size_t kExercises = 30; // the month's, and others

MemberId member(int n) { return MemberId::parse("m-" + std::to_string(1000 + n)).value(); }
Date today() { return Date::of(2026, 11, 25).value(); }

Gym demo() {
    Gym gym;
    layOver(gym,
            *readBundle(readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"), &gym)
                 .bundle);
    gym.members.clear();
    for (int m = 0; m < kMembers; ++m) {
        Member one{member(m), "Member " + std::to_string(m), {}, true, {}};
        if (m % 10 == 0) one.flags = {{Demand::Overhead, FlagLevel::Limit, {}, {}}};
        gym.put(std::move(one));
    }
    return gym;
}

std::vector<ExerciseId> lifted(const Gym& gym) {
    std::set<ExerciseId> ids;
    for (const auto& entry : gym.blocks)
        for (const Section& s : entry.second->sections)
            for (const Group& g : s.groups)
                for (const Slot& slot : g.slots)
                    if (slot.exercise && s.kind == SectionKind::Strength)
                        ids.insert(*slot.exercise);
    std::vector<ExerciseId> out = MonthTargets(gym, *gym.latest()).exercises();
    for (const ExerciseId& id : ids)
        if (out.size() < kExercises && std::find(out.begin(), out.end(), id) == out.end())
            out.push_back(id);
    return out;
}

void require(const Result<bool>& done) {
    if (done.ok()) return;
    std::fprintf(stderr, "%s\n", done.why().english().c_str());
    std::exit(2);
}

// Each member's ten years, a few members in one transaction.
void fill(GymFile& file, const std::vector<ExerciseId>& exercises) {
    std::mt19937 engine(20261125);
    const auto draw = [&](std::uint32_t below) { return static_cast<int>(engine() % below); };
    constexpr int kVisits = kResultsEach / kSets;
    for (int m = 0; m < kMembers; ++m) {
        std::vector<Change> changes;
        for (int v = 0; v < kVisits; ++v) {
            const Date date = today().plusDays(-v * 365 * kYears / kVisits);
            for (int i = 0; i < kSets; ++i) {
                const auto at = static_cast<std::size_t>(v * 2 + i / 2) % exercises.size();
                changes.emplace_back(PutResult{{member(m),
                                                date,
                                                exercises[at],
                                                i % 2 + 1,
                                                5 + draw(4),
                                                Rir::of(draw(5)).value(),
                                                Mass::fromKg(40 + 2.5 * draw(8)).value(),
                                                {}}});
            }
        }
        require(file.apply(changes));
    }
}

// In a process of its own, so that this one's memory is that of the answers.
void makeFile(const std::filesystem::path& path, const Gym& gym) {
    const pid_t child = ::fork();
    if (child == 0) {
        auto file = GymFile::create(path);
        if (!file) std::_Exit(2);
        std::vector<Change> changes{PutSettings{gym.settings}};
        for (const KitItem& k : gym.kit) changes.emplace_back(PutKit{k});
        for (const auto& e : gym.shelf.entries()) changes.emplace_back(PutExercise{e});
        for (const auto& b : gym.blocks) changes.emplace_back(PutBlock{b.second});
        for (const Member& m : gym.members) changes.emplace_back(PutMember{m});
        require((*file)->apply(changes));
        fill(**file, lifted(gym));
        file = Message{};
        std::_Exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    if (status != 0) std::exit(2);
}

// The most that this process has taken since forgetPeak().
double peakMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:")) return std::strtod(line.c_str() + 6, nullptr) / 1024;
    return 0;
}
void forgetPeak() { std::ofstream("/proc/self/clear_refs") << 5; }

struct Took {
    double wall = 0, processor = 0; // milliseconds
};
// The median of five by the processor.
Took timed(const std::function<void()>& work) {
    std::vector<Took> took;
    for (int i = 0; i < 5; ++i) {
        const auto start = std::chrono::steady_clock::now();
        const auto ticks = std::clock();
        work();
        const std::chrono::duration<double, std::milli> wall =
            std::chrono::steady_clock::now() - start;
        took.push_back(
            {wall.count(), 1000.0 * static_cast<double>(std::clock() - ticks) / CLOCKS_PER_SEC});
    }
    std::sort(took.begin(), took.end(),
              [](const Took& x, const Took& y) { return x.processor < y.processor; });
    return took[2];
}

void page(const Gym& gym, GymFile& file) {
    std::map<ExerciseId, std::vector<LiftResult>> lines;
    Ledger ledger(gym, today());
    require(file.eachResultOf({{member(7)}, {}, {}}, [&](const LiftResult& r) {
        lines[r.exercise].push_back(r);
        ledger.add(r);
        return true;
    }));
    std::size_t days = 0, steps = 0;
    for (const auto& [id, results] : lines) {
        days += overTime(gym, results).size();
        const Exercise* e = gym.shelf.find(id);
        if (e && nextTime(gym, ledger, *gym.findMember(member(7)), *e)) ++steps;
    }
    if (days < 1000 || steps < 20) std::exit(2);
}

void grid(const Gym& gym, GymFile& file, int members) {
    std::vector<MemberId> ids;
    for (int m = 0; m < members; ++m) ids.push_back(member(m));
    MonthTargets targets(gym, *gym.latest());
    Ledger ledger(gym, today());
    require(
        file.eachResultOf({ids, targets.exercises(), ledger.earliest()}, [&](const LiftResult& r) {
            ledger.add(r);
            return true;
        }));
    std::size_t slots = 0;
    for (const MemberId& id : ids) slots += targets.of(ledger, *gym.findMember(id)).size();
    if (slots < static_cast<std::size_t>(14 * members)) std::exit(2);
}

// What the Ledger screen reads for the rows that it shows, and who came.
void deskGrid(const Gym& gym, GymFile& file, int members) {
    std::vector<MemberId> ids;
    for (int m = 0; m < members; ++m) ids.push_back(member(m));
    ClassDay day(gym, Date::of(2026, 11, 23).value(), true);
    require(day.readCame(file));
    require(day.read(file, ids));
    for (const MemberId& id : ids)
        if (!day.row(id) || day.row(id)->cells.size() < 8) std::exit(2);
}

// The member beside it: the first, who has a flag.
void deskMember(const std::shared_ptr<const Gym>& gym, GymFile& file) {
    const Gym::BlockPtr block = gym->latest();
    const auto story = tellOf(file, {gym, member(0), {}, {}, today(), block});
    if (!story || story->days.size() < 50) std::exit(2);
}

// One member's part of the Stair: the results as far back as the gym looks, targets and loads.
struct Stair {
    Ledger ledger;
    std::vector<LiftResult> results;
};
Stair readStair(const Gym& gym, GymFile& file) {
    Stair out{Ledger(gym, today()), {}};
    require(file.eachResultOf({{member(7)}, {}, out.ledger.earliest()}, [&](const LiftResult& r) {
        out.ledger.add(r);
        out.results.push_back(r);
        return true;
    }));
    return out;
}
// As each move of a dragged step asks it anew.
void answerStair(const Gym& gym, const Stair& stair) {
    const Block& block = *gym.latest();
    const auto slots = MonthTargets(gym, block).of(stair.ledger, *gym.findMember(member(7)));
    const auto weeks = memberLoads(gym, block, stair.results);
    if (slots.size() < 14 || weeks.size() != block.stair.size()) std::exit(2);
}

bool tell(const char* what, Took took, double most) {
    std::printf("%-34s %8.1f ms (%.1f ms of the processor)\n", what, took.wall, took.processor);
    return took.processor <= most;
}
} // namespace

int main() {
    const TempFolder folder;
    const auto path = folder / "ten years.bwgym";
    const Gym gym = demo();
    makeFile(path, gym);
    auto opened = GymFile::open(path, GymFile::Access::Read);
    if (!opened) return 2;
    GymFile& file = **opened;
    forgetPeak();
    const double before = peakMegabytes();
    bool good = tell("page of one member", timed([&] { page(gym, file); }), kMostMsOfPage);
    const auto kept = std::make_shared<const Gym>(gym);
    good &=
        tell("screen: grid of 12 members", timed([&] { deskGrid(gym, file, 12); }), kMostMsOfGrid);
    good &=
        tell("screen: grid of 24 members", timed([&] { deskGrid(gym, file, 24); }), kMostMsOfGrid);
    good &= tell("screen: one member", timed([&] { deskMember(kept, file); }), kMostMsOfPage);
    good &= tell("grid of 12 members", timed([&] { grid(gym, file, 12); }), kMostMsOfGrid);
    good &= tell("grid of 40 members", timed([&] { grid(gym, file, 40); }), kMostMsOfGrid);
    good &= tell("targets of 400 members", timed([&] { grid(gym, file, kMembers); }), kMostMsOfAll);
    good &= tell("stair of one member", timed([&] { answerStair(gym, readStair(gym, file)); }),
                 kMostMsOfPage);
    const Stair stair = readStair(gym, file);
    good &=
        tell("the same for another draft", timed([&] { answerStair(gym, stair); }), kMostMsOfDrag);
    const double grown = peakMegabytes() - before;
    std::printf("%-34s %8.1f MB\n", "memory of the answers", grown);
    return good && grown <= kMostMegabytes ? 0 : 1;
}
