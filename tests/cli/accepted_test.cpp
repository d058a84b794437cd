// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/accepting.hpp"
#include "blockwright/rules/check.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
// A class of five minutes: the session stops in every week, by other figures in each.
Gym overfull() {
    Gym gym;
    gym.settings.classMinutes = 5;
    gym.shelf.put(exercise("squat", Pattern::Squat));
    gym.put(
        block("2026-09", {section(SectionKind::Strength, {group(rounds(2, 4), secondsRange(60, 120),
                                                                {slot("squat", reps(5, 5))})})}));
    return gym;
}
void acceptStops(Gym& gym) {
    Block b = *gym.latest();
    for (const Finding& f : check(gym, b).findings)
        if (f.level == Level::Stop) b.accepted.push_back(makeAcceptance(b, f, "Open day."));
    REQUIRE(b.accepted.size() == 1);
    gym.put(b);
}
Ran checked(const Gym& gym, const std::vector<std::string>& more = {}) {
    const TempFolder folder;
    writeText(folder / "gym.bundle.json", writeBundle(bundleOf(gym)));
    std::vector<std::string> words{"check", "--bundle", (folder / "gym.bundle.json").string(),
                                   "--floor-runs", "0"};
    words.insert(words.end(), more.begin(), more.end());
    return bwright(folder.path(), words);
}
} // namespace

TEST_CASE("a stop that was accepted is told apart with its reason, and does not end with 1") {
    Gym gym = overfull();
    REQUIRE(checked(gym).code == 1);
    acceptStops(gym);
    const Ran ran = checked(gym);
    CHECK(ran.code == 0);
    const auto apart = ran.out.find("Accepted, and not counted:");
    REQUIRE(apart != std::string::npos);
    CHECK(ran.out.find("session-length") > apart);
    CHECK(ran.out.find("accepted: Open day.") > apart);
    CHECK(ran.out.find("■ 0 stop") > apart);
}

TEST_CASE("in JSON, accepted findings stand beside the others with a reason of their own") {
    Gym gym = overfull();
    const json before = json::parse(checked(gym, {"--json"}).out);
    CHECK(before.at("accepted").empty());
    acceptStops(gym);
    for (const char* week : {"", "1", "4"}) {
        std::vector<std::string> more{"--json"};
        if (*week) more.insert(more.end(), {"--week", week});
        const Ran ran = checked(gym, more);
        const json said = json::parse(ran.out);
        CHECK(ran.code == 0);
        REQUIRE(said.at("accepted").size() == 1);
        CHECK(said["accepted"][0].at("rule") == "session-length");
        CHECK(said["accepted"][0].at("reason") == "Open day.");
        for (const auto& finding : said.at("findings")) {
            CHECK(finding.at("rule") != "session-length");
            CHECK_FALSE(finding.contains("reason"));
        }
    }
}

TEST_CASE("an accepted stop whose facts have changed ends with 1 again") {
    Gym gym = overfull();
    acceptStops(gym);
    Block b = *gym.latest();
    b.sections[0].talk += Millis{120'000};
    gym.put(b);
    const Ran ran = checked(gym);
    CHECK(ran.code == 1);
    CHECK(ran.out.find("Accepted, and not counted:") == std::string::npos);
}

} // namespace bw::test
