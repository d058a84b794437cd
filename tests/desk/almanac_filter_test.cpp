// SPDX-License-Identifier: GPL-3.0-or-later
// Words that pick exercises out of the Almanac.
#include "almanac_gym.hpp"
#include "desk/almanac/almanac_filter.hpp"
#include "support/catch.hpp"

#include <QLocale>

using namespace bw;
using namespace bw::test;

namespace {
// Ids of the exercises that the words leave, in the last `months`.
std::vector<std::string> found(const char* words, int months = 12) {
    const Almanac a = almanac(almanacGym(), {months, {}});
    const auto filter = AlmanacFilter::parse(QString::fromUtf8(words), a.months.back().month);
    std::vector<std::string> out;
    for (const AlmanacRow& row : a.rows)
        if (filter.fits(row)) out.push_back(row.exercise.text());
    return out;
}
using Ids = std::vector<std::string>;
} // namespace

TEST_CASE("Words of the filter are parts of a name or a pattern, whatever case and hyphens") {
    CHECK(found("") == Ids{"box-squat", "floor-press", "towel-row", "suitcase-carry"});
    CHECK(found("PRESS") == Ids{"floor-press"});
    CHECK(found("horizontal") == Ids{"floor-press", "towel-row"});
    CHECK(found("horizontal row") == Ids{"towel-row"});
    CHECK(found("floor-pr") == Ids{"floor-press"});
    CHECK(found("banana").empty());
}

TEST_CASE("“main” leaves main lifts, “new” what was new, both within the months in view") {
    CHECK(found("main", 0) == Ids{"box-squat", "floor-press"});
    CHECK(found("main", 3) == Ids{"box-squat"}); // the press was one a year ago
    CHECK(found("new", 3) == Ids{"suitcase-carry"});
    CHECK(found("new main", 3).empty());
}

TEST_CASE("“not since” leaves what no month since then has used, also from before the view") {
    QLocale::setDefault(QLocale(QLocale::English));
    CHECK(found("not since 2027-02", 1) == Ids{"towel-row"});
    CHECK(found("not used since feb", 1) == Ids{"towel-row"}); // the latest February
    CHECK(found("since February 2027", 1) == Ids{"towel-row"});
    CHECK(found("not since march 2026").empty());
    CHECK(found("horizontal not since 2027-02") == Ids{"towel-row"});
    CHECK(found("not since 2027-02 squat").empty());
    QLocale::setDefault(QLocale::c());
}

TEST_CASE("“since” without a month is said, and leaves all") {
    const auto filter =
        AlmanacFilter::parse(QStringLiteral("row not since yesterday"), month("2027-02"));
    CHECK_FALSE(filter.notSince);
    CHECK(filter.trouble.contains(QStringLiteral("2026-11")));
    CHECK(AlmanacFilter::parse(QStringLiteral("since"), month("2027-02")).trouble.isEmpty() ==
          false);
    CHECK(AlmanacFilter::parse(QStringLiteral("row since 2026-07"), month("2027-02"))
              .trouble.isEmpty());
}
