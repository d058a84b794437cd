// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_program.hpp"
#include "store/backups.hpp"
#include "store/gym_file.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <regex>

namespace bw::test {

using nlohmann::json;

namespace {
// A gym file that a bundle was brought into twice, and so has one backup.
struct Gym {
    TempFolder folder;
    std::string gym = (folder / "gym.bwgym").string();
    Gym() {
        writeText(folder / "gym.json", smallBundle());
        writeText(folder / "more.json", R"({"format": "blockwright-bundle", "version": 1,
            "gym": {"name": "Quay"}, "members": [{"id": "m-001", "name": "Wren"}]})");
        for (const char* bundle : {"gym.json", "more.json"})
            if (run({"import", "--gym", gym, "--bundle", (folder / bundle).string()}).code != 0)
                throw std::runtime_error("no import");
    }
    [[nodiscard]] Ran run(std::vector<std::string> arguments) const {
        return bwright(folder.path(), std::move(arguments));
    }
    [[nodiscard]] json backups(std::vector<std::string> more = {}) const {
        std::vector<std::string> arguments{"backups", "--gym", gym, "--json"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return json::parse(run(arguments).out).at("backups");
    }
    [[nodiscard]] std::string name() const {
        return GymFile::open(gym, GymFile::Access::Read).value()->load()->settings.name;
    }
};
} // namespace

TEST_CASE("import backs the gym file up first; backups lists what each holds") {
    const Gym g;
    const auto list = g.backups();
    REQUIRE(list.size() == 1);
    CHECK(list[0]["number"] == 1);
    CHECK(list[0]["reason"] == "import");
    CHECK(std::regex_match(std::string(list[0]["made"]),
                           std::regex(R"(\d{4}-\d{2}-\d{2}T\d{2}:\d{2})")));
    CHECK(list[0]["good"] == true);
    CHECK(list[0]["as_made"] == true);
    CHECK(list[0]["gym"] == "Tide Mill");
    CHECK(list[0]["months"] == 1);
    CHECK(list[0]["last_month"] == "2026-09");
    CHECK(list[0]["members"] == 0);
    CHECK(list[0]["newest_result"].is_null());
    CHECK(list[0]["bytes"] == std::filesystem::file_size(std::string(list[0]["file"])));
    const auto text = g.run({"backups", "--gym", g.gym});
    CHECK(text.code == 0);
    CHECK(text.out.find("1 month to 2026-09, 0 members, 0 results\n") != std::string::npos);

    (void)g.run({"restore", "--gym", g.gym, "--backup", "1"});
    CHECK(g.backups({"--member", "m-001"}).at(0)["reason"] == "restore");
    CHECK(g.backups({"--member", "m-001"}).size() == 1);
    CHECK(g.run({"backups", "--gym", g.gym, "--member", "m-2"}).out.find("holds m-2") !=
          std::string::npos);
    CHECK(g.run({"backups", "--gym", g.gym, "--member", "No Id"}).code == 2);
}

TEST_CASE("restore puts a backup in place by number, name or path, and says where the rest is") {
    const Gym g;
    const std::filesystem::path file = std::string(g.backups().at(0)["file"]);
    REQUIRE(g.name() == "Quay");
    const auto by = GENERATE(0, 1, 2);
    const std::string backup = by == 0 ? "1" : by == 1 ? file.filename().string() : file.string();
    const auto ran = g.run({"restore", "--gym", g.gym, "--backup", backup, "--json"});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(g.name() == "Tide Mill");
    const auto answer = json::parse(ran.out);
    CHECK(answer["restored"] == file.string());
    CHECK(lookIntoBackup(std::string(answer["before"]))->gym == "Quay");
}

TEST_CASE("restore says why it can't, and changes nothing") {
    const Gym g;
    const auto none = g.run({"restore", "--gym", g.gym, "--backup", "7"});
    CHECK(none.code == 2);
    CHECK(none.err.find("has no backup 7. It has: 1.") != std::string::npos);
    CHECK(g.run({"restore", "--gym", g.gym, "--backup", "nothing.bwgym"}).code == 3);
    CHECK(g.run({"restore", "--gym", g.gym}).code == 2);
    {
        const auto held = GymFile::open(g.gym);
        const auto ran = g.run({"restore", "--gym", g.gym, "--backup", "1"});
        CHECK(ran.code == 3);
        CHECK(ran.err.find("writes to it") != std::string::npos);
    }
    const std::string file = g.backups().at(0)["file"];
    std::filesystem::resize_file(file, 5000);
    CHECK(g.run({"restore", "--gym", g.gym, "--backup", "1"}).code == 3);
    CHECK(g.backups().at(0)["good"] == false);
    CHECK(g.name() == "Quay");
}

TEST_CASE("what can't be backed up is told, and brought in all the same") {
    const Gym g;
    std::filesystem::remove_all(backupFolder(g.gym));
    writeText(backupFolder(g.gym), "in the way");
    const auto ran =
        g.run({"import", "--gym", g.gym, "--bundle", (g.folder / "gym.json").string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.find("No backup of") == 0);
    CHECK(g.name() == "Tide Mill");
}

} // namespace bw::test
