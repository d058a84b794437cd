// SPDX-License-Identifier: GPL-3.0-or-later
// What is refused is refused before a byte of it changes.
#include "gyms.hpp"
#include "people.hpp"
#include "store/files.hpp"
#include "store/sqlite/database.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"
#include "synced.hpp"

#include <algorithm>
#include <sys/stat.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
std::string whyNot(const fs::path& path, GymFile::Access access = GymFile::Access::Write) {
    const auto file = GymFile::open(path, access);
    return file ? "opened" : file.why().english();
}
std::vector<std::string> namesIn(const TempFolder& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder.path()))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}
void poke(const fs::path& file, std::size_t at, std::string_view bytes) {
    std::string text = readText(file);
    text.replace(at, bytes.size(), bytes);
    writeText(file, text);
}
// A gym file of some size, closed.
Gym filled(const fs::path& path) {
    Draw draw(21);
    Gym gym = drawGym(draw);
    put(*made(path), changesFor(gym));
    return gym;
}
// Refused for writing and for reading, with this in the sentence, and left byte for byte, alone.
void checkRefused(const TempFolder& folder, const std::string& name, const std::string& words) {
    const std::string before = readText(folder / name);
    const auto names = namesIn(folder);
    for (const auto access : {GymFile::Access::Write, GymFile::Access::Read}) {
        const std::string why = whyNot(folder / name, access);
        CAPTURE(why);
        CHECK(why.find(words) != std::string::npos);
        CHECK(why.find("left exactly as it is") != std::string::npos);
        CHECK(readText(folder / name) == before);
        CHECK(namesIn(folder) == names);
    }
}
} // namespace

TEST_CASE("a file that is not there is not made by opening it") {
    const TempFolder folder;
    const auto path = folder / "none.bwgym";
    CHECK(whyNot(path) ==
          "“" + path.string() +
              "” is not there. Nothing was changed. Check the name and the folder.");
    CHECK(namesIn(folder).empty());
    CHECK(whyNot(folder.path()).find("is not a gym file") != std::string::npos);
}

TEST_CASE("a file that is no gym file is refused") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    SECTION("an empty one") { writeText(path, ""); }
    SECTION("a short one") { writeText(path, "SQLite format 3"); }
    SECTION("a bundle") {
        writeText(path, R"({"format": "blockwright-bundle"})" + std::string(200, ' '));
    }
    SECTION("a database of another program") {
        writeText(path, "");
        sqlite::Database(path, sqlite::Database::Mode::Write)
            .script("CREATE TABLE gym (name TEXT)");
    }
    SECTION("a database that says it is another's") {
        filled(path);
        poke(path, 68, "ABCD");
    }
    checkRefused(folder, "a.bwgym", "is not a gym file");
}

TEST_CASE("a damaged gym file is refused, with what is wrong") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    filled(path);
    SECTION("cut short") { fs::resize_file(path, fs::file_size(path) / 2); }
    SECTION("with pages of noise") {
        for (std::size_t page = 1; page < 20; ++page)
            poke(path, page * 4096, std::string(64, '\xa5'));
    }
    SECTION("with only its first page") { fs::resize_file(path, 4096); }
    SECTION("without a version") { poke(path, 60, std::string(4, '\0')); }
    SECTION("with a value of the wrong kind") {
        sqlite::Database db(path, sqlite::Database::Mode::Write);
        db.script("PRAGMA ignore_check_constraints = ON; UPDATE slot SET main = 7;");
    }
    checkRefused(folder, "a.bwgym", "is damaged (");
}

TEST_CASE("a damaged gym file that was not closed is refused, and its log is left, too") {
    const TempFolder folder;
    filled(folder / "a.bwgym");
    const auto file = opened(folder / "a.bwgym");
    put(*file, {RemoveBlock{month("2021-01")}});
    fs::create_directory(folder / "left");
    const auto path = folder / "left/a.bwgym", log = folder / "left/a.bwgym-wal";
    fs::copy_file(folder / "a.bwgym", path);
    fs::copy_file(folder / "a.bwgym-wal", log);
    REQUIRE(opened(path)->load()->blocks.size() == 2); // else it is the log that tells
    fs::remove(path);
    fs::copy_file(folder / "a.bwgym", path);
    fs::copy_file(folder / "a.bwgym-wal", log);
    for (std::size_t page = 1; page < 30; ++page) poke(path, page * 4096, std::string(64, '\xa5'));

    const std::string before = readText(path), logBefore = readText(log);
    CHECK(whyNot(path).find("is damaged (") != std::string::npos);
    CHECK(readText(path) == before);
    CHECK(readText(log) == logBefore);
}

