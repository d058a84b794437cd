// SPDX-License-Identifier: GPL-3.0-or-later
// docs/gym-file.md and the file say the same.
#include "gyms.hpp"
#include "store/migrations.hpp"
#include "store/sqlite/database.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"
#include "version1_gym.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
std::string page() { return readText(fs::path(BW_SOURCE_DIR) / "docs/gym-file.md"); }

// `one`, `two`: the columns of a table in their order, as the page writes them.
std::string columnsOf(sqlite::Database& db, const std::string& table) {
    std::string columns;
    for (auto r = db.query("SELECT name FROM pragma_table_info(?)", table); r.any(); r.next())
        columns += (columns.empty() ? "`" : ", `") + r->string(0) + "`";
    return columns;
}
} // namespace

TEST_CASE("the page on the gym file lists every table with its columns, and no other") {
    const TempFolder folder;
    (void)made(folder / "a.bwgym");
    sqlite::Database db(folder / "a.bwgym", sqlite::Database::Mode::Read);
    std::string text = page();
    text = text.substr(text.find("\n## Tables\n"));
    long tables = 0;
    for (auto r = db.query("SELECT name FROM sqlite_schema WHERE type = 'table'"); r.any();
         r.next()) {
        const auto row = text.find("\n| `" + r->string(0) + "` |");
        CAPTURE(r->string(0));
        REQUIRE(row != std::string::npos);
        const auto line = text.substr(row + 1, text.find('\n', row + 1) - row - 1);
        CHECK(line.ends_with("| " + columnsOf(db, r->string(0)) + " |"));
        ++tables;
    }
    long rows = 0;
    for (auto at = text.find("\n| `"); at != std::string::npos; at = text.find("\n| `", at + 1))
        ++rows;
    CHECK(rows == tables);
}

TEST_CASE("the page on the gym file names its marks as they are") {
    const std::string text = page();
    CHECK(store::kApplicationId == 0x4277476D);
    CHECK(text.find("0x4277476D, “BwGm”") != std::string::npos);
    CHECK(text.find("the version of the format, " + std::to_string(store::migrations().size()) +
                    " today") != std::string::npos);
}

TEST_CASE("the query on the page finds what a member lifted") {
    const std::string text = page();
    const auto start = text.find("```sql\n") + 7;
    const TempFolder folder;
    fs::copy_file(fs::path(BW_SOURCE_DIR) / "tests/store/files/v1.bwgym.bin", folder / "a.bwgym");
    sqlite::Database db(folder / "a.bwgym", sqlite::Database::Mode::Read);
    auto r = db.query(text.substr(start, text.find("```", start) - start));
    REQUIRE(r.any());
    CHECK(r->text(0) == "2026-09-03");
    CHECK(r->text(1) == "goblet-squat");
    CHECK(r->integer(3) == 5);
    CHECK(r->real(4) == 12.0);
}
