// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out and paints the wall sheet of the demo month, over and over; prints medians in
// milliseconds. Exit 1 when a page takes more than its 50 ms.
#include "sheets/low_tide.hpp"
#include "sheets/sheet_painter.hpp"
#include "sheets/wall_sheet.hpp"

#include <QGuiApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

namespace {
constexpr int kRuns = 31;
constexpr double kMostPerPage = 50.0; // ms

template <class Work> double median(Work work) {
    std::vector<double> times;
    for (int i = 0; i < kRuns; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        times.push_back(took.count());
    }
    std::nth_element(times.begin(), times.begin() + kRuns / 2, times.end());
    return times[kRuns / 2];
}
} // namespace

int main(int argc, char* argv[]) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication app(argc, argv);
    const bw::Gym gym = bw::test::saltmarsh();
    const bw::Block block = bw::test::lowTide();
    bool fast = true;
    for (const bw::Paper paper : {bw::Paper::A4, bw::Paper::A3}) {
        bw::SheetOptions options;
        options.paper = paper;
        const bw::Layout layout = bw::layoutWall(gym, block, options);
        const auto pages = static_cast<int>(layout.pages.size());
        const double lay = median([&] { static_cast<void>(bw::layoutWall(gym, block, options)); });
        const double paint = median([&] {
            for (int n = 0; n < pages; ++n) static_cast<void>(bw::pageImage(layout, n, 96));
        });
        const double perPage = (lay + paint) / pages;
        std::printf(
            "wall %s: layout %.1f, painting %.1f, together %.1f a page of %d (at most %.0f)\n",
            std::string(bw::wordOf(paper)).c_str(), lay, paint, perPage, pages, kMostPerPage);
        fast = fast && perPage <= kMostPerPage;
    }
    return fast ? 0 : 1;
}
