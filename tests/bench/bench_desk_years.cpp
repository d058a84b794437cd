// SPDX-License-Identifier: GPL-3.0-or-later
// The window over ten years of one gym (ten_years.hpp): each place shown for the first time, after
// an edit elsewhere and again; months stepped through; a keystroke, an entry and their undo; the
// people of the Ledger. Each from the key to the screen with nothing left to do but what runs in
// the background. Prints median and worst by the clock and the median of the processor; ends with 1
// when a median or the memory is over its mark.
//   bench_desk_years [--file]     --file: only say where the gym file is, and make it if need be
#include "desk/almanac/almanac_page.hpp"
#include "desk/almanac/almanac_view.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/class_model.hpp"
#include "desk/ledger/class_view.hpp"
#include "desk/ledger/ledger_page.hpp"
#include "desk/limits/limits_table.hpp"
#include "desk/propose/propose_strip.hpp"
#include "desk/stair/stair_page.hpp"
#include "edit/gym_verbs.hpp"
#include "support/fixtures.hpp"
#include "ten_years.hpp"

#include <QApplication>
#include <QComboBox>
#include <QListWidget>
#include <QTest>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <fstream>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostOpen = 300, kMost = 100, kMostMemory = 200; // ms, ms, MiB
constexpr int kRounds = 11;

struct Took {
    double wall = 0, processor = 0; // ms; the processor: of this thread
};

double threadMillis() {
    timespec now{};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

void settle() {
    for (int i = 0; i < 2; ++i) {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
}

template <class Work> Took timed(const Work& work) {
    const auto start = std::chrono::steady_clock::now();
    const double before = threadMillis();
    work();
    settle();
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
    return {wall.count(), threadMillis() - before};
}

// Of /proc/self/status, in MiB.
double memory(const char* row) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(row))
            return std::strtod(line.c_str() + std::strlen(row), nullptr) / 1024;
    return 0;
}

// What the coach does is what can't be done before: the program ends.
void must(bool done, const char* what) {
    if (done) return;
    std::fprintf(stderr, "%s\n", what);
    std::exit(2);
}

class Desk {
public:
    explicit Desk(const std::filesystem::path& file) {
        window.setTheme(Theme::Light);
        window.resize(1280, 720);
        window.openFile(file);
        window.show();
        settle();
        must(window.workspace() != nullptr, "the gym file did not open");
    }
    void press(const char* action) { window.actions().find(QLatin1String(action))->trigger(); }
    void key(Qt::Key key) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window, key);
    }
    void keys(const char* text) {
        for (const char* c = text; *c; ++c) QTest::keyClick(QApplication::focusWidget(), *c);
    }
    template <class W> W& part(const char* name = "") {
        W* found = window.findChild<W*>(QLatin1String(name));
        must(found != nullptr, "a part of the window is not there");
        return *found;
    }
    template <class P> P& page() {
        auto* found = qobject_cast<P*>(work().page());
        must(found != nullptr, "another page is on show");
        return *found;
    }
    Workspace& work() { return *window.workspace(); }
    // So that every page has to look at the gym anew.
    void editElsewhere() {
        GymSettings settings = work().gym().gym().settings;
        settings.name = "Edit " + std::to_string(++edits_);
        must(setSettings(work().gym(), settings).ok(), "the edit was not stored");
        settle();
    }

    MainWindow window;

private:
    int edits_ = 0;
};

class Report {
public:
    void tell(const std::string& what, std::vector<Took> took, double most = kMost) {
        const std::size_t middle = took.size() / 2;
        const auto byProcessor = [](const Took& a, const Took& b) {
            return a.processor < b.processor;
        };
        std::sort(took.begin(), took.end(), byProcessor);
        const double processor = took[middle].processor;
        std::sort(took.begin(), took.end(),
                  [](const Took& a, const Took& b) { return a.wall < b.wall; });
        const double median = took[middle].wall, worst = took.back().wall;
        std::printf("%-48s %3zu x  median %6.1f  worst %6.1f  processor %6.1f ms  %s\n",
                    what.c_str(), took.size(), median, worst, processor,
                    median > most  ? "MISSED"
                    : worst > most ? "ok, the worst over"
                                   : "ok");
        std::fflush(stdout);
        good_ = good_ && median <= most;
    }
    void tellMemory() {
        const double now = memory("VmRSS:"), peak = memory("VmHWM:");
        std::printf("%-48s now %.0f MiB, never more than %.0f (at most %.0f)  %s\n", "memory", now,
                    peak, kMostMemory, peak > kMostMemory ? "MISSED" : "ok");
        good_ = good_ && peak <= kMostMemory;
    }
    [[nodiscard]] bool good() const { return good_; }

private:
    bool good_ = true;
};