TEST_CASE("a word or number that no gym can hold is told, not guessed at") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    filled(path);
    const auto [sql, detail] = GENERATE(table<std::string, std::string>({
        {"UPDATE exercise SET sides = 'neither'", "unknown word “neither”"},
        {"UPDATE kit_item SET units = 99999999999", "out of range"},
        {"UPDATE block SET month = 202613 WHERE month = 202102", ""},
        {"UPDATE member SET id = 'No Id' WHERE key = 1", "“No Id” is not an id"},
    }));
    {
        sqlite::Database db(path, sqlite::Database::Mode::Write);
        db.script("PRAGMA foreign_keys = OFF");
        db.script(sql);
    }
    const auto gym = opened(path)->load();
    REQUIRE(!gym.ok());
    CHECK(gym.why().english().find("cannot read (") != std::string::npos);
    CHECK(gym.why().english().find(detail) != std::string::npos);
}

TEST_CASE("rows that belong to nothing are told, not dropped") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    filled(path);
    const auto table =
        GENERATE("kit_item", "exercise", "block", "section", "section_group", "slot", "member");
    {
        sqlite::Database db(path, sqlite::Database::Mode::Write);
        db.script("PRAGMA foreign_keys = OFF");
        db.script("DELETE FROM " + std::string(table));
    }
    CAPTURE(table);
    const auto gym = opened(path)->load();
    REQUIRE(!gym.ok());
    CHECK(gym.why().english().find("belongs to nothing") != std::string::npos);
}

TEST_CASE("a newer gym file is refused, and says which Blockwright reads it") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    filled(path);
    SECTION("when it says so where it always stands") {
        sqlite::Database(path, sqlite::Database::Mode::Write)
            .script("UPDATE readable_by SET program = '7.3'; PRAGMA user_version = 99;");
        checkRefused(folder, "a.bwgym",
                     "it needs version 7.3 or later (it is a gym file of version 99");
    }
    SECTION("and when it says so elsewhere") {
        sqlite::Database(path, sqlite::Database::Mode::Write)
            .script("DROP TABLE readable_by; PRAGMA user_version = 99;");
        checkRefused(folder, "a.bwgym", "written by a newer Blockwright");
    }
}

TEST_CASE("a gym file is its owner's alone to read") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto modeOf = [](const fs::path& file) {
        struct stat s {};
        REQUIRE(::stat(file.c_str(), &s) == 0);
        return s.st_mode & 0777U;
    };
    const auto old = ::umask(0);
    const auto file = made(path);
    put(*file, {PutSettings{{}}});
    CHECK(file->copyTo(folder / "copy.bwgym").ok());
    ::umask(old);
    CHECK(namesIn(folder) == std::vector<std::string>{"a.bwgym", "a.bwgym-shm", "a.bwgym-wal",
                                                      "a.bwgym.lock", "copy.bwgym"});
    for (const auto& name : namesIn(folder)) CHECK(modeOf(folder / name) == 0600U);
}

TEST_CASE("a closed gym file is one file, and says what it is") {
    const TempFolder folder;
    filled(folder / "a.bwgym");
    (void)loaded(folder / "a.bwgym");
    CHECK(namesIn(folder) == std::vector<std::string>{"a.bwgym"});
    CHECK(readText(folder / "a.bwgym").substr(68, 4) == "BwGm");
}

TEST_CASE("making a gym file never takes the place of anything") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto whyNotMade = [&] {
        const auto file = GymFile::create(path);
        return file ? "made" : file.why().english();
    };
    SECTION("of a file") {
        writeText(path, "my notes");
        CHECK(whyNotMade() ==
              "“" + path.string() +
                  "” is there already, and was left as it is. Choose another name.");
        CHECK(readText(path) == "my notes");
    }
    SECTION("of a link that leads nowhere") {
        fs::create_symlink(folder / "gone", path);
        CHECK(whyNotMade().find("is there already") != std::string::npos);
    }
    SECTION("beside the log of an earlier file") {
        writeText(folder / "a.bwgym-wal", "old");
        CHECK(whyNotMade().find("is left there from another gym file") != std::string::npos);
        CHECK(!fs::exists(path));
    }
}

