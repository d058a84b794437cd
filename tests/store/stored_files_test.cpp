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
const fs::path kVersion1 = fs::path(BW_SOURCE_DIR) / "tests/store/files/v1.bwgym.bin";
} // namespace

TEST_CASE("a gym file of version 1 opens and holds what was put into it") {
    const TempFolder folder;
    fs::copy_file(kVersion1, folder / "a.bwgym");
    const auto file = opened(folder / "a.bwgym");
    CHECK(file->writable());
    CHECK(difference(file->load().value(), version1Gym()).empty());
    CHECK(allResults(*file) == version1Results());
    put(*file, {RemoveBlock{month("2026-10")}});
    CHECK(file->load()->blocks.size() == 1);
}

// Not run with the others: writes the file above anew, which only a version not yet released may
// need.
TEST_CASE("write the stored file of version 1", "[.store-version-1]") {
    fs::remove(kVersion1);
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    auto changes = changesFor(version1Gym());
    for (const auto& result : version1Results()) changes.emplace_back(PutResult{result});
    put(*file, changes);
    CHECK(file->copyTo(kVersion1).ok());
    fs::permissions(kVersion1, static_cast<fs::perms>(0644));
}
