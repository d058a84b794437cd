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

    const auto all =
        bwright(folder.path(), {"sheets", "--bundle", demoFile(), "--out", out.string()});
    CHECK(all.code == 0);
    CHECK(all.out == files[0].get<std::string>() + "\n");
}

TEST_CASE("sheets refuses a sheet it does not know, and a folder that can't be") {
    const TempFolder folder;
    const auto run = [&](const std::string& out, const char* only) {
        return bwright(folder.path(),
                       {"sheets", "--bundle", demoFile(), "--out", out, "--only", only});
    };
    CHECK(run((folder / "out").string(), "poster").code == 2);
    CHECK_FALSE(std::filesystem::exists(folder / "out"));
    writeText(folder / "taken", "");
    CHECK(run((folder / "taken" / "out").string(), "wall").code == 3);
}

} // namespace bw::test
