// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out and paints the sheets, over and over; prints medians in milliseconds. Exit 1 when a page
// takes more than its 50 ms, or the cards of 40 members more than 1.5 s or 2 MiB.
#include "interchange/bundle.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/pdf.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_painter.hpp"
#include "sheets/wall_sheet.hpp"
#include "support/fixtures.hpp"

#include <QGuiApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

namespace {
constexpr int kRuns = 31;
constexpr double kMostPerPage = 50.0, kMostCards = 1500.0; // ms
constexpr std::size_t kMembers = 40;
constexpr std::uintmax_t kMostBytes = 2 << 20;

template <class Work> double median(Work work, int runs = kRuns) {
    std::vector<double> times;
    for (int i = 0; i < runs; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        times.push_back(took.count());
    }
    std::nth_element(times.begin(), times.begin() + runs / 2, times.end());
    return times[static_cast<std::size_t>(runs / 2)];
}

// The demonstration month with 40 active members: the first ones twice, results and all.
bw::test::DemoMonth fortyMembers() {
    const std::string file = BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json";
    bw::Bundle bundle = *bw::readBundle(bw::test::readText(file)).bundle;
    bw::Gym gym;
    bw::layOver(gym, bundle);
    for (bw::Member& m : gym.members) m.active = true;
    const std::size_t known = gym.members.size(), results = bundle.results.size();
    for (std::size_t i = 0; known + i < kMembers; ++i) {
        bw::Member twin = gym.members[i];
        const bw::MemberId id = twin.id;
        twin.id = bw::MemberId::parse(id.text() + "-b").value();
        for (std::size_t r = 0; r < results; ++r)
            if (bundle.results[r].member == id) {
                bundle.results.push_back(bundle.results[r]);
                bundle.results.back().member = twin.id;
            }
        gym.members.push_back(twin);
    }
    return bw::test::DemoMonth(std::move(gym), std::move(bundle.results));
}

bool handHeld(bw::SheetKind kind) {
    const auto matter = bw::test::demoMonth().matter();
    const auto options = bw::usualOptions(matter.gym.settings, kind);
    const bw::Layout layout = bw::layoutSheet(kind, matter, options);
    const auto pages = static_cast<int>(layout.pages.size());
    const double lay =
        median([&] { static_cast<void>(bw::layoutSheet(kind, matter, options)); }, 9);
    const double paint = median(
        [&] {
            for (int n = 0; n < pages; ++n) static_cast<void>(bw::pageImage(layout, n, 96));
        },
        9);
    const double perPage = (lay + paint) / pages;
    std::printf("%s: layout %.1f, painting %.1f, together %.1f a page of %d (at most %.0f)\n",
                std::string(bw::sheetWord(kind)).c_str(), lay, paint, perPage, pages, kMostPerPage);
    return perPage <= kMostPerPage;
}

bool manyCards() {
    const bw::test::DemoMonth month = fortyMembers();
    const bw::test::TempFolder folder;
    const auto file = folder / "cards.pdf";
    bool written = true;
    const double took = median(
        [&] {
            const auto options = bw::usualOptions(month.gym.settings, bw::SheetKind::Cards);
            written = bw::writePdf(QString::fromStdString(file.string()),
                                   bw::layoutSheet(bw::SheetKind::Cards, month.matter(), options))
                          .ok() &&
                      written;
        },
        5);
    const auto bytes = std::filesystem::file_size(file);
    std::printf("cards of %zu members into a PDF: %.0f (at most %.0f), %.2f MiB (at most 2)\n",
                kMembers, took, kMostCards, static_cast<double>(bytes) / (1 << 20));
    return written && took <= kMostCards && bytes <= kMostBytes;
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
    for (const bw::SheetKind kind :
         {bw::SheetKind::Cards, bw::SheetKind::Notes, bw::SheetKind::Kit, bw::SheetKind::Talk})
        fast = handHeld(kind) && fast;
    return manyCards() && fast ? 0 : 1;
}
