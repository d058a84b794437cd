// SPDX-License-Identifier: GPL-3.0-or-later
// A gym file that is only memory, and can be told to refuse the next change.
#pragma once
#include "edit/changes.hpp"
#include "store/gym_file.hpp"

#include <algorithm>
#include <memory>
#include <tuple>

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
        for (const Change& c : changes) {
            applyTo(stored, c);
            applyToResults(c);
        }
        return true;
    }
    [[nodiscard]] Result<bool>
    eachResult(const std::function<bool(const LiftResult&)>& visit) override {
        return eachResultOf({}, visit);
    }
    [[nodiscard]] Result<std::vector<LiftResult>> resultsOf(const MemberId& member) override {
        std::vector<LiftResult> out;
        (void)eachResultOf({{member}, {}, {}}, [&](const LiftResult& r) {
            out.push_back(r);
            return true;
        });
        return out;
    }
    [[nodiscard]] Result<bool>
    eachResultOf(const ResultQuery& query,
                 const std::function<bool(const LiftResult&)>& visit) override {
        ++queries;
        const auto takes = [](const auto& asked, const auto& id) {
            return asked.empty() || std::find(asked.begin(), asked.end(), id) != asked.end();
        };
        for (const LiftResult& r : results)
            if (takes(query.members, r.member) && takes(query.exercises, r.exercise) &&
                (!query.from || r.date >= *query.from) &&
                (!query.until || r.date <= *query.until) && !visit(r))
                break;
        return true;
    }
    [[nodiscard]] Result<std::optional<Date>> newestResult() override {
        std::optional<Date> newest;
        for (const LiftResult& r : results) newest = newest ? std::max(*newest, r.date) : r.date;
        return newest;
    }
    [[nodiscard]] Result<bool> copyTo(const std::filesystem::path&) override { return true; }

    Gym stored;
    std::vector<LiftResult> results; // in order of date once one was put in
    bool full = false;
    int queries = 0;

private:
    static auto keyOf(const LiftResult& r) { return std::tie(r.date, r.member, r.exercise, r.set); }
    void applyToResults(const Change& change) {
        if (const auto* put = std::get_if<PutResult>(&change)) {
            std::erase_if(results, [&](auto& r) { return keyOf(r) == keyOf(put->result); });
            results.push_back(put->result);
            std::sort(results.begin(), results.end(),
                      [](auto& a, auto& b) { return keyOf(a) < keyOf(b); });
        } else if (const auto* out = std::get_if<RemoveResult>(&change)) {
            std::erase_if(results, [&](auto& r) {
                return keyOf(r) == std::tie(out->date, out->member, out->exercise, out->set);
            });
        } else if (const auto* gone = std::get_if<RemoveMember>(&change)) {
            std::erase_if(results, [&](auto& r) { return r.member == gone->id; });
        }
    }
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
