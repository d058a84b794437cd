// SPDX-License-Identifier: GPL-3.0-or-later
#include "ten_years.hpp"

#include "interchange/bundle.hpp"
#include "store/gym_file.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

namespace bw::test {

namespace fs = std::filesystem;

namespace {
constexpr const char* kName = "ten-years-2.bwgym"; // another number when what is made changes
constexpr int kLeast = 40, kMost = 60, kDays[] = {1, 3, 5, 8, 10, 12, 15, 17, 19, 22, 24, 26};

[[noreturn]] void giveUp(const Message& why) {
    std::fprintf(stderr, "%s\n", why.english().c_str());
    std::_Exit(2);
}

// Of exercises: what may stand in for another in a slot, so that ten years use most of the Shelf.
bool alike(const Exercise& a, const Exercise& b) {
    return a.patterns.largest() == b.patterns.largest() && a.pace.usual() == b.pace.usual() &&
           a.load == b.load && !a.retired && !b.retired && !a.roles.empty() && !b.roles.empty() &&
           a.roles.front() == b.roles.front();
}

class Years {
public:
    explicit Years(GymFile& file) : file_(file) {
        layOver(gym_, shippedShelf());
        const auto text = readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json");
        layOver(gym_, *readBundle(text, &gym_).bundle);
        for (const auto& entry : gym_.blocks) demo_.push_back(entry.second);
    }

    void make() {
        store(ground());
        const int done = kYearsMonths - 1;
        for (int i = 0; i < done; ++i) {
            std::vector<Change> changes = comeAndGo();
            const Gym::BlockPtr block = blockOf(i);
            changes.emplace_back(PutBlock{block});
            const auto quota = [&](int month) {
                return static_cast<int>(static_cast<std::int64_t>(kYearsSets) * month / done);
            };
            addResults(changes, *block, quota(i + 1) - quota(i));
            store(changes);
        }
        store({PutBlock{blockOf(done)}});
    }

private:
    struct Lifter {
        Member member;
        int strength; // kg that a middling lift begins with
        int since = 0;
    };
    struct Lift {
        ExerciseId id;
        int reps, tenths; // of the member's strength
        bool loaded;
    };

    int draw(int below) { return static_cast<int>(engine_() % static_cast<unsigned>(below)); }
    void store(const std::vector<Change>& changes) {
        if (const auto done = file_.apply(changes); !done) giveUp(done.why());
    }

    std::vector<Change> ground() const {
        std::vector<Change> out{PutSettings{gym_.settings}};
        for (const KitItem& k : gym_.kit) out.emplace_back(PutKit{k});
        for (const auto& e : gym_.shelf.entries()) out.emplace_back(PutExercise{e});
        return out;
    }

    Lifter join() {
        const int number = ++joined_;
        Member one{MemberId::parse("y-" + std::to_string(1000 + number)).value(),
                   "Member " + std::to_string(number),
                   {},
                   true,
                   {}};
        if (number % 8 == 0) one.flags = {{Demand::Overhead, FlagLevel::Limit, {}, {}}};
        if (number % 13 == 0) one.flags.push_back({Demand::Knee, FlagLevel::Limit, {}, {}});
        return {std::move(one), 20 + draw(50)};
    }

    // The first month brings 48; then a few go and a few come.
    std::vector<Change> comeAndGo() {
        std::vector<Change> out;
        int go = lifters_.empty() ? 0 : draw(4);
        int come = lifters_.empty() ? 48 : draw(4);
        for (; go > 0 && lifters_.size() > kLeast; --go) {
            const auto at = lifters_.begin() + draw(static_cast<int>(lifters_.size()));
            at->member.active = false;
            out.emplace_back(PutMember{at->member});
            lifters_.erase(at);
        }
        for (; come > 0 && lifters_.size() < kMost; --come) {
            lifters_.push_back(join());
            out.emplace_back(PutMember{lifters_.back().member});
        }
        return out;
    }

    // The demo's months over and over, the last round as it is, each before with other exercises.
    Gym::BlockPtr blockOf(int index) const {
        const int count = static_cast<int>(demo_.size()), back = kYearsMonths - 1 - index;
        auto block =
            std::make_shared<Block>(*demo_[static_cast<std::size_t>(count - 1 - back % count)]);
        block->month = demo_.back()->month.plus(-back);
        if (const int rounds = back / count; rounds > 0) {
            block->accepted.clear();
            for (Section& s : block->sections)
                for (Group& g : s.groups)
                    for (Slot& slot : g.slots)
                        if (slot.exercise) slot.exercise = another(*slot.exercise, rounds);
        }
        return block;
    }
    ExerciseId another(const ExerciseId& id, int further) const {
        const Exercise* drafted = gym_.shelf.find(id);
        if (!drafted) return id;
        std::vector<ExerciseId> fit;
        std::size_t at = 0;
        for (const auto& e : gym_.shelf.entries()) {
            if (e->id == id) at = fit.size();
            if (e->id == id || alike(*e, *drafted)) fit.push_back(e->id);
        }
        return fit[(at + static_cast<std::size_t>(further)) % fit.size()];
    }

