// SPDX-License-Identifier: GPL-3.0-or-later
#include "gyms.hpp"

#include "support/catch.hpp"

namespace bw::test {

std::vector<Change> changesFor(const Gym& gym) {
    std::vector<Change> changes{PutSettings{gym.settings}};
    for (const auto& item : gym.kit) changes.emplace_back(PutKit{item});
    for (const auto& exercise : gym.shelf.entries()) changes.emplace_back(PutExercise{exercise});
    for (const auto& [month, block] : gym.blocks) changes.emplace_back(PutBlock{block});
    for (const auto& member : gym.members) changes.emplace_back(PutMember{member});
    return changes;
}

std::string difference(const Gym& a, const Gym& b) {
    if (a.settings != b.settings) return "settings";
    if (a.kit != b.kit) return "kit";
    if (a.members != b.members) return "members";
    if (a.shelf.size() != b.shelf.size()) return "length of the shelf";
    for (std::size_t i = 0; i < a.shelf.size(); ++i)
        if (*a.shelf.entries()[i] != *b.shelf.entries()[i])
            return "exercise " + a.shelf.entries()[i]->id.text();
    if (a.blocks.size() != b.blocks.size()) return "number of blocks";
    for (const auto& [month, block] : a.blocks)
        if (const auto other = b.block(month); !other || *other != *block)
            return "block " + month.text();
    return {};
}

namespace {
template <class T> T require(Result<T> result) {
    if (!result) FAIL(result.why().english());
    return std::move(result).value();
}
} // namespace

std::unique_ptr<GymFile> made(const std::filesystem::path& path) {
    return require(GymFile::create(path));
}
std::unique_ptr<GymFile> opened(const std::filesystem::path& path, GymFile::Access access) {
    return require(GymFile::open(path, access));
}
Gym loaded(const std::filesystem::path& path) {
    return require(opened(path, GymFile::Access::Read)->load());
}
std::vector<LiftResult> allResults(GymFile& file) {
    std::vector<LiftResult> results;
    require(file.eachResult([&](const LiftResult& r) {
        results.push_back(r);
        return true;
    }));
    return results;
}
void put(GymFile& file, const std::vector<Change>& changes) { require(file.apply(changes)); }

} // namespace bw::test
