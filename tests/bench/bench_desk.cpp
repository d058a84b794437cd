// SPDX-License-Identifier: GPL-3.0-or-later
// With the demo: from a keystroke in a dose cell to the repainted Bench, while classes are
// simulated in the background; from the end of an edit's rest to 1 000 simulated classes on the
// Bench; the lanes of 40 members painted; a Shelf of 1 000 exercises opened, and narrowed by a
// letter. Prints medians and the slowest tenth; ends with 1 when a median is over its mark.
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/floor/floor_lanes.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/shelf/word_line.hpp"
#include "edit/gym_verbs.hpp"
#include "support/fixtures.hpp"

#include <QApplication>
#include <QSpinBox>
#include <QTest>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <utility>
#include <vector>

using namespace bw;

namespace {
// Milliseconds.
constexpr double kFrame = 16, kMostLive = 50, kMostPaint = 10, kMostOpen = 100;
constexpr std::size_t kShelf = 1'000;
constexpr int kKeys = 300, kSlowKeys = 30, kShelfRounds = 25;

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since)
        .count();
}

// One keystroke: the digit goes in, the draft is measured, every widget that changed is painted.
double keystroke(QWidget& editor, char key) {
    const auto start = std::chrono::steady_clock::now();
    QTest::keyClick(&editor, key);
    QCoreApplication::processEvents();
    return milliseconds(start);
}

bool told(const char* what, std::vector<double> times, double most) {
    std::sort(times.begin(), times.end());
    const double median = times[times.size() / 2];
    std::printf("%-58s median %5.1f ms, slowest tenth from %5.1f ms (at most %.0f)%s\n", what,
                median, times[times.size() * 9 / 10], most, median <= most ? "" : "  MISSED");
    return median <= most;
}

// A rest before each key: 0, or long enough for the classes to be played when the next one comes.
std::vector<double> keystrokes(MainWindow& window, int keys, int rest) {
    auto* sheet = window.findChild<SheetView*>();
    const QModelIndex dose = sheet->model()->index(1, static_cast<int>(SheetColumn::Dose));
    sheet->setCurrentIndex(dose);
    sheet->edit(dose);
    auto* editor = sheet->findChild<CellEditor*>();
    std::vector<double> times;
    for (int i = 0; i < keys; ++i) {
        editor->clear();
        if (rest > 0) QTest::qWait(rest);
        times.push_back(keystroke(*editor, static_cast<char>('1' + i % 9)));
    }
    QTest::keyClick(editor, Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return times;
}

bool settled(FloorRunner& floor) {
    return QTest::qWaitFor([&] { return floor.settled(); }, 120'000);
}

// From when the edit has rested to the strip over the Minute rail.
std::vector<double> liveClasses(Workspace& work) {
    FloorRunner& floor = work.floor();
    std::vector<double> times;
    std::chrono::steady_clock::time_point begun;
    bool waiting = false;
    QObject::connect(&floor, &FloorRunner::stateChanged, &floor, [&] {
        if (floor.running()) begun = std::chrono::steady_clock::now();
    });
    QObject::connect(&floor, &FloorRunner::told, &floor, [&] {
        if (std::exchange(waiting, false)) times.push_back(milliseconds(begun));
    });
    for (int i = 0; i < 15; ++i) {
        (void)settled(floor);
        waiting = true;
        work.draft().preview([&](Block& b) { b.title = std::to_string(i); });
        (void)QTest::qWaitFor([&] { return !waiting; }, 10'000);
    }
    work.draft().endPreview();
    floor.disconnect(&floor);
    return times;
}

std::vector<double> lanesPainted(MainWindow& window) {
    window.workspace()->draft().endPreview();
    window.actions().find(QStringLiteral("place-floor"))->trigger();
    window.findChild<QSpinBox*>(QStringLiteral("floor-members"))->setValue(40);
    auto* lanes = window.findChild<FloorLanes*>();
    (void)QTest::qWaitFor([&] { return lanes->plan().lanes.size() == 40; }, 60'000);
    std::vector<double> times;
    QImage image(lanes->viewport()->size(), QImage::Format_ARGB32_Premultiplied);
    for (int i = 0; i < 60; ++i) {
        const auto start = std::chrono::steady_clock::now();
        lanes->viewport()->render(&image);
        times.push_back(milliseconds(start));
    }
    return times;
}

// Copies of what is there, until there are enough.
void fillShelf(OpenGym& gym) {
    const auto entries = gym.gym().shelf.entries();
    Step step{{"many exercises", {}}, {}, {}, {}};
    for (std::size_t i = entries.size(); i < kShelf; ++i) {
        Exercise e = *entries[i % entries.size()];
        e.name += " " + std::to_string(i);
        e.id = ExerciseId::parse(e.id.text() + "-" + std::to_string(i)).value();
        step.changes.emplace_back(PutExercise{std::make_shared<const Exercise>(std::move(e))});
    }
    (void)gym.change(std::move(step));
}

// After an edit elsewhere, so that all of it is read anew.
std::vector<double> shelfOpened(MainWindow& window) {
    OpenGym& gym = window.workspace()->gym();
    std::vector<double> times;
    for (int i = 0; i < 15; ++i) {
        window.actions().find(QStringLiteral("place-bench"))->trigger();
        GymSettings settings = gym.gym().settings;
        settings.name = std::to_string(i);
        (void)setSettings(gym, settings);
        QCoreApplication::processEvents();
        const auto start = std::chrono::steady_clock::now();
        window.actions().find(QStringLiteral("place-shelf"))->trigger();
        QCoreApplication::processEvents();
        times.push_back(milliseconds(start));
    }
    return times;
}

std::vector<double> shelfKeys(MainWindow& window) {
    auto* filter = window.findChild<WordLine*>();
    std::vector<double> times;
    for (int i = 0; i < kShelfRounds; ++i) {
        filter->clear();
        QCoreApplication::processEvents();
        for (const char key : {'s', 'q', 'u', 'a', 't', ' ', 'u', 'n', 'u', 's', 'e', 'd'})
            times.push_back(keystroke(*filter, key));
    }
    return times;
}
} // namespace

int main(int argc, char* argv[]) {
    const test::TempFolder home;
    qputenv("BLOCKWRIGHT_HOME", QByteArray::fromStdString(home.path().string()));
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    MainWindow window;
    window.setTheme(Theme::Light);
    window.openDemo();
    window.show();
    QCoreApplication::processEvents();
    bool good = true;
    for (const QSize size : {QSize(1280, 720), QSize(1920, 1080)}) {
        window.resize(size);
        QCoreApplication::processEvents();
        const auto name = "keystroke to repainted Bench, " + std::to_string(size.width()) + " x " +
                          std::to_string(size.height());
        good = told(name.c_str(), keystrokes(window, kKeys, 0), kFrame) && good;
    }
    good = told("the same while classes are simulated",
                keystrokes(window, kSlowKeys, FloorRunner::kDelay + 40), kFrame) &&
           good;
    good = told("1 000 classes on the Bench after an edit", liveClasses(*window.workspace()),
                kMostLive) &&
           good;
    good = told("lanes of 40 members painted", lanesPainted(window), kMostPaint) && good;
    fillShelf(window.workspace()->gym());
    good = told("Shelf of 1 000 exercises opened", shelfOpened(window), kMostOpen) && good;
    good = told("letter in its filter to repainted Shelf", shelfKeys(window), kFrame) && good;
    return good ? 0 : 1;
}