template <class Work> std::vector<Took> repeated(int times, const Work& work) {
    std::vector<Took> out;
    for (int i = 0; i < times; ++i) out.push_back(work(i));
    return out;
}

// `look`: the first time, as a coach sets the place up.
template <class Look>
void place(Report& report, Desk& desk, const char* action, const std::string& name, Look look) {
    const char* other = std::strcmp(action, "place-bench") == 0 ? "place-shelf" : "place-bench";
    const auto away = [&] {
        desk.press(other);
        settle();
    };
    away();
    report.tell(name + ", first time", {timed([&] {
                    desk.press(action);
                    look();
                })});
    report.tell(name + ", after an edit elsewhere", repeated(kRounds, [&](int) {
                    away();
                    desk.editElsewhere();
                    return timed([&] { desk.press(action); });
                }));
    report.tell(name + ", again", repeated(kRounds, [&](int) {
                    away();
                    return timed([&] { desk.press(action); });
                }));
}

void chooseMember(Desk& desk) {
    auto& box = desk.part<QComboBox>("stair-member");
    box.setCurrentIndex(1);
    Q_EMIT box.activated(1);
}

void showAllMonths(Desk& desk) {
    auto& page = desk.page<AlmanacPage>();
    auto* span = page.findChild<QComboBox*>();
    span->setCurrentIndex(span->findText(AlmanacPage::tr("all months")));
    must(page.table(1).model()->columnCount() == kYearsMonths, "the Almanac has other months");
}

Date classDay() { return Date::of(2026, 11, 24).value(); }

void places(Report& report, Desk& desk) {
    place(report, desk, "place-bench", "Bench", [] {});
    place(report, desk, "place-floor", "Floor", [] {});
    place(report, desk, "place-stair", "Stair, with a member", [&] { chooseMember(desk); });
    place(report, desk, "place-shelf", "Shelf", [] {});
    place(report, desk, "place-almanac", "Almanac, 120 months", [&] { showAllMonths(desk); });
    place(report, desk, "place-ledger", "Ledger, a class day",
          [&] { desk.page<LedgerPage>().showDay(classDay()); });
    place(report, desk, "house-limits", "House limits", [] {});
}

void sheets(Report& report, Desk& desk) {
    desk.press("place-sheets");
    settle();
    auto& list = *desk.work().page()->findChild<QListWidget*>();
    for (int row = 0; row < list.count(); ++row)
        place(report, desk, "place-sheets", "Sheets, " + list.item(row)->text().toStdString(),
              [&] { list.setCurrentRow(row); });
}

void months(Report& report, Desk& desk) {
    for (const auto& [action, name] : {std::pair{"place-bench", "month stepped on the Bench"},
                                       {"place-floor", "month stepped on the Floor"},
                                       {"place-stair", "month stepped on the Stair, with a member"},
                                       {"place-shelf", "month stepped on the Shelf"},
                                       {"place-almanac", "month stepped on the Almanac"}}) {
        desk.press(action);
        settle();
        report.tell(name, repeated(20, [&](int i) {
                        return timed([&] { desk.press(i < 10 ? "previous-month" : "next-month"); });
                    }));
    }
}

// Key by key, then Enter, then undo.
void typing(Report& report, Desk& desk) {
    desk.press("place-bench");
    settle();
    auto& sheet = desk.part<SheetView>();
    std::vector<Took> dose, doseDone, letters, picked, undone;
    const auto cell = [&](SheetColumn column) {
        const QModelIndex at = sheet.model()->index(1, static_cast<int>(column));
        sheet.setCurrentIndex(at);
        sheet.edit(at);
        auto* editor = sheet.findChild<CellEditor*>();
        editor->clear();
        settle();
        return editor;
    };
    const auto enter = [&](CellEditor* editor, std::vector<Took>& into) {
        into.push_back(timed([&] { QTest::keyClick(editor, Qt::Key_Return); }));
        undone.push_back(timed([&] { desk.press("undo"); }));
    };
    for (int i = 0; i < kRounds; ++i) {
        auto* editor = cell(SheetColumn::Dose);
        const char digit = static_cast<char>('2' + i % 2);
        dose.push_back(timed([&] { QTest::keyClick(editor, digit); }));
        enter(editor, doseDone);
        editor = cell(SheetColumn::Exercise);
        for (const char c : {'s', 'q', 'u'})
            letters.push_back(timed([&] { QTest::keyClick(editor, c); }));
        enter(editor, picked);
    }
    report.tell("Bench: a digit of a dose", std::move(dose));
    report.tell("Bench: the dose entered", std::move(doseDone));
    report.tell("Bench: a letter of an exercise", std::move(letters));
    report.tell("Bench: the exercise picked", std::move(picked));
    report.tell("Bench: undo", std::move(undone));
}

