// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

TEST_CASE("sheets writes the wall sheet as a PDF file without any screen, and says where") {
    const TempFolder folder;
    const auto out = folder / "print out";
    const auto ran = bwright(folder.path(), {"sheets", "--bundle", demoFile(), "--out",
                                             out.string(), "--only", "wall", "--json"});
    REQUIRE(ran.code == 0);
    CHECK(ran.err.empty());
    const auto files = json::parse(ran.out).at("files");
    REQUIRE(files.size() == 1);
    CHECK(readText(files[0].get<std::string>()).substr(0, 5) == "%PDF-");
}

TEST_CASE("sheets writes all five, under names that sort, and says their paths") {
    const TempFolder folder;
    const auto out = folder / "out";
    const auto all = bwright(folder.path(), {"sheets", "--bundle", demoFile(), "--out",
                                             out.string(), "--paper", "Letter", "--unit", "lb"});
    REQUIRE(all.code == 0);
    std::string expected;
    for (const char* word : {"wall", "cards", "notes", "kit", "talk"})
        expected +=
            (out / ("2026-12 Harbour lights - " + std::string(word) + ".pdf")).string() + "\n";
    CHECK(all.out == expected);
    for (const auto& entry : std::filesystem::directory_iterator(out))
        CHECK(readText(entry.path()).substr(0, 5) == "%PDF-");
}

TEST_CASE("cards from a gym file are those from its bundle") {
    const TempFolder folder;
    const auto gym = (folder / "gym.bwgym").string();
    REQUIRE(bwright(folder.path(), {"import", "--bundle", demoFile(), "--gym", gym}).code == 0);
    const auto size = [&](const std::string& flag, const std::string& from, const char* out) {
        const auto ran = bwright(folder.path(), {"sheets", flag, from, "--only", "cards", "--out",
                                                 (folder / out).string(), "--json"});
        REQUIRE(ran.code == 0);
        return std::filesystem::file_size(json::parse(ran.out).at("files")[0].get<std::string>());
    };
    CHECK(size("--gym", gym, "a") == size("--bundle", demoFile(), "b"));
}

TEST_CASE("sheets refuses a sheet it does not know, and a folder that can't be") {
    const TempFolder folder;
    const auto run = [&](const std::string& out, const char* only) {
        return bwright(folder.path(),
                       {"sheets", "--bundle", demoFile(), "--out", out, "--only", only});
    };
    CHECK(run((folder / "out").string(), "poster").code == 2);
    const auto odd = bwright(folder.path(), {"sheets", "--bundle", demoFile(), "--out",
                                             (folder / "out").string(), "--per-page", "3"});
    CHECK(odd.code == 2);
    CHECK_FALSE(std::filesystem::exists(folder / "out"));
    writeText(folder / "taken", "");
    CHECK(run((folder / "taken" / "out").string(), "wall").code == 3);
}

} // namespace bw::test
