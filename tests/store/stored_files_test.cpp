// SPDX-License-Identifier: GPL-3.0-or-later
// A stored file of every released version opens, and holds what was put into it.
#include "gyms.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"
#include "version1_gym.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
fs::path stored(int version) {
    return fs::path(BW_SOURCE_DIR) / "tests/store/files" /
           ("v" + std::to_string(version) + ".bwgym.bin");
}

// That of version 1, with findings that were accepted.
Gym version2Gym() {
    Gym gym = version1Gym();
    Block block = *gym.block(month("2026-09"));
    block.accepted = {{"superset-work",
                       "group strength goblet-squat sled-push",
                       "",
                       Level::Look,
                       134.5,
                       {60, 120, true},
                       "Two benches: we talk them through.",
                       {}},
                      {"push-pull",
                       "session",
                       "block",
                       Level::Note,
                       {},
                       {1, 1, false},
                       "May.",
                       {R"({"by":"Wren"})"}}};
    gym.put(block);
    return gym;
}
} // namespace

TEST_CASE("a gym file of version 1 opens and holds what was put into it") {
    const TempFolder folder;
    fs::copy_file(stored(1), folder / "a.bwgym");
    const auto file = opened(folder / "a.bwgym");
    CHECK(file->writable());
    CHECK(difference(file->load().value(), version1Gym()).empty());
    CHECK(allResults(*file) == version1Results());
    put(*file, {RemoveBlock{month("2026-10")}});
    CHECK(file->load()->blocks.size() == 1);
}

TEST_CASE("a gym file of version 2 opens and holds what was put into it") {
    const TempFolder folder;
    fs::copy_file(stored(2), folder / "a.bwgym");
    const auto file = opened(folder / "a.bwgym");
    CHECK(difference(file->load().value(), version2Gym()).empty());
    CHECK(allResults(*file) == version1Results());
}

TEST_CASE("a gym file of version 3 opens and holds what was put into it") {
    const TempFolder folder;
    fs::copy_file(stored(3), folder / "a.bwgym");
    const auto file = opened(folder / "a.bwgym");
    CHECK(difference(file->load().value(), version2Gym()).empty());
    CHECK(allResults(*file) == version1Results());
}

// Not run with the others: writes the file above anew, which only a version not yet released may
// need.
TEST_CASE("write the stored file of version 3", "[.store-version-3]") {
    fs::remove(stored(3));
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    auto changes = changesFor(version2Gym());
    for (const auto& result : version1Results()) changes.emplace_back(PutResult{result});
    put(*file, changes);
    CHECK(file->copyTo(stored(3)).ok());
    fs::permissions(stored(3), static_cast<fs::perms>(0644));
}