void proposals(Report& report, Desk& desk) {
    auto& strip = desk.work().bench().proposals();
    report.tell("a proposal for one slot, to the first answer", repeated(kRounds, [&](int) {
                    const Took took = timed([&] {
                        desk.press("propose-slot");
                        must(QTest::qWaitFor([&] { return !strip.looking(); }, 60'000), "no end");
                    });
                    must(strip.answer() != nullptr, "no answer");
                    strip.leave();
                    settle();
                    return took;
                }));
}

void ledger(Report& report, Desk& desk) {
    desk.press("place-ledger");
    auto& page = desk.page<LedgerPage>();
    page.showDay(classDay());
    settle();
    ClassView& grid = page.grid();
    report.tell("Ledger: another class day", repeated(kRounds, [&](int i) {
                    return timed([&] { page.showDay(classDay().plusDays(-7 * (i + 1))); });
                }));
    page.showDay(classDay());
    settle();
    report.tell("Ledger: the next member and the trend", repeated(kRounds, [&](int i) {
                    return timed([&] { grid.setCurrentIndex(grid.model()->index(i + 1, 0)); });
                }));
    report.tell("Ledger: another exercise's trend", repeated(kRounds, [&](int i) {
                    return timed([&] { grid.setCurrentIndex(grid.model()->index(2, i % 4)); });
                }));
    report.tell("Ledger: a page down", repeated(3, [&](int) {
                    return timed([&] { QTest::keyClick(&grid, Qt::Key_PageDown); });
                }));
    std::vector<Took> keys, entered, undone;
    for (int i = 0; i < kRounds; ++i) {
        grid.setFocus();
        grid.setCurrentIndex(grid.model()->index(i, 1));
        settle();
        for (const char c : {'4', '0', 'x', '5'})
            keys.push_back(timed([&] { QTest::keyClick(QApplication::focusWidget(), c); }));
        entered.push_back(timed([&] { desk.key(Qt::Key_Return); }));
        undone.push_back(timed([&] { desk.press("undo"); }));
    }
    report.tell("Ledger: a digit typed", std::move(keys));
    report.tell("Ledger: the sets entered", std::move(entered));
    report.tell("Ledger: undo", std::move(undone));
}

void limits(Report& report, Desk& desk) {
    desk.press("house-limits");
    settle();
    auto& table = desk.part<LimitsTable>();
    report.tell("House limits: the next line",
                repeated(kRounds, [&](int i) { return timed([&] { table.goTo(i + 1); }); }));
    desk.press("place-bench");
    settle();
}
} // namespace

int main(int argc, char* argv[]) {
    const auto kept = tenYears();
    if (argc > 1 && std::strcmp(argv[1], "--file") == 0) return std::puts(kept.c_str()) < 0 ? 1 : 0;
    const TempFolder home;
    qputenv("BLOCKWRIGHT_HOME", QByteArray::fromStdString(home.path().string()));
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const auto file = home / "ten years.bwgym";
    std::filesystem::copy_file(kept, file);
    QApplication app(argc, argv);
    Report report;
    report.tell("gym file opened, to the painted Bench",
                repeated(5,
                         [&](int) {
                             std::optional<Desk> desk;
                             return timed([&] { desk.emplace(file); });
                         }),
                kMostOpen);
    Desk desk(file);
    QTest::qWait(2'000); // until the first class is played
    places(report, desk);
    sheets(report, desk);
    months(report, desk);
    typing(report, desk);
    proposals(report, desk);
    ledger(report, desk);
    limits(report, desk);
    report.tellMemory();
    return report.good() ? 0 : 1;
}