TEST_CASE("a file in the making never takes the place of one that came first") {
    const TempFolder folder;
    store::FileInTheMaking file(folder / "a.bwgym");
    writeText(folder / "a.bwgym", "my notes");
    CHECK_THROWS_AS(file.putInPlace(), std::system_error);
    CHECK(readText(folder / "a.bwgym") == "my notes");
}

TEST_CASE("a new gym file is on the disk before it has its name, and then its name is") {
    const TempFolder folder;
    Synced synced;
    const auto file = made(folder / "a.bwgym");
    const auto& paths = synced.paths();
    REQUIRE(paths.size() >= 2);
    CHECK(paths[0].filename().string().starts_with(".a.bwgym.new-"));
    CHECK(paths[1] == folder.path());
}

TEST_CASE("making a gym file makes its folder") {
    const TempFolder folder;
    const auto file = made(folder / "a/b c/gym.bwgym");
    CHECK(file->writable());
}

TEST_CASE("a copy is whole, a gym file of its own, and never takes the place of anything") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(5);
    const Gym gym = drawGym(draw);
    put(*file, changesFor(gym));
    const auto result = drawResult(draw, gym.members[0].id);
    put(*file, {PutResult{result}});

    CHECK(file->copyTo(folder / "b.bwgym").ok());
    const auto copy = opened(folder / "b.bwgym");
    CHECK(copy->writable());
    CHECK(difference(copy->load().value(), gym).empty());
    CHECK(allResults(*copy) == std::vector{result});

    const auto again = file->copyTo(folder / "b.bwgym");
    REQUIRE(!again.ok());
    CHECK(again.why().english().find("is there already") != std::string::npos);
    const auto nowhere = file->copyTo(folder / "no/b.bwgym");
    REQUIRE(!nowhere.ok());
    CHECK(nowhere.why().english().find("was not made (No such file or directory)") !=
          std::string::npos);
    put(*file, {PutSettings{{}}}); // and the file is still in use
}

TEST_CASE("a deleted member's name is nowhere in the closed file") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    put(*made(path), {PutMember{{memberId("m-1"), "Quillon Featherstone", {}, true, {}}}});
    REQUIRE(readText(path).find("Featherstone") != std::string::npos);
    put(*opened(path), {RemoveMember{memberId("m-1")}});
    CHECK(readText(path).find("Featherstone") == std::string::npos);
}

TEST_CASE("a gym file that was moved away while open takes no more changes, but can be copied") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto file = made(path);
    put(*file, {PutMember{{memberId("m-1"), "Ada", {}, true, {}}}});
    SECTION("moved") { fs::rename(path, folder / "b.bwgym"); }
    SECTION("replaced") {
        writeText(folder / "new", "something else");
        fs::rename(folder / "new", path);
    }
    const auto answer = file->apply({RemoveMember{memberId("m-1")}});
    REQUIRE(!answer.ok());
    CHECK(answer.why().english().find("was moved, deleted or replaced") != std::string::npos);
    CHECK(file->copyTo(folder / "copy.bwgym").ok());
    CHECK(loaded(folder / "copy.bwgym").members.size() == 1);
}

TEST_CASE("the usual place of the gym file follows the environment") {
    const Variable home("HOME", "/home/coach"), data("XDG_DATA_HOME", nullptr);
    const Variable own("BLOCKWRIGHT_HOME", nullptr);
    CHECK(defaultGymPath() == "/home/coach/.local/share/blockwright/gym.bwgym");
    {
        const Variable relative("XDG_DATA_HOME", "data"); // to be ignored, says the specification
        CHECK(defaultGymPath() == "/home/coach/.local/share/blockwright/gym.bwgym");
    }
    const Variable absolute("XDG_DATA_HOME", "/srv/data");
    CHECK(defaultGymPath() == "/srv/data/blockwright/gym.bwgym");
    const Variable all("BLOCKWRIGHT_HOME", "/tmp/bw");
    CHECK(defaultGymPath() == "/tmp/bw/gym.bwgym");
}
