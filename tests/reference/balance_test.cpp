// SPDX-License-Identifier: GPL-3.0-or-later
// The balance against a session that was reckoned by hand in docs/balance.md, and hard sets against
// the literature's way of counting.
#include "blockwright/balance/balance.hpp"
#include "interchange/read_bundle.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <map>
#include <sstream>

using namespace bw;
using namespace bw::test;

namespace {
// First and last cell of the rows below a head that begins with this cell, to the table's end.
std::map<std::string, std::string> tableOf(const std::string& text, const std::string& head) {
    std::istringstream in(text.substr(text.find("\n| " + head + " |") + 1));
    std::map<std::string, std::string> rows;
    std::string line;
    std::getline(in, line);
    std::getline(in, line); // the rule below the head
    while (std::getline(in, line) && line.starts_with("| ")) {
        const auto last = line.rfind("| ", line.size() - 2) + 2;
        rows[line.substr(2, line.find(" |", 2) - 2)] = line.substr(last, line.size() - last - 2);
    }
    return rows;
}

Block handWorked() {
    const auto part = [](SectionKind kind, Range<int> times, std::vector<const char*> ids) {
        std::vector<Slot> slots;
        for (const char* id : ids) slots.push_back(slot(id, reps(8, 8)));
        return section(kind, {group(times, secondsRange(60, 90), std::move(slots))});
    };
    return block("2026-09",
                 {part(SectionKind::WarmUp, rounds(2, 2), {"dead-bug", "lateral-lunge"}),
                  part(SectionKind::Power, rounds(3, 3), {"medicine-ball-chest-throw"}),
                  part(SectionKind::Strength, rounds(2, 3),
                       {"front-rack-squat", "dumbbell-romanian-deadlift"}),
                  part(SectionKind::Strength, rounds(2, 3), {"dumbbell-floor-press", "band-row"}),
                  part(SectionKind::Finisher, rounds(1, 2), {"farmer-carry"})});
}

void checkRatio(const std::map<std::string, std::string>& rows, const char* name, const Ratio& r) {
    INFO(name);
    const std::string& told = rows.at(name);
    if (told == "none")
        CHECK_FALSE(r.value());
    else
        CHECK(r.value().value() == Approx(std::stod(told)).margin(5e-7));
}
} // namespace

TEST_CASE("the session that docs/balance.md works by hand comes out of the engine") {
    Gym gym;
    layOver(gym, shippedShelf());
    const std::string page = readText(BW_SOURCE_DIR "/docs/balance.md");
    const Balance b = measureBalance(gym, handWorked(), week(2));

    const auto patterns = tableOf(page, "pattern");
    CHECK(std::stod(patterns.at("all")) == b.sets);
    for (std::size_t i = 0; i < kCount<Pattern>; ++i) {
        const auto row = patterns.find(std::string(wordOf(static_cast<Pattern>(i))));
        CHECK(b.patterns[i] == (row == patterns.end() ? 0 : std::stod(row->second)));
    }
    const auto ratios = tableOf(page, "ratio");
    CHECK(ratios.size() == 7);
    checkRatio(ratios, "push-pull", b.pushPull());
    checkRatio(ratios, "knee-hip", b.kneeHip());
    checkRatio(ratios, "horizontal-vertical", b.horizontalVertical());
    checkRatio(ratios, "one-sided", b.oneSidedShare());
    checkRatio(ratios, "sagittal", b.planeShare(Plane::Sagittal));
    checkRatio(ratios, "frontal", b.planeShare(Plane::Frontal));
    checkRatio(ratios, "transverse", b.planeShare(Plane::Transverse));

    const auto muscles = tableOf(page, "muscle");
    CHECK(muscles.size() == b.muscles.size());
    for (const auto& [muscle, sets] : b.muscles)
        CHECK(std::stod(muscles.at(muscle.text())) == sets);
}

namespace {
// 6 weekly sets of a bench press, 4 of a row, 3 of a triceps extension.
Balance counted(double indirect) {
    Gym gym;
    gym.settings.limits["balance.indirect_share"] = {indirect, indirect, false};
    const auto put = [&](const char* id, const std::vector<std::pair<const char*, double>>& parts) {
        Exercise e = exercise(id, Pattern::HorizontalPush);
        for (const auto& [muscle, share] : parts)
            e.muscles.emplace(MuscleId::parse(muscle).value(), Share::of(share).value());
        gym.shelf.put(std::move(e));
    };
    put("press", {{"chest", 1}, {"triceps", 0.25}, {"front-shoulder", 0.75}});
    put("row", {{"lats", 1}, {"biceps", 0.5}});
    put("extension", {{"triceps", 1}});
    const auto lone = [](const char* id, int sets) {
        return group(rounds(sets, sets), secondsRange(60, 60), {slot(id, reps(8, 8))});
    };
    Block b = block("2026-09", {section(SectionKind::Strength,
                                        {lone("press", 6), lone("row", 4), lone("extension", 3)})});
    b.visitsPerWeek = 1;
    return measureBalance(gym, b);
}
double of(const Balance& b, const char* muscle) {
    return b.hardSets(MuscleId::parse(muscle).value());
}
} // namespace

// Pelland et al., Sports Med 2025, doi 10.1007/s40279-025-02344-w: direct set 1, indirect set 0.5
// fitted best. The example is arithmetic.
TEST_CASE("with one half for what only helps, sets are counted as the literature counts them") {
    const Balance half = counted(0.5);
    CHECK(of(half, "chest") == 6);
    CHECK(of(half, "lats") == 4);
    CHECK(of(half, "triceps") == 3 + 6 * 0.5);
    CHECK(of(half, "biceps") == 2);
    CHECK(of(half, "front-shoulder") == 3);
    const Balance total = counted(1);
    CHECK(of(total, "triceps") == 9);
    CHECK(of(total, "biceps") == 4);
    CHECK(of(counted(0), "triceps") == 3 + 6 * 0.25); // as the Shelf tells it
}
