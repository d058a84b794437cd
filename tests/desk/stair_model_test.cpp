// SPDX-License-Identifier: GPL-3.0-or-later
// The Stair's tables as models, and its drawing in pixels.
#include "desk/rail_gym.hpp"
#include "desk/stair/stair_geometry.hpp"
#include "desk/stair/week_models.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>

using namespace bw;
using namespace bw::test;

namespace {
std::string cell(const QAbstractItemModel& model, int row, int week) {
    return model.index(row, WeekModel::kFirstWeek + week - 1).data().toString().toStdString();
}
} // namespace

TEST_CASE("the tables keep a model's promises while months, weeks and members change") {
    RailGym g;
    SlotModel slots;
    LoadModel loads;
    QAbstractItemModelTester one(&slots, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester two(&loads, QAbstractItemModelTester::FailureReportingMode::Fatal);
    Block draft = g.stored();
    const auto show = [&] {
        const int weeks = static_cast<int>(draft.stair.size());
        slots.show(stairRows(g.open->gym(), draft, nullptr), weeks);
        loads.show(loadRows(g.open->gym(), draft, nullptr), weeks);
    };
    show();
    CHECK(slots.rowCount() == 5);
    CHECK(slots.columnCount() == 6);
    draft.stair.resize(6);
    show();
    CHECK(slots.columnCount() == 8);
    draft.sections.pop_back();
    show();
    CHECK(slots.rowCount() == 1);
    draft.sections.clear();
    show();
    CHECK(slots.rowCount() == 0);
    CHECK(loads.rowCount() == 5);
}

TEST_CASE("a slot's row tells rounds and reserve of each week, where reserve is meant") {
    RailGym g;
    SlotModel slots;
    slots.show(stairRows(g.open->gym(), g.stored(), nullptr), 4);
    CHECK(cell(slots, 0, 1) == "2"); // the warm-up has no effort
    CHECK(cell(slots, 1, 1) == "2 · 4 left");
    CHECK(cell(slots, 1, 4) == "2–3 · 1 left");
    CHECK(slots.index(1, WeekModel::kDose).data().toString() == QStringLiteral("5"));
    CHECK(slots.index(1, WeekModel::kFirstWeek).data(Qt::AccessibleTextRole).toString() ==
          QStringLiteral("Week 1, B1 squat: 2 rounds of 5 with 4 in reserve."));
    CHECK(slots.rowOf({1, 0, 1}) == 2);
    CHECK(slots.rowOf({7, 0, 0}) == -1);
}

TEST_CASE("the loads are minutes times effort over the visits of the week") {
    RailGym g;
    Block draft = g.stored();
    draft.visitsPerWeek = 2;
    LoadModel loads;
    loads.show(loadRows(g.open->gym(), draft, nullptr), 4);
    // Week 1: opening 180, A 78, talk 60, B 2 x 45 and a rest of 90, another, C 120, closing 120
    const double minutes = 828 / 60.0;
    CHECK(cell(loads, 0, 1) == "14");
    CHECK(cell(loads, 1, 1) == "6.0");
    CHECK(cell(loads, 2, 1) == std::to_string(std::lround(2 * 6 * minutes)));
    // two like days in seven: sqrt(2/5)
    CHECK(cell(loads, 3, 1) == "0.63");
}

TEST_CASE("a step is as high as its effort, and can be read back from the paper") {
    const StairGeometry g = stairGeometry(QRectF(0, 0, 700, 213), 240, 100, 4, QFont());
    CHECK(g.step(0, Rir::of(10).value()).height() == Approx(0));
    const double full = g.step(0, Rir::of(0).value()).height();
    CHECK(g.step(2, Rir::of(4).value()).height() == Approx(0.6 * full));
    CHECK(g.step(2, Rir::of(4).value()).left() == Approx(440));
    for (int half = 0; half <= 20; ++half) {
        const Rir rir = Rir::fromTenths(half * 5).value();
        CHECK(g.rirAt(g.yOf(rir)) == rir);
    }
    CHECK(g.rirAt(-500) == Rir::of(0).value());
    CHECK(g.rirAt(5000) == Rir::of(10).value());
    CHECK(g.weekAt({239, 50}) == -1);
    CHECK(g.weekAt({240, 50}) == 0);
    CHECK(g.weekAt({639, 50}) == 3);
    CHECK(g.weekAt({641, 50}) == -1);
}
