// SPDX-License-Identifier: GPL-3.0-or-later
// One member's part of the Stair, from a real gym file.
#include "desk/frame/workspace.hpp"
#include "desk/stair/member_panel.hpp"
#include "desk/stair/stair_page.hpp"
#include "desk/stair/week_table.hpp"
#include "edit/block_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QTextBrowser>

namespace bw::test {

namespace {
MemberId memberOf(const char* id) { return MemberId::parse(id).value(); }
Mass kg(double x) { return Mass::fromKg(x).value(); }

KitItem bar() {
    return {kit("bar"),
            "Bar",
            6,
            Claim::Group,
            {},
            kg(20),
            {{kg(20), 8}, {kg(10), 4}, {kg(5), 4}, {kg(2.5), 4}, {kg(1.25), 4}},
            {}};
}

Exercise lift(const char* id, const char* load, Pattern pattern, KitNeeds needs = {}) {
    Exercise e = exercise(id, pattern);
    e.load = LoadId::parse(load).value();
    e.needs = std::move(needs);
    e.roles = {RoleId::parse("strength-heavy").value(), RoleId::parse("strength-long").value()};
    return e;
}

// A squat with the bar and a chin-up in September's strength pair, a press over head behind them.
std::vector<Change> house() {
    Exercise press = lift("press", "barbell", Pattern::VerticalPush, {{{kit("bar"), 1, {}}}});
    REQUIRE(press.demands.set(Demand::Overhead, 3).ok());
    press.swaps = {ex("floor-press")};
    Exercise chin = lift("chin-up", "bodyweight", Pattern::VerticalPull);
    chin.harder = {ex("weighted-chin-up")};
    GymSettings settings;
    settings.name = "Tide Mill";
    Member bea{
        memberOf("m-2"), "Bea Quill", {{Demand::Overhead, FlagLevel::Avoid, "sore", {}}}, true, {}};
    std::vector<Change> all{PutSettings{settings}, PutKit{bar()}};
    for (Exercise& e :
         std::vector{lift("squat", "barbell", Pattern::Squat, {{{kit("bar"), 1, {}}}}), chin, press,
                     lift("weighted-chin-up", "bodyweight", Pattern::VerticalPull),
                     lift("floor-press", "bodyweight", Pattern::HorizontalPush)})
        all.emplace_back(PutExercise{std::make_shared<const Exercise>(std::move(e))});
    all.emplace_back(PutMember{{memberOf("m-1"), "Ann Orlop", {}, true, {}}});
    all.emplace_back(PutMember{bea});
    all.emplace_back(PutMember{{memberOf("m-3"), "Anselm Fry", {}, true, {}}});
    all.emplace_back(PutMember{{memberOf("m-4"), "Gone Away", {}, false, {}}});
    all.emplace_back(PutBlock{std::make_shared<const Block>(block(
        "2026-09",
        {section(SectionKind::Strength,
                 {group(rounds(2, 3), secondsRange(60, 90),
                        {slot("squat", reps(5, 5)), slot("chin-up", reps(5, 8))}),
                  group(rounds(2, 3), secondsRange(60, 90), {slot("press", reps(5, 5))})})}))});
    return all;
}

PutResult did(const char* who, const char* id, const char* day, int reps, double rir, double load) {
    LiftResult r{memberOf(who), Date::parse(day).value(), ex(id), 1,
                 reps,          Rir::of(rir).value(),     {},     {}};
    if (load > 0) r.load = kg(load);
    return {std::move(r)};
}

struct MemberDesk : FrameDesk {
    explicit MemberDesk(const std::vector<Change>& more = {}) {
        auto file = GymFile::create(folder / "tide mill.bwgym").value();
        REQUIRE(file->apply(house()).ok());
        REQUIRE(file->apply(more).ok());
        window.take(OpenGym::over(std::move(file)));
        settle();
        press(Qt::Key_3, Qt::AltModifier);
        page = qobject_cast<StairPage*>(work().page());
    }
    void choose(const char* typed) {
        press(Qt::Key_B, Qt::AltModifier);
        auto& line = *part<QComboBox>("stair-member").lineEdit();
        line.selectAll();
        QTest::keyClick(&line, Qt::Key_Delete);
        QTest::keyClicks(&line, QLatin1String(typed));
        QTest::keyClick(&line, Qt::Key_Return);
        settle();
    }
    std::string target(int row, int week) {
        return part<WeekTable>("stair-slots")
            .model()
            ->index(row, WeekModel::kFirstWeek + week - 1)
            .data(WeekModel::Target)
            .toString()
            .toStdString();
    }
    std::string name(int row) {
        return part<WeekTable>("stair-slots")
            .model()
            ->index(row, 0)
            .data()
            .toString()
            .toStdString();
    }
    QString pageOf(int row) {
        auto& table = part<WeekTable>("stair-slots");
        table.setCurrentIndex(table.model()->index(row, WeekModel::kFirstWeek));
        settle();
        return part<QTextBrowser>("stair-slot-page").toPlainText();
    }
    TempFolder folder;
    StairPage* page = nullptr;
};
} // namespace

TEST_CASE("Nobody is chosen at first, and no target stands in the table") {
    MemberDesk d({did("m-1", "squat", "2026-08-27", 5, 1, 100)});
    CHECK_FALSE(d.page->findChild<StairMemberPanel*>()->member());
    CHECK(d.target(0, 1).empty());
    CHECK(d.part<QComboBox>("stair-member").count() == 4); // nobody and the three who come
}

TEST_CASE("Part of a name chooses a member; the loads are what the gym can put on the bar") {
    MemberDesk d({did("m-1", "squat", "2026-08-27", 5, 1, 100)}); // Epley: 120 kg
    d.choose("orlop");
    REQUIRE(d.page->findChild<StairMemberPanel*>()->member() == memberOf("m-1"));
    // 120 / (1 + 9/30) = 92.3, / (1 + 8/30) = 94.7, / (1 + 7/30) = 97.3, / (1 + 6/30) = 100
    for (const auto& [week, load] :
         {std::pair{1, "92.5 kg"}, {2, "95 kg"}, {3, "97.5 kg"}, {4, "100 kg"}})
        CHECK(d.target(0, week) == load);
    const QString page = d.pageOf(0);
    for (const char* words :
         {"About 120 kg (8 times in 10 from ", "Week 1 · 92.5 kg: each side 20 + 10 + 5 + 1.25",
          "92.3 kg for 5 repetitions with 4 in reserve, by the estimate."})
        CHECK(page.contains(QString::fromUtf8(words)));
}

TEST_CASE("Choosing a member, or another month, leads to a lift there is something to say of") {
    MemberDesk d({did("m-1", "chin-up", "2026-08-27", 9, 1, 0),
                  did("m-1", "press", "2026-08-27", 5, 1, 40)});
    const auto row = [&] { return d.part<WeekTable>("stair-slots").currentIndex().row(); };
    CHECK(row() == 0);
    d.choose("orlop");
    CHECK(row() == 2);
    CHECK(d.work().draft().place() == Place{0, 1, 0});
    d.pageOf(0);
    d.choose("bea"); // a flag against the press
    CHECK(row() == 2);
}

TEST_CASE("A name that fits several members, or none, changes nobody") {
    MemberDesk d;
    d.choose("bea");
    d.choose("An");
    CHECK(d.page->findChild<StairMemberPanel*>()->member() == memberOf("m-2"));
    d.choose("zzz");
    CHECK(d.page->findChild<StairMemberPanel*>()->member() == memberOf("m-2"));
    CHECK(d.part<QComboBox>("stair-member").currentText() == QStringLiteral("Bea Quill"));
    d.choose("");
    CHECK_FALSE(d.page->findChild<StairMemberPanel*>()->member());
}

TEST_CASE("Without a history the load is found in week 1") {
    MemberDesk d;
    d.choose("orlop");
    CHECK(d.target(0, 1) == "find it");
    CHECK(d.target(0, 2) == "follow");
    CHECK(d.pageOf(0).contains(QStringLiteral("Week 1\nFind it: the load for 5 repetitions")));
    CHECK(d.pageOf(0).contains(QStringLiteral("4 in reserve")));
}

TEST_CASE("A drag of the stair moves the loads along, from what was read before") {
    MemberDesk d({did("m-1", "squat", "2026-08-27", 5, 1, 100)});
    d.choose("orlop");
    d.work().draft().preview([](Block& b) { b.stair[0].rir = Rir::of(3).value(); });
    CHECK(d.target(0, 1) == "95 kg");
    d.work().draft().endPreview();
    CHECK(d.target(0, 1) == "92.5 kg");
}

TEST_CASE("A flag names another exercise and says why") {
    MemberDesk d;
    CHECK(d.name(2) == "B1  press");
    d.choose("bea");
    CHECK(d.name(2) == "B1  floor-press");
    const QString page = d.pageOf(2);
    CHECK(page.contains(QStringLiteral("Instead: floor-press")));
    CHECK(page.contains(QStringLiteral("3 of 3")));
    CHECK(page.contains(QStringLiteral("licensed professional")));
    CHECK(d.pageOf(0).contains(QStringLiteral("B1 press → floor-press")));
    d.choose("orlop");
    CHECK(d.name(2) == "B1  press");
}

TEST_CASE("What the body alone loads goes on to the harder option") {
    MemberDesk d({did("m-1", "chin-up", "2026-08-27", 9, 1, 0)});
    d.choose("orlop");
    CHECK(d.target(1, 1) == "harder");
    CHECK(d.pageOf(1).contains(QStringLiteral("go on to weighted-chin-up")));
}

TEST_CASE("What was lifted in the month stands under the plan") {
    MemberDesk d(
        {did("m-1", "squat", "2026-09-01", 5, 2, 90), did("m-1", "squat", "2026-09-03", 5, 2, 90)});
    auto& loads = d.part<WeekTable>("stair-loads");
    CHECK(loads.model()->rowCount() == 5);
    d.choose("orlop");
    REQUIRE(loads.model()->rowCount() == 7);
    CHECK(loads.model()->index(5, WeekModel::kFirstWeek).data().toString() == QStringLiteral("2"));
    d.choose("anselm");
    CHECK(loads.model()->rowCount() == 5);
}

TEST_CASE("A member who leaves the gym is no longer chosen") {
    MemberDesk d;
    d.choose("bea");
    Member gone = *d.gym().findMember(memberOf("m-2"));
    gone.active = false;
    REQUIRE(d.work().gym().change({{"member", {}}, {PutMember{gone}}, {}, {}}).ok());
    CHECK_FALSE(d.page->findChild<StairMemberPanel*>()->member());
    CHECK(d.name(2) == "B1  press");
}

} // namespace bw::test
