// SPDX-License-Identifier: GPL-3.0-or-later
// The gym file: one SQLite database that holds everything of one gym. Changes go in as a list that
// is stored whole or not at all. One writer at a time; a second opener reads and is told who
// writes.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/result.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace bw {

// One thing put in (added or replaced by its id or month) or taken out.
struct PutSettings {
    GymSettings settings;
};
struct PutKit {
    KitItem item;
};
struct RemoveKit {
    KitId id;
};
struct PutExercise {
    Shelf::Entry exercise;
};
struct RemoveExercise {
    ExerciseId id;
};
struct PutBlock {
    Gym::BlockPtr block;
};
struct RemoveBlock {
    Month month;
};
struct PutMember {
    Member member;
};
struct RemoveMember {
    MemberId id;
}; // with all results
struct PutResult {
    LiftResult result;
};
struct RemoveResult {
    MemberId member;
    Date date;
    ExerciseId exercise;
    int set;
};
using Change = std::variant<PutSettings, PutKit, RemoveKit, PutExercise, RemoveExercise, PutBlock,
                            RemoveBlock, PutMember, RemoveMember, PutResult, RemoveResult>;

// Which results a visit takes; what is left empty takes all.
struct ResultQuery {
    std::vector<MemberId> members;
    std::vector<ExerciseId> exercises;
    std::optional<Date> from{};  // that day and later
    std::optional<Date> until{}; // that day and earlier
};

class GymFile {
public:
    enum class Access { Write, Read };

    // The file must not exist yet; missing folders are made. An interrupted creation leaves nothing
    // under that name.
    static Result<std::unique_ptr<GymFile>> create(const std::filesystem::path& path);
    // Refuses, untouched: a missing file, one that is not a gym file, a damaged one, a newer one.
    // An older one is copied beside itself, then brought up to date. When another process writes to
    // it, the file opens for reading and writer() says who.
    static Result<std::unique_ptr<GymFile>> open(const std::filesystem::path& path,
                                                 Access access = Access::Write);
    virtual ~GymFile() = default;

    [[nodiscard]] virtual const std::filesystem::path& path() const = 0;
    [[nodiscard]] virtual bool writable() const = 0;
    [[nodiscard]] virtual std::string
    writer() const = 0; // "Blockwright on HOST, process 123"; empty: we

    [[nodiscard]] virtual Result<Gym> load() = 0;
    // All or nothing. On failure (full disk, read-only, damage) nothing has changed and why() says
    // what happened, what was kept and what to do.
    [[nodiscard]] virtual Result<bool> apply(const std::vector<Change>& changes) = 0;

    // Calls for each result in order of member id, date, exercise id, set, until it returns false.
    // The visitor may read the file, not change it.
    [[nodiscard]] virtual Result<bool>
    eachResult(const std::function<bool(const LiftResult&)>& visit) = 0;
    [[nodiscard]] virtual Result<std::vector<LiftResult>> resultsOf(const MemberId& member) = 0;
    // Only the rows asked for are read. Dates ascend within a member and exercise; nothing more is
    // said of the order.
    [[nodiscard]] virtual Result<bool>
    eachResultOf(const ResultQuery& query, const std::function<bool(const LiftResult&)>& visit) = 0;
    // The day of the newest result; none when there is no result.
    [[nodiscard]] virtual Result<std::optional<Date>> newestResult() = 0;

    // A consistent copy under another name, which must not exist yet.
    [[nodiscard]] virtual Result<bool> copyTo(const std::filesystem::path& path) = 0;
};

// $BLOCKWRIGHT_HOME/gym.bwgym when that variable is set, else $XDG_DATA_HOME/blockwright/gym.bwgym,
// else ~/.local/share/blockwright/gym.bwgym.
[[nodiscard]] std::filesystem::path defaultGymPath();

} // namespace bw
