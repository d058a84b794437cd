// SPDX-License-Identifier: GPL-3.0-or-later
#include "keeping.hpp"
#include "store/backup_rotation.hpp"

#include <algorithm>
#include <set>

using namespace bw;
using namespace bw::test;

namespace {
// Daily ones, a day apart, the last first, numbered from `count` down.
std::vector<Backup> dailies(std::string_view last, int count) {
    std::vector<Backup> list;
    for (int i = 0; i < count; ++i)
        list.push_back(
            {"x", count - i, BackupReason::Daily, wall(date(last).plusDays(-i).text()), 1});
    return list;
}
std::set<int> kept(const std::vector<Backup>& list, const std::set<int>& bad = {}) {
    std::set<int> numbers;
    for (const Backup& b : list) numbers.insert(b.number);
    for (const Backup& b :
         store::outOfRotation(list, [&](const Backup& c) { return bad.count(c.number) == 0; }))
        numbers.erase(b.number);
    return numbers;
}
} // namespace

TEST_CASE("of sixty days the last seven, four weeks and the months stay") {
    // 2026-11-25 is a Wednesday. Weeks end on 2026-11-25 (60), 22nd (57), 15th (50), 8th (43);
    // months on 2026-11-25 (60), 10-31 (35), 09-30 (4).
    CHECK(kept(dailies("2026-11-25", 60)) == std::set{60, 59, 58, 57, 56, 55, 54, 50, 43, 35, 4});
}

TEST_CASE("nothing goes while there are seven, and the only one never goes") {
    CHECK(kept(dailies("2026-11-25", 7)).size() == 7);
    CHECK(kept(dailies("2026-11-25", 1)).size() == 1);
    CHECK(kept(dailies("2026-11-25", 1), {1}).size() == 1);
    CHECK(kept({}).empty());
}

TEST_CASE("a week or month is stood for by the last backup of it that can be read") {
    CHECK(kept(dailies("2026-11-25", 60), {50, 35, 34}) ==
          std::set{60, 59, 58, 57, 56, 55, 54, 49, 43, 33, 4});
    // None of September's four can be read: the last of them stays as it is.
    CHECK(kept(dailies("2026-11-25", 60), {1, 2, 3, 4}).count(4) == 1);
}

TEST_CASE("of each other kind the last five stay, and what was set aside stays for good") {
    std::vector<Backup> list;
    for (int n = 40; n > 0; --n)
        list.push_back({"x", n, static_cast<BackupReason>(1 + n % 5), wall("2026-11-25"), 1});
    const auto left = kept(list);
    const auto of = [&](BackupReason reason) {
        return std::count_if(list.begin(), list.end(), [&](const Backup& b) {
            return b.reason == reason && left.count(b.number) == 1;
        });
    };
    CHECK(of(BackupReason::Update) == 5);
    CHECK(of(BackupReason::Import) == 5);
    CHECK(of(BackupReason::Restore) == 5);
    CHECK(of(BackupReason::Asked) == 5);
    CHECK(of(BackupReason::Damaged) == 8);
    CHECK(left.count(40) == 1);
}

TEST_CASE("a clock set back drives nothing out that was made before it ran ahead") {
    auto list = dailies("2026-11-08", 3); // after
    for (Backup& b : list) b.number += 100;
    for (Backup b : dailies("2031-05-30", 30)) {
        b.number += 50;
        list.push_back(b);
    }
    for (const Backup& b : dailies("2026-10-31", 20)) list.push_back(b); // before
    const auto left = kept(list);
    for (const int n : {103, 102, 101, 80}) CHECK(left.count(n) == 1);
    CHECK(left.count(20) == 1); // of October
}
