// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_words.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
std::string fileName(const std::string& title, SheetKind kind = SheetKind::Wall) {
    Block b = block("2026-09", {});
    b.title = title;
    return sheetFileName(kind, b).toStdString();
}
} // namespace

TEST_CASE("the files of sheets sort by month and say which sheet they are") {
    CHECK(fileName("Low tide") == "2026-09 Low tide - wall.pdf");
    CHECK(fileName("Low tide", SheetKind::Cards) == "2026-09 Low tide - cards.pdf");
    CHECK(fileName("") == "2026-09 - wall.pdf");
}

TEST_CASE("what a file system refuses is left out of a sheet's name") {
    CHECK(fileName("../push: pull / \"big\" <2>?*|\\") == "2026-09 .. push pull big 2 - wall.pdf");
    CHECK(fileName("one\ntwo\tthree") == "2026-09 one two three - wall.pdf");
    CHECK(fileName("Ebb and flow...") == "2026-09 Ebb and flow - wall.pdf");
    CHECK(fileName("???") == "2026-09 - wall.pdf");
}

TEST_CASE("a long title still makes a file name, without half a letter") {
    std::string title;
    for (int i = 0; i < 200; ++i) title += "é🏋"; // 2 and 4 bytes
    const std::string name = fileName(title);
    CHECK(name.size() < 255); // POSIX NAME_MAX on common file systems
    CHECK(name.size() > 150);
    CHECK(QString::fromStdString(name).toUtf8().toStdString() == name);
    CHECK_FALSE(QString::fromStdString(name).contains(QChar(QChar::ReplacementCharacter)));
}

TEST_CASE("sheets are found by their words") {
    for (const SheetKind kind :
         {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes, SheetKind::Kit, SheetKind::Talk})
        CHECK(sheetFrom(sheetWord(kind)) == kind);
    CHECK_FALSE(sheetFrom("poster"));
}

TEST_CASE("a sheet's title names month, block and sheet") {
    Block b = block("2026-09", {});
    CHECK(sheetTitle(SheetKind::Wall, b) == "September 2026 (wall sheet)");
    b.title = "Low tide";
    CHECK(sheetTitle(SheetKind::Kit, b) == "September 2026: Low tide (kit list)");
    CHECK(printedMonth(month("2027-01")) == "January 2027");
    CHECK(printedMonth(month("2026-12")) == "December 2026");
}
