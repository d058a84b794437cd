// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/table.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <iterator>
#include <regex>
#include <sstream>

namespace bw::test {

namespace {
// Lines that begin with the program's name, in the help and in the fenced parts of the documents.
std::vector<std::string> examplesIn(const std::string& text) {
    static const std::regex line(R"(^\s*(?:\$ )?bwright ((?:time|check|balance|floor|stair|ledger|)"
                                 R"(almanac|sheets|import|export|backups|restore)\b.*)$)");
    std::vector<std::string> found;
    std::istringstream in(text);
    for (std::string l; std::getline(in, l);)
        if (std::smatch m; std::regex_match(l, m, line)) found.push_back(m[1]);
    return found;
}
std::vector<std::string> wordsOf(const std::string& line) {
    std::istringstream in(line);
    return {std::istream_iterator<std::string>(in), {}};
}
} // namespace

TEST_CASE("Every example of the help and of the documents works") {
    const TempFolder folder;
    std::filesystem::create_directories(folder / "data");
    std::filesystem::create_symlink(BW_SOURCE_DIR "/data/demo", folder / "data/demo");
    const auto here = std::filesystem::current_path();
    std::filesystem::current_path(folder.path());
    writeText("month.bundle.json", smallBundle());
    REQUIRE(
        bwright(folder.path(), {"import", "--gym", "gym.bwgym", "--bundle", "month.bundle.json"})
            .code == 0);

    auto examples = examplesIn(bwright(folder.path(), {"--help"}).out);
    REQUIRE(examples.size() >= 5);
    for (const auto& file : std::filesystem::recursive_directory_iterator(BW_SOURCE_DIR "/docs"))
        if (file.path().extension() == ".md")
            for (auto& e : examplesIn(readText(file.path()))) examples.push_back(std::move(e));
    for (auto& e : examplesIn(readText(BW_SOURCE_DIR "/README.md")))
        examples.push_back(std::move(e));
    for (const auto& example : examples) {
        INFO(example);
        const auto ran = bwright(folder.path(), wordsOf(example));
        INFO(ran.err);
        CHECK((ran.code == 0 || ran.code == 1));
    }
    std::filesystem::current_path(here);
}

TEST_CASE("Bad usage ends with 2 and says what was wrong; help and version are no errors") {
    const TempFolder folder;
    const auto run = [&](std::vector<std::string> a) {
        return bwright(folder.path(), std::move(a));
    };
    CHECK(run({}).code == 2);
    const auto wrong = run({"dance"});
    CHECK(wrong.code == 2);
    CHECK(wrong.err.find("bwright has no command “dance”.") != std::string::npos);
    CHECK(run({"time"}).code == 2); // which gym?
    CHECK(run({"time", "--bundle", "a", "--gym", "b"}).code == 2);
    CHECK(run({"import", "--gym", "b"}).code == 2);
    CHECK(run({"check", "--bundel", "a"}).code == 2);
    CHECK(run({"--help"}).code == 0);
    for (const char* command : {"time", "check", "sheets", "import", "export"})
        CHECK(run({command, "--help"}).code == 0);
    const auto version = run({"--version"});
    CHECK(version.code == 0);
    CHECK(std::regex_match(version.out, std::regex("bwright \\d+\\.\\d+\\.\\d+\n")));
}

TEST_CASE("A table aligns what is not ASCII, and long text is broken at blanks") {
    using cli::Table;
    Table table({Table::Align::Left, Table::Align::Right});
    table.add({"Rüttel", "7"});
    table.add({"Sled", "1–20"});
    CHECK(table.text() == "Rüttel     7\nSled    1–20\n");
    CHECK(cli::wrapped("one two three four", 9, 2) == "one two\n  three\n  four");
    CHECK(cli::wrapped("longer-than-any-line is kept", 5, 0) == "longer-than-any-line\nis\nkept");
    CHECK(cli::wrapped("", 5, 0).empty());
}

} // namespace bw::test