    std::vector<Lift> liftsOf(const Block& block) const {
        std::vector<Lift> out;
        for (const Section& s : block.sections)
            for (const Group& g : s.groups)
                for (const Slot& slot : g.slots) {
                    const Exercise* e = slot.exercise ? gym_.shelf.find(*slot.exercise) : nullptr;
                    if (!e || !slot.dose || e->pace.usual() != Measure::Reps) continue;
                    if (s.kind != SectionKind::Strength && s.kind != SectionKind::Power) continue;
                    const auto same = [&](const Lift& l) { return l.id == e->id; };
                    if (std::any_of(out.begin(), out.end(), same)) continue;
                    out.push_back({e->id, std::max(1, static_cast<int>(slot.dose->amount().lo())),
                                   4 + static_cast<int>(e->id.text().size() % 9),
                                   e->load.text() != "bodyweight"});
                }
        return out;
    }

    void addResults(std::vector<Change>& out, const Block& block, int sets) {
        const std::vector<Lift> lifts = liftsOf(block);
        struct Visit {
            Date date;
            std::size_t lifter;
        };
        std::vector<Visit> visits;
        for (const int day : kDays)
            for (std::size_t m = 0; m < lifters_.size(); ++m)
                if (draw(8) > 0)
                    visits.push_back(
                        {Date::of(block.month.year(), block.month.month(), day).value(), m});
        for (std::size_t v = 0; v < visits.size(); ++v) {
            const int here = sets / static_cast<int>(visits.size() - v);
            sets -= here;
            addVisit(out, lifters_[visits[v].lifter], visits[v].date, lifts, here);
        }
        for (Lifter& l : lifters_) ++l.since;
    }
    // The first set of every exercise, then the second, and so on.
    void addVisit(std::vector<Change>& out, const Lifter& who, Date date,
                  const std::vector<Lift>& lifts, int sets) {
        for (int i = 0; i < sets; ++i) {
            const Lift& lift = lifts[static_cast<std::size_t>(i) % lifts.size()];
            LiftResult r{who.member.id,
                         date,
                         lift.id,
                         i / static_cast<int>(lifts.size()) + 1,
                         lift.reps + draw(2),
                         Rir::of(draw(4)).value(),
                         {},
                         {}};
            const int kg = who.strength * lift.tenths / 8 + who.since / 3 + draw(4);
            if (lift.loaded) r.load = Mass::fromKg(std::max(4, kg / 2 * 2)).value();
            out.emplace_back(PutResult{std::move(r)});
        }
    }

    GymFile& file_;
    Gym gym_;
    std::vector<Gym::BlockPtr> demo_;
    std::vector<Lifter> lifters_; // who come
    std::mt19937 engine_{20261126};
    int joined_ = 0;
};

fs::path cacheFolder() {
    const auto variable = [](const char* name) {
        const char* value = std::getenv(name);
        return fs::path(value ? value : "");
    };
    if (const fs::path given = variable("BLOCKWRIGHT_BENCH_CACHE"); !given.empty()) return given;
    const fs::path cache = variable("XDG_CACHE_HOME");
    return (cache.is_absolute() ? cache : variable("HOME") / ".cache") / "blockwright-bench";
}

// Under another name first: one that was ended in the middle is no ten years.
void make(const fs::path& path) {
    const fs::path half = path.string() + ".part";
    for (const char* ending : {"", "-wal", "-shm", ".lock"}) fs::remove(half.string() + ending);
    auto file = GymFile::create(half);
    if (!file) giveUp(file.why());
    Years(**file).make();
    file = Message{};
    fs::rename(half, path);
    fs::remove(half.string() + ".lock");
}
} // namespace

fs::path tenYears() {
    const fs::path path = cacheFolder() / kName;
    if (fs::exists(path)) return path;
    std::fprintf(stderr, "Making %s, once: three million sets, a minute or more.\n", path.c_str());
    fs::create_directories(path.parent_path());
    const pid_t child = ::fork();
    if (child == 0) {
        make(path);
        std::_Exit(0);
    }
    int status = 1;
    ::waitpid(child, &status, 0);
    if (status != 0) std::exit(2);
    return path;
}

} // namespace bw::test
