// SPDX-License-Identifier: GPL-3.0-or-later
// The Almanac's tables as models: what stands in a cell, and what is said of it.
#include "almanac_gym.hpp"
#include "blockwright/rules/check.hpp"
#include "desk/almanac/almanac_filter.hpp"
#include "desk/almanac/almanac_marks.hpp"
#include "desk/almanac/almanac_model.hpp"
#include "desk/almanac/almanac_ratio_paint.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QLocale>

using namespace bw;
using namespace bw::test;

namespace {
struct Table {
    explicit Table(Gym g = almanacGym(), int months = 0)
        : gym(std::move(g)), almanac(std::make_shared<Almanac>(bw::almanac(gym, {months, {}}))) {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
    ~Table() { QLocale::setDefault(QLocale::c()); }
    void show(std::vector<AlmanacLine> lines) {
        const auto& block = *gym.latest();
        markLines(lines, block, check(gym, block).findings);
        model.show(almanac, std::move(lines), block.month);
    }
    int row(const char* name) const {
        for (int r = 0; r < model.rowCount(); ++r)
            if (model.line(r).name == QLatin1String(name)) return r;
        throw std::runtime_error(std::string("no line ") + name);
    }
    std::string sentence(const char* name, int column) const {
        return model.index(row(name), column).data(Qt::AccessibleTextRole).toString().toStdString();
    }
    std::string shown(const char* name, int column) const {
        return model.index(row(name), column).data().toString().toStdString();
    }

    Gym gym;
    std::shared_ptr<const Almanac> almanac;
    AlmanacModel model;
};
} // namespace

TEST_CASE("The almanac's models keep the contract of item models, empty, full and filtered") {
    Table t;
    const QAbstractItemModelTester tester(&t.model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    t.show(exerciseLines(*t.almanac, {}));
    CHECK(t.model.columnCount() == 14);
    CHECK(t.model.rowCount() == 4 + 4); // each under the heading of its pattern
    t.show(
        exerciseLines(*t.almanac, AlmanacFilter::parse(QStringLiteral("squat"), month("2027-02"))));
    CHECK(t.model.rowCount() == 2);
    t.show(turnLines(*t.almanac));
    CHECK(t.model.rowCount() == static_cast<int>(kCount<Format>) + 1);
    t.show(ratioLines(*t.almanac, t.gym.settings));
    CHECK(t.model.rowCount() == 2);
    t.model.show(std::make_shared<Almanac>(), {}, {});
    CHECK(t.model.rowCount() == 0);
    CHECK(t.model.columnCount() == 0);
}

TEST_CASE("Each cell says in a sentence what it shows") {
    Table t;
    t.show(exerciseLines(*t.almanac, {}));
    CHECK(t.sentence("box-squat", 0) == "box-squat, January 2026: used.");
    CHECK(t.sentence("box-squat", 2) == "box-squat, March 2026: used, third month in a row.");
    CHECK(t.sentence("box-squat", 7) == "box-squat, August 2026: no block in this month.");
    CHECK(t.sentence("box-squat", 9) ==
          "box-squat, October 2026: main lift, used for the second month in "
          "a row.");
    CHECK(t.sentence("box-squat", 11) ==
          "box-squat, December 2026: main lift, third month in a row, used "
          "for the fourth month in a row.");
    CHECK(t.sentence("floor-press", 2) ==
          "floor-press, March 2026: main lift, third month in a row.");
    CHECK(t.sentence("floor-press", 3) == "floor-press, April 2026: not used.");
    CHECK(t.sentence("suitcase-carry", 13).find("used, new to this gym.") != std::string::npos);
    CHECK(t.shown("box-squat", 2) == "3");
    CHECK(t.shown("floor-press", 3).empty());
}

TEST_CASE("A heading counts the sets of its pattern, months and names say more when asked") {
    Table t;
    t.show(exerciseLines(*t.almanac, {}));
    CHECK(t.sentence("squat", 0) == "squat, January 2026: 2 sets a session.");
    CHECK(t.sentence("horizontal push", 0) == "horizontal push, January 2026: 2 sets a session.");
    CHECK(t.sentence("horizontal push", 5) == "horizontal push, June 2026: no sets a session.");
    const auto head = [&](int section, Qt::Orientation o, int role) {
        return t.model.headerData(section, o, role).toString().toStdString();
    };
    CHECK(head(0, Qt::Horizontal, Qt::DisplayRole) == "Jan");
    CHECK(head(0, Qt::Horizontal, Qt::AccessibleTextRole) == "January 2026 · opposed");
    CHECK(head(7, Qt::Horizontal, Qt::AccessibleTextRole) == "August 2026: no block");
    CHECK(head(t.row("floor-press"), Qt::Vertical, Qt::AccessibleTextRole) ==
          "floor-press, last used February 2027");
}

TEST_CASE("Formats stand in their turn, with what was new below") {
    Table t;
    t.show(turnLines(*t.almanac));
    CHECK(t.sentence("opposed", 0) == "opposed, January 2026: this month's format.");
    CHECK(t.sentence("opposed", 1) == "opposed, February 2026: not used.");
    CHECK(t.sentence("opposed", 13).find("this month's format, second month in a row.") !=
          std::string::npos);
    CHECK(t.sentence("new exercises", 13) == "new exercises, February 2027: 1.");
    CHECK(t.sentence("new exercises", 12) == "new exercises, January 2027: none.");
    CHECK(t.model.headerData(t.row("straight-heavy"), Qt::Vertical, Qt::AccessibleTextRole)
              .toString() == QStringLiteral("straight-heavy, never used"));
}

TEST_CASE("What the rule book finds in the month on show marks its lines, and only that month") {
    Table t;
    const auto findings = check(t.gym, *t.gym.latest()).findings;
    const auto text = [&](std::string_view rule, std::string_view about) {
        for (const Finding& f : findings)
            if (f.rule == rule && f.about == about) return f.text.english();
        throw std::runtime_error("the rule book does not say so");
    };
    t.show(exerciseLines(*t.almanac, {}));
    // A main lift from October to February: five months, two more than the usual limit.
    const auto& squat = t.model.line(t.row("box-squat"));
    REQUIRE(squat.mark);
    CHECK(squat.mark->level == Level::Look);
    CHECK(squat.mark->text.toStdString() == text("staleness", ""));
    CHECK_FALSE(t.model.line(t.row("towel-row")).mark);
    t.show(turnLines(*t.almanac));
    REQUIRE(t.model.line(t.row("opposed")).mark);
    CHECK(t.sentence("opposed", 13).find("look: " + text("staleness", "format")) !=
          std::string::npos);
    CHECK(t.sentence("opposed", 12).find("look") == std::string::npos);
    CHECK_FALSE(t.model.line(t.row("round-trip")).mark);
}

TEST_CASE("The almanac counts a main lift's months as the rule on staleness does") {
    Table t;
    for (const AlmanacRow& row : t.almanac->rows) {
        if (row.exercise != ex("box-squat")) continue;
        bool said = false;
        for (const Finding& f : check(t.gym, *t.gym.latest()).findings) {
            if (f.rule != "staleness" || f.about == "format") continue;
            CHECK(f.measured == row.cells.back().mainStreak);
            said = true;
        }
        CHECK(said);
    }
}

TEST_CASE("Ratios have the gym's band, and say where they lie") {
    Gym gym = almanacGym();
    gym.settings.limits["push-pull.block"] = {0.8, 1.25, true};
    Table t(gym);
    t.show(ratioLines(*t.almanac, t.gym.settings));
    CHECK(t.sentence("push : pull", 0) == "push : pull, January 2026: 1.00, within 0.8 to 1.25.");
    CHECK(t.sentence("push : pull", 4) == "push : pull, May 2026: 0.00, outside 0.8 to 1.25.");
    CHECK(t.sentence("push : pull", 1) == "push : pull, February 2026: nothing to compare.");
}

TEST_CASE("A ratio and its inverse lie as far from 1, and what is off the scale lies at its edge") {
    CHECK(ratioHeight(1) == Approx(0.5));
    CHECK(ratioHeight(2) + ratioHeight(0.5) == Approx(1));
    CHECK(ratioHeight(1.5) < ratioHeight(1.2));
    CHECK(ratioHeight(0) == 1);
    CHECK(ratioHeight(100) == 0);
}
