// SPDX-License-Identifier: GPL-3.0-or-later
// Two months of a small class:
//   2026-11  A1 floor-press 5 (barbell), A2 towel-row 8 to 10 (barbell), B1 high-press (barbell,
//            overhead 3), B2 plank (seconds); a warm-up with box-squat
//   m-001 Ada   results of floor-press on 3 and 5 November, three sets each
//   m-002 Bo    a flag on overhead; low-press is the easier version of high-press
//   m-003 Cy    comes no more
#pragma once
#include "desk/ledger/class_model.hpp"
#include "desk/ledger/class_view.hpp"
#include "desk/ledger/ledger_page.hpp"
#include "desk/ledger/member_panel.hpp"
#include "frame_desk.hpp"

#include <QApplication>
#include <QLabel>
#include <QTest>

namespace bw::test {

inline Date day(std::string_view text) { return Date::parse(text).value(); }
inline MemberId who(std::string_view id) { return MemberId::parse(id).value(); }

inline Exercise barbell(std::string_view id, Pattern pattern) {
    Exercise e = exercise(id, pattern);
    e.load = LoadId::parse("barbell").value();
    e.roles = {RoleId::parse("main-lift").value()};
    return e;
}

inline Gym ledgerGym() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.shelf.put(barbell("floor-press", Pattern::HorizontalPush));
    gym.shelf.put(barbell("towel-row", Pattern::HorizontalPull));
    Exercise low = barbell("low-press", Pattern::VerticalPush);
    gym.shelf.put(low);
    Exercise high = barbell("high-press", Pattern::VerticalPush);
    (void)high.demands.set(Demand::Overhead, 3);
    high.easier = {ex("low-press")};
    gym.shelf.put(high);
    gym.shelf.put(exercise("box-squat", Pattern::Squat));
    Exercise plank = blankExercise(ex("plank"), "plank", Pace::of(Measure::Seconds, {}).value());
    gym.shelf.put(plank);
    Block b = block(
        "2026-11",
        {section(SectionKind::WarmUp,
                 {group(rounds(1, 1), secondsRange(0, 0), {slot("box-squat", reps(8, 8))})}),
         section(SectionKind::Strength,
                 {group(rounds(2, 3), secondsRange(60, 120),
                        {slot("floor-press", reps(5, 5)), slot("towel-row", reps(8, 10))}),
                  group(rounds(2, 3), secondsRange(60, 120),
                        {slot("high-press", reps(5, 5)), slot("plank", secondsDose(30, 30))})})});
    b.title = "Low tide";
    gym.put(std::move(b));
    gym.put(Member{who("m-001"), "Ada", {}, true, {}});
    gym.put(Member{
        who("m-002"), "Bo", {{Demand::Overhead, FlagLevel::Avoid, "right <side>", {}}}, true, {}});
    gym.put(Member{who("m-003"), "Cy", {}, false, {}});
    return gym;
}

inline LiftResult lifted(const char* member, const char* date, const char* exercise, int set,
                         int reps, double kg, double left) {
    return {who(member),
            day(date),
            ex(exercise),
            set,
            reps,
            Rir::of(left).value(),
            Mass::fromKg(kg).value(),
            {}};
}

struct LedgerDesk : FrameDesk {
    explicit LedgerDesk(Gym gym = ledgerGym()) {
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        for (int set = 1; set <= 3; ++set) {
            file->results.push_back(lifted("m-001", "2026-11-03", "floor-press", set, 5, 40, 3));
        }
        for (int set = 1; set <= 3; ++set)
            file->results.push_back(lifted("m-001", "2026-11-05", "floor-press", set, 5, 42.5, 2));
        window.take(OpenGym::over(std::move(owned)));
        settle();
        press(Qt::Key_6, Qt::AltModifier);
        page = qobject_cast<LedgerPage*>(work().page());
        if (!page) throw std::runtime_error("Alt+6 leads elsewhere");
        page->showDay(day("2026-11-10"));
        settle();
    }
    ClassView& grid() { return page->grid(); }
    ClassModel& model() { return page->model(); }
    QModelIndex at(int row, int column) { return model().index(row, column); }
    std::string text(int row, int column, int role = Qt::DisplayRole) {
        return at(row, column).data(role).toString().toStdString();
    }
    void go(int row, int column) {
        grid().setFocus();
        grid().setCurrentIndex(at(row, column));
        settle();
    }
    // To wherever the keyboard is, a key after the other.
    void keys(const char* text) {
        for (const char* c = text; *c; ++c) {
            QTest::keyClick(QApplication::focusWidget(), *c);
            settle();
        }
    }
    std::string words(const char* name) {
        return page->findChild<QLabel*>(QLatin1String(name))->text().toStdString();
    }
    std::string stored(const char* member, const char* exercise, const char* date = "2026-11-10") {
        std::vector<LiftedSet> sets;
        for (const LiftResult& r : file->results)
            if (r.member == who(member) && r.exercise == ex(exercise) && r.date == day(date))
                sets.push_back({r.reps, r.rir, r.load});
        return setsText(sets, MassUnit::Kg);
    }

    MemoryFile* file = nullptr;
    LedgerPage* page = nullptr;
};

} // namespace bw::test
