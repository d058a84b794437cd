// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/calendar.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <cstdlib>
#include <sstream>
#include <sys/wait.h>

using namespace bw;
using namespace bw::test;

namespace {
using nlohmann::json;

Gym lowTideGym(const std::string& exerciseName = "Goblet squat") {
    Gym gym;
    gym.settings.name = "Saltmarsh; Boathouse";
    gym.settings.classMinutes = 50;
    Exercise squat = exercise("goblet-squat", Pattern::Squat);
    squat.name = exerciseName;
    gym.shelf.put(squat);
    Block b = block("2026-09", {section(SectionKind::Strength,
                                        {group(rounds(2, 3), secondsRange(60, 90),
                                               {slot("goblet-squat", reps(5, 5)), Slot{}})})});
    b.title = "Low, tide";
    gym.put(b);
    return gym;
}

ClassTimes evenings() {
    ClassTimes times;
    times.start = std::chrono::hours(18) + std::chrono::minutes(30);
    times.written = std::chrono::sys_days(std::chrono::year(2026) / 8 / 28) + std::chrono::hours(7);
    return times;
}

std::string calendarOf(const Gym& gym, const ClassTimes& times) {
    return writeCalendar(gym, *gym.latest(), times);
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t from = 0; from < text.size();) {
        const auto to = text.find("\r\n", from);
        REQUIRE(to != std::string::npos);
        lines.push_back(text.substr(from, to - from));
        from = to + 2;
    }
    return lines;
}

// What the reader of another house finds; empty with a warning when it is not installed.
std::vector<json> readBack(const std::string& calendar) {
    const TempFolder folder;
    const auto in = folder / "classes.ics", out = folder / "events.txt";
    writeText(in, calendar);
    const std::string run = "/usr/bin/python3 '" BW_SOURCE_DIR
                            "/tests/interchange/calendar_check.py' '" +
                            in.string() + "' > '" + out.string() + "'";
    const int status = std::system(run.c_str());
    if (WEXITSTATUS(status) == 3 || WEXITSTATUS(status) == 127) {
        WARN("python3-icalendar is not installed: calendars are not checked by it");
        return {};
    }
    REQUIRE(WEXITSTATUS(status) == 0);
    std::vector<json> events;
    std::istringstream lines(readText(out));
    for (std::string line; std::getline(lines, line);) events.push_back(json::parse(line));
    return events;
}
} // namespace

TEST_CASE("a month's classes are read back by another program, day by day") {
    const auto events = readBack(calendarOf(lowTideGym(), evenings()));
    if (events.empty()) return;
    // Mondays, Wednesdays and Fridays of September 2026, by any calendar
    std::vector<std::string> starts;
    for (const json& e : events) starts.push_back(e["start"]);
    REQUIRE(starts.size() == 13);
    CHECK(starts.front() == "2026-09-02T18:30:00");
    CHECK(starts[1] == "2026-09-04T18:30:00");
    CHECK(starts.back() == "2026-09-30T18:30:00");
    const json& first = events.front();
    CHECK(first["errors"].empty());
    CHECK(first["minutes"] == 50);
    CHECK(first["summary"] == "Low, tide, week 1: learn");
    CHECK(first["location"] == "Saltmarsh; Boathouse");
    CHECK(first["stamp"].get<std::string>().substr(0, 19) == "2026-08-28T07:00:00");
    CHECK(first["description"] ==
          "strength\nA: rounds 2, rest 60–90 s, 4 in reserve\nA1 Goblet squat, 5\nA2 open");
    CHECK(events.back()["summary"] == "Low, tide, week 4: challenge");
    CHECK(events.back()["description"].get<std::string>().find("rounds 2–3") != std::string::npos);
}

TEST_CASE("without a start a class takes the day, on the days that were named") {
    ClassTimes times = evenings();
    times.start.reset();
    times.days = {6};
    const auto events = readBack(calendarOf(lowTideGym(), times));
    if (events.empty()) return;
    REQUIRE(events.size() == 4);
    CHECK(events[0]["start"] == "2026-09-05"); // a Saturday
    CHECK(events[0]["minutes"].is_null());
}

TEST_CASE("lines are folded at 75 octets, without cutting a letter") {
    std::string name;
    for (int i = 0; i < 60; ++i) name += i % 3 ? "é" : "🏋"; // 2 and 4 octets
    const std::string text = calendarOf(lowTideGym(name), evenings());
    std::string unfolded;
    for (const std::string& line : linesOf(text)) {
        CHECK(line.size() <= 75); // RFC 5545, 3.1
        const auto first = static_cast<unsigned char>(line[line[0] == ' ' ? 1 : 0]);
        CHECK((first & 0xC0) != 0x80);
        unfolded += line[0] == ' ' ? line.substr(1) : "\n" + line;
    }
    CHECK(unfolded.find(name) != std::string::npos);
}

TEST_CASE("an event keeps its UID, and no two share one") {
    const auto uids = [](const std::string& text) {
        std::vector<std::string> found;
        for (const std::string& line : linesOf(text))
            if (line.rfind("UID:", 0) == 0) found.push_back(line);
        return found;
    };
    ClassTimes later = evenings();
    later.written += std::chrono::hours(100);
    const auto before = uids(calendarOf(lowTideGym(), evenings()));
    CHECK(before == uids(calendarOf(lowTideGym(), later)));
    CHECK(before.front() == "UID:20260902-saltmarsh-boathouse@blockwright");
    CHECK(std::set(before.begin(), before.end()).size() == before.size());
}
