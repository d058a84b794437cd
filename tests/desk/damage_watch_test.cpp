// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/damage_watch.hpp"
#include "desk/frame/gym_opening.hpp"
#include "store/opening.hpp"
#include "store/sqlite/database.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QTest>

#include <fstream>

using namespace bw;
using namespace bw::test;

namespace {
// The first page of the results, where it counts its rows.
void damageResults(const std::filesystem::path& path) {
    std::int64_t page = 0, size = 0;
    {
        sqlite::Database db(path, sqlite::Database::Mode::Read);
        page = db.number("SELECT rootpage FROM sqlite_schema WHERE name = ?", "result").value();
        size = db.number("PRAGMA page_size").value();
    }
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    file.seekg((page - 1) * size + 4);
    const int byte = file.get();
    file.seekp((page - 1) * size + 4);
    file.put(static_cast<char>(byte ^ 1));
}
} // namespace

TEST_CASE("Damaged results of a large file are told once they are found, a sound file is not") {
    const bool damaged = GENERATE(false, true);
    TempFolder folder;
    const auto path = folder / "a.bwgym";
    REQUIRE(openDemo(path).ok()); // and closed again
    if (damaged) damageResults(path);
    const auto file =
        store::openGymFile(path, GymFile::Access::Write, store::migrations(), 0); // all are large
    REQUIRE(file.ok());
    QStringList told;
    DamageWatch watch(**file, nullptr);
    QObject::connect(&watch, &DamageWatch::found,
                     [&](const Message& what) { told << QString::fromStdString(what.english()); });
    const bool any = QTest::qWaitFor([&] { return !told.isEmpty(); }, damaged ? 20'000 : 1'500);
    CHECK(any == damaged);
    QTest::qWait(500); // not twice
    REQUIRE(told.size() == (damaged ? 1 : 0));
    if (damaged) CHECK(told.first().contains(QStringLiteral("is damaged")));
}
