// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/almanac.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <tuple>
#include <unordered_map>

namespace bw {

namespace {
constexpr int kMostMonths = 1200;

// Months in a row, told month by month.
class Run {
public:
    int tell(Month month) {
        if (last_ != month) count_ = last_ && month.monthsSince(*last_) == 1 ? count_ + 1 : 1;
        last_ = month;
        return count_;
    }

private:
    std::optional<Month> last_;
    int count_ = 0;
};

// Exercises of a block, each once; true: as a main lift.
std::map<ExerciseId, bool> usesOf(const Block& block) {
    std::map<ExerciseId, bool> uses;
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise) uses[*slot.exercise] |= slot.main;
    return uses;
}

// Walks over the blocks, oldest first, and writes down what falls into view.
class Scribe {
public:
    Scribe(const Gym& gym, Month from, Month until) : gym_(gym), from_(from) {
        for (int n = 0; n <= until.monthsSince(from); ++n) {
            const auto block = gym.block(from.plus(n));
            almanac_.months.push_back(
                {from.plus(n), block, {}, block ? measureBalance(gym, *block) : Balance{}});
        }
        almanac_.window = measureBalance(gym, windowUntil(until));
        for (std::size_t f = 0; f < kCount<Format>; ++f)
            almanac_.formats.push_back(
                {static_cast<Format>(f), {}, std::vector<int>(almanac_.months.size(), 0)});
    }

    void read(const Block& block) {
        if (block.format) readFormat(*block.format, block.month);
        for (const auto& [exercise, main] : usesOf(block)) readUse(exercise, main, block.month);
        anyBefore_ = true;
    }

    Almanac done() {
        std::sort(almanac_.rows.begin(), almanac_.rows.end(), before);
        return std::move(almanac_);
    }

private:
    struct Runs {
        Run used, main;
    };

    [[nodiscard]] std::vector<const Block*> windowUntil(Month until) const {
        std::vector<const Block*> out;
        for (int n = 0; n < windowMonths(gym_.settings); ++n)
            if (const auto it = gym_.blocks.find(until.plus(-n)); it != gym_.blocks.end())
                out.push_back(it->second.get());
        return out;
    }

    // The month's column; none when it lies before the first one shown.
    [[nodiscard]] std::optional<std::size_t> column(Month month) const {
        if (month < from_) return std::nullopt;
        return static_cast<std::size_t>(month.monthsSince(from_));
    }

    void readFormat(Format format, Month month) {
        const auto f = static_cast<std::size_t>(format);
        almanac_.formats[f].last = month;
        const int streak = formatRuns_[f].tell(month);
        if (const auto c = column(month)) almanac_.formats[f].streaks[*c] = streak;
    }

    void readUse(const ExerciseId& exercise, bool main, Month month) {
        const auto [at, isNew] = rowOf_.try_emplace(exercise, almanac_.rows.size());
        if (isNew) {
            almanac_.rows.push_back({exercise, gym_.shelf.entry(exercise), month, month,
                                     std::vector<AlmanacCell>(almanac_.months.size())});
            runs_.emplace_back();
        }
        AlmanacRow& row = almanac_.rows[at->second];
        Runs& runs = runs_[at->second];
        row.last = month;
        const AlmanacCell cell{main, isNew && anyBefore_, runs.used.tell(month),
                               main ? runs.main.tell(month) : 0};
        const auto c = column(month);
        if (!c) return;
        row.cells[*c] = cell;
        if (cell.fresh) almanac_.months[*c].fresh.push_back(exercise);
    }

    static bool before(const AlmanacRow& a, const AlmanacRow& b) {
        const auto place = [](const AlmanacRow& row) {
            const auto pattern = row.pattern();
            return pattern ? static_cast<std::size_t>(*pattern) : kCount<Pattern>;
        };
        return std::tuple(place(a), std::string_view(a.name()),
                          std::string_view(a.exercise.text())) <
               std::tuple(place(b), std::string_view(b.name()),
                          std::string_view(b.exercise.text()));
    }

    const Gym& gym_;
    Month from_;
    Almanac almanac_;
    std::unordered_map<ExerciseId, std::size_t> rowOf_;
    std::vector<Runs> runs_; // by row, as long as the rows are not sorted
    std::array<Run, kCount<Format>> formatRuns_;
    bool anyBefore_ = false;
};
} // namespace

std::optional<Pattern> AlmanacRow::pattern() const {
    if (!entry || entry->patterns.none()) return std::nullopt;
    return entry->patterns.largest();
}
const std::string& AlmanacRow::name() const { return entry ? entry->name : exercise.text(); }
bool AlmanacRow::usedInView() const {
    return std::any_of(cells.begin(), cells.end(), [](const AlmanacCell& c) { return c.used(); });
}

Almanac almanac(const Gym& gym, const AlmanacOptions& options) {
    if (gym.blocks.empty()) return {};
    const Month until = options.until.value_or(gym.blocks.rbegin()->first);
    const Month first = std::min(gym.blocks.begin()->first, until);
    const int wanted = options.months > 0 ? std::min(options.months, kMostMonths) : kMostMonths;
    Scribe scribe(gym, std::max(first, until.plus(1 - wanted)), until);
    for (const auto& [month, block] : gym.blocks)
        if (month <= until) scribe.read(*block);
    return scribe.done();
}

} // namespace bw
