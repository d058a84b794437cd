// SPDX-License-Identifier: GPL-3.0-or-later
// A gym file that is only memory, and can be told to refuse the next change.
#pragma once
#include "edit/changes.hpp"
#include "store/gym_file.hpp"

#include <memory>

namespace bw::test {

class MemoryFile : public GymFile {
public:
    explicit MemoryFile(Gym gym) : stored(std::move(gym)) {}
    [[nodiscard]] const std::filesystem::path& path() const override { return path_; }
    [[nodiscard]] bool writable() const override { return true; }
    [[nodiscard]] std::string writer() const override { return {}; }
    [[nodiscard]] Result<Gym> load() override { return stored; }
    [[nodiscard]] Result<bool> apply(const std::vector<Change>& changes) override {
        if (full) return Message{"The disk is full.", {}};
        for (const Change& c : changes) applyTo(stored, c);
        return true;
    }
    [[nodiscard]] Result<bool> eachResult(const std::function<bool(const LiftResult&)>&) override {
        return true;
    }
    [[nodiscard]] Result<std::vector<LiftResult>> resultsOf(const MemberId&) override {
        return std::vector<LiftResult>{};
    }
    [[nodiscard]] Result<bool>
    eachResultOf(const ResultQuery&, const std::function<bool(const LiftResult&)>& visit) override {
        for (const LiftResult& result : results)
            if (!visit(result)) break;
        return true;
    }
    [[nodiscard]] Result<std::optional<Date>> newestResult() override {
        return std::optional<Date>{};
    }
    [[nodiscard]] Result<bool> copyTo(const std::filesystem::path&) override { return true; }

    Gym stored;
    std::vector<LiftResult> results; // all of them for every query
    bool full = false;

private:
    std::filesystem::path path_ = "memory.bwgym";
};

// All that undo must bring back.
inline bool sameMonths(const Gym& a, const Gym& b) {
    if (a.blocks.size() != b.blocks.size()) return false;
    for (const auto& [m, block] : a.blocks)
        if (!b.block(m) || !(*b.block(m) == *block)) return false;
    return a.settings == b.settings && a.kit == b.kit && a.members == b.members &&
           a.shelf.size() == b.shelf.size();
}

} // namespace bw::test
