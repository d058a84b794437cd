// SPDX-License-Identifier: GPL-3.0-or-later
// How long it takes to read and to write a bundle of 10 MiB that is nearly all results: two years
// of a gym; and a table of 100 000 results, read and stored in a gym file. Prints one line each;
// ends with 1 when reading the bundle takes more than a second of the processor, or the table with
// its storing more than three (the time on the wall also has what else the machine does).
#include "interchange/bundle.hpp"
#include "interchange/results_csv.hpp"
#include "store/gym_file.hpp"
#include "support/fixtures.hpp"

#include <chrono>
#include <cstdio>
#include <ctime>
#include <string>

namespace {
constexpr std::size_t kBytes = 10u << 20;
constexpr double kMostSeconds = 1.0, kMostSecondsOfTable = 3.0;
constexpr std::size_t kRows = 100'000;

std::string numbered(const char* word, int n) {
    const auto text = std::to_string(n);
    return word + std::string(text.size() < 3 ? 3 - text.size() : 0, '0') + text;
}

std::string exercisesAndMembers() {
    std::string out = R"({"format": "blockwright-bundle", "version": 1, "shelf": [)";
    for (int i = 0; i < 20; ++i)
        out += (i ? ", " : "") + (R"({"id": ")" + numbered("lift-", i)) +
               R"(", "name": "Lift", "patterns": {"squat": 1}, "seconds_per_rep": 3})";
    out += R"(], "members": [)";
    for (int i = 0; i < 200; ++i)
        out += (i ? ", " : "") + (R"({"id": ")" + numbered("m-", i)) + R"(", "name": "Member"})";
    return out + R"(], "results": [)";
}

std::string result(int n) {
    const int day = n / 4000 % 28, month = n / 112'000 % 12;
    const auto two = [](int x) { return (x < 9 ? "0" : "") + std::to_string(x + 1); };
    return R"({"member": ")" + numbered("m-", n % 200) + R"(", "date": "2026-)" + two(month) + "-" +
           two(day) + R"(", "exercise": ")" + numbered("lift-", n / 200 % 20) +
           R"(", "set": 1, "reps": 5, "rir": 2, "load_kg": )" + std::to_string(20 + n % 80) + ".5}";
}

std::string tenMiB() {
    std::string out = exercisesAndMembers();
    for (int n = 0; out.size() < kBytes; ++n) out += (n ? ",\n" : "") + result(n);
    return out + "]}";
}

// The bundle's results, and after the last of them their next sets.
bw::LiftResult row(const std::vector<bw::LiftResult>& results, std::size_t n) {
    bw::LiftResult out = results[n % results.size()];
    out.set += static_cast<int>(n / results.size());
    return out;
}

bool store(bw::GymFile& file, const std::vector<bw::LiftResult>& results) {
    std::vector<bw::Change> changes;
    for (const bw::LiftResult& r : results) changes.emplace_back(bw::PutResult{r});
    return file.apply(changes).ok();
}

bool storeGym(bw::GymFile& file, const bw::Gym& gym) {
    std::vector<bw::Change> changes{bw::PutSettings{gym.settings}};
    for (const auto& e : gym.shelf.entries()) changes.emplace_back(bw::PutExercise{e});
    for (const bw::Member& m : gym.members) changes.emplace_back(bw::PutMember{m});
    return file.apply(changes).ok();
}

struct Took {
    double wall = 0, processor = 0; // seconds
};
template <class F> Took timed(F work) {
    const auto start = std::chrono::steady_clock::now();
    const auto ticks = std::clock();
    work();
    const std::chrono::duration<double> wall = std::chrono::steady_clock::now() - start;
    return {wall.count(), static_cast<double>(std::clock() - ticks) / CLOCKS_PER_SEC};
}

void print(const char* what, std::size_t bytes, Took took) {
    const double mib = static_cast<double>(bytes) / (1 << 20);
    std::printf("%s: %.1f MiB in %.3f s (%.3f s of the processor), %.1f MiB/s\n", what, mib,
                took.wall, took.processor, mib / took.wall);
}
} // namespace

int main() {
    const auto text = tenMiB();
    bw::BundleReading reading;
    const auto in = timed([&] { reading = bw::readBundle(text); });
    if (!reading.bundle) {
        std::fprintf(stderr, "%s: %s\n", reading.errors[0].pointer.c_str(),
                     reading.errors[0].text.english().c_str());
        return 2;
    }
    std::string written;
    const auto out = timed([&] { written = bw::writeBundle(*reading.bundle); });
    std::printf("%zu results\n", reading.bundle->results.size());
    print("import", text.size(), in);
    print("export", written.size(), out);

    bw::Gym gym;
    bw::layOver(gym, *reading.bundle);
    std::string table;
    const auto csvOut = timed([&] {
        bw::ResultsWriter writer(gym);
        for (std::size_t i = 0; i < kRows; ++i) writer.add(row(reading.bundle->results, i));
        table = writer.take();
    });
    bw::ResultsReading rows;
    const auto csvIn = timed([&] { rows = bw::readResultsCsv(table, gym); });
    if (rows.results.size() != kRows) return 2;
    const bw::test::TempFolder folder;
    const auto file = bw::GymFile::create(folder / "a gym.bwgym").value();
    if (!storeGym(*file, gym)) return 2;
    bool stored = false;
    const auto kept = timed([&] { stored = store(*file, rows.results); });
    if (!stored) return 2;
    std::printf("%zu rows\n", kRows);
    print("table in", table.size(), csvIn);
    print("table stored", table.size(), kept);
    print("table out", table.size(), csvOut);
    return in.processor <= kMostSeconds && csvIn.processor + kept.processor <= kMostSecondsOfTable
               ? 0
               : 1;
}
