// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_model.hpp"
#include "desk/bench/findings_words.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <algorithm>
#include <cmath>
#include <random>

using namespace bw;
using namespace bw::test;

namespace {
Block twoSections() {
    return block("2026-09",
                 {section(SectionKind::WarmUp,
                          {group(rounds(2, 2), secondsRange(0, 0), {slot("squat", reps(8, 8))})}),
                  section(SectionKind::Strength,
                          {group(rounds(2, 3), secondsRange(60, 120),
                                 {slot("squat", reps(5, 5)), slot("press", reps(10, 10))})})});
}

Finding finding(std::string rule, Place place = {}, Level level = Level::Look) {
    Finding f;
    f.rule = std::move(rule);
    f.place = place;
    f.level = level;
    f.weeks = {1, 2, 3, 4};
    f.text = {"%1 is off.", {f.rule}};
    f.basis = {"Common practice.", {}};
    return f;
}

QStringList texts(const FindingsModel& model) {
    QStringList out;
    for (int row = 0; row < model.rowCount(); ++row)
        out << model.index(row).data(Qt::DisplayRole).toString();
    return out;
}
} // namespace

TEST_CASE("Whatever comes and goes, the list is what was found, and a sound model") {
    FindingsModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const Block b = twoSections();
    std::mt19937 draw(2026); // fixed: the same lists on every machine
    for (int round = 0; round < 200; ++round) {
        std::vector<Finding> found;
        for (int n = 0; n < 12; ++n)
            if (draw() % 2 == 0) found.push_back(finding("rule-" + std::to_string(n)));
        std::shuffle(found.begin(), found.end(), draw);
        model.show(found, b);
        QStringList wanted;
        for (const Finding& f : found) wanted << QString::fromStdString(f.text.english());
        REQUIRE(texts(model) == wanted);
    }
    model.clear();
    CHECK(model.rowCount() == 0);
}

TEST_CASE("A finding stays the same row when others come before it or it says something else") {
    FindingsModel model;
    const Block b = twoSections();
    model.show({finding("a"), finding("b", {1, 0}), finding("c")}, b);
    const QPersistentModelIndex kept = model.index(1);
    Finding worse = finding("b", {1, 0});
    worse.text = {"b is far off.", {}};
    model.show({finding("new"), finding("c"), worse}, b);
    REQUIRE(kept.isValid());
    CHECK(kept.row() == 2);
    CHECK(kept.data(Qt::DisplayRole).toString() == "b is far off.");
    model.show({finding("b", {1, 0, 1})}, b); // the same rule elsewhere is another finding
    CHECK_FALSE(kept.isValid());
}

TEST_CASE("What one rule finds several times in one place is told apart by what it is about") {
    FindingsModel model;
    const Block b = twoSections();
    Finding push = finding("pattern-missing"), pull = finding("pattern-missing");
    push.about = "push";
    pull.about = "pull";
    model.show({push, pull}, b);
    const QPersistentModelIndex kept = model.index(1);
    model.show({pull}, b);
    REQUIRE(kept.isValid());
    CHECK(kept.row() == 0);
}

TEST_CASE("Nothing is told when nothing that shows has changed, but the newest remedy is kept") {
    FindingsModel model;
    const Block b = twoSections();
    int done = 0;
    const auto with = [&](int n) {
        Finding f = finding("a");
        f.remedies = {{{"Mend it", {}}, [&done, n](Block&) { done = n; }}};
        return f;
    };
    model.show({with(1)}, b);
    QSignalSpy changed(&model, &FindingsModel::dataChanged);
    QSignalSpy removed(&model, &FindingsModel::rowsRemoved);
    QSignalSpy inserted(&model, &FindingsModel::rowsInserted);
    model.show({with(2)}, b);
    CHECK(changed.isEmpty());
    CHECK(removed.isEmpty());
    CHECK(inserted.isEmpty());
    Block copy = b;
    model.at(0).action(0)->action(copy);
    CHECK(done == 2);
    Finding louder = with(2);
    louder.level = Level::Stop;
    model.show({louder}, b);
    CHECK(changed.count() == 1);
}

TEST_CASE("Only what the program can do is counted among the actions") {
    Finding f = finding("a");
    f.remedies = {{{"Talk to the members", {}}, {}},
                  {{"Cut the rest", {}}, [](Block&) {}},
                  {{"Take a round off", {}}, [](Block&) {}}};
    const FindingRow row = FindingRow::of(f, twoSections());
    CHECK(row.actions() == 2);
    CHECK(row.action(0)->label.source == "Cut the rest");
    CHECK(row.action(1)->label.source == "Take a round off");
    CHECK(row.action(2) == nullptr);
}

TEST_CASE("A screen reader hears level, sentence, place, weeks, figures, basis and what to try") {
    FindingsModel model;
    Finding f = finding("superset-work", {1, 0, 1}, Level::Stop);
    f.weeks = {2, 3, 4};
    f.measured = 134;
    f.limit = {60, 120, true};
    f.unit = "s";
    f.remedies = {{{"Fewer reps in B2", {}}, [](Block&) {}}, {{"Or split the pair", {}}, {}}};
    model.show({f}, twoSections());
    CHECK(model.index(0).data(Qt::AccessibleTextRole).toString().toStdString() ==
          "stop: superset-work is off. B2, weeks 2–4. 2:14, band 1:00–2:00. Common practice. "
          "Try: Fewer reps in B2. Or split the pair.");
}

TEST_CASE("A place is called as on the sheet") {
    const Block b = twoSections();
    CHECK(findingWhere(b, {}) == "session");
    CHECK(findingWhere(b, {1}) == "Strength");
    CHECK(findingWhere(b, {1, 0}) == "B");
    CHECK(findingWhere(b, {1, 0, 1}) == "B2");
    CHECK(findingWhere(b, {9}).isEmpty());
}

TEST_CASE("Weeks are said as briefly as they can be") {
    CHECK(findingWeeks({1, 2, 3, 4}, 4) == "every week");
    CHECK(findingWeeks({}, 4) == "every week");
    CHECK(findingWeeks({3}, 4) == "week 3");
    CHECK(findingWeeks({2, 3, 4}, 4).toStdString() == "weeks 2–4");
    CHECK(findingWeeks({1, 2}, 4) == "weeks 1, 2");
    CHECK(findingWeeks({1, 3, 4}, 4) == "weeks 1, 3, 4");
}

TEST_CASE("Figures stand in the unit that was measured") {
    Finding f;
    const auto said = [&](double measured, LimitValue limit, std::string unit) {
        f.measured = measured;
        f.limit = limit;
        f.unit = std::move(unit);
        return findingFigures(f).toStdString();
    };
    CHECK(said(170, {120, 120, false}, "s") == "2:50, limit 2:00");
    CHECK(said(0.972, {0.95, 0.95, false}, "share") == "97.2 %, limit 95 %");
    CHECK(said(1.456, {0.6, 1.4, true}, "") == "1.46, band 0.6–1.4");
    CHECK(said(12, {10, 10, false}, "reps") == "12, limit 10 reps");
    CHECK(said(0, {1, 1, false}, "") == "0, limit 1");
    CHECK(said(0, {0, 0, false}, "").empty());
    CHECK(said(HUGE_VAL, {1, 1, false}, "").empty()); // a ratio over nothing
}

TEST_CASE("A gauge shows measured and limit on one scale, a fifth longer than the largest") {
    Finding f;
    f.measured = 6;
    f.limit = {3, 3, false};
    const Gauge g = Gauge::of(f);
    CHECK(g.shown);
    CHECK_FALSE(g.band);
    CHECK(g.measured == Approx(1 / 1.2));
    CHECK(g.hi == Approx(0.5 / 1.2));
    f.limit = {-2, 4, true};
    const Gauge below = Gauge::of(f); // from -2 to 7.2
    CHECK(below.band);
    CHECK(below.lo == Approx(0));
    CHECK(below.hi == Approx(6 / 9.2));
    f.measured = HUGE_VAL;
    CHECK_FALSE(Gauge::of(f).shown);
    f.measured = 0;
    f.limit = {};
    CHECK_FALSE(Gauge::of(f).shown);
}
