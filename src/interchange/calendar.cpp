// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/calendar.hpp"

#include "blockwright/model/place.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/ramp/class_plan.hpp"

#include <algorithm>
#include <cstdio>

namespace bw {

namespace {
// RFC 5545, 3.3.11.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\n') {
            out += "\\n";
            continue;
        }
        if (c == '\\' || c == ';' || c == ',') out += '\\';
        if (static_cast<unsigned char>(c) >= 0x20) out += c; // no control characters
    }
    return out;
}

// RFC 5545, 3.1: lines of at most 75 octets, gone on after CRLF and a space; no character is cut.
std::string folded(const std::string& line) {
    constexpr std::size_t kMost = 75;
    const auto inside = [&](std::size_t i) {
        return i < line.size() && (static_cast<unsigned char>(line[i]) & 0xC0U) == 0x80U;
    };
    std::string out;
    std::size_t from = 0;
    while (true) {
        const std::size_t room = from == 0 ? kMost : kMost - 1;
        std::size_t to = std::min(line.size(), from + room);
        while (to > from + 1 && inside(to)) --to;
        out += (from == 0 ? "" : " ") + line.substr(from, to - from) + "\r\n";
        from = to;
        if (from >= line.size()) return out;
    }
}

std::string digits(int number, int width) {
    char text[16];
    std::snprintf(text, sizeof text, "%0*d", width, number);
    return text;
}

std::string dateDigits(std::chrono::sys_days days) {
    const std::chrono::year_month_day ymd(days);
    return digits(static_cast<int>(ymd.year()), 4) +
           digits(static_cast<int>(static_cast<unsigned>(ymd.month())), 2) +
           digits(static_cast<int>(static_cast<unsigned>(ymd.day())), 2);
}

std::string clockDigits(std::chrono::seconds s) {
    const std::chrono::hh_mm_ss clock(s);
    return digits(static_cast<int>(clock.hours().count()), 2) +
           digits(static_cast<int>(clock.minutes().count()), 2) +
           digits(static_cast<int>(clock.seconds().count()), 2);
}

std::string slotLine(const Shelf& shelf, const Slot& slot, const std::string& label) {
    const Exercise* e = slot.exercise ? shelf.find(*slot.exercise) : nullptr;
    std::string line = label + " " +
                       (e               ? e->name
                        : slot.exercise ? slot.exercise->text()
                                        : std::string("open"));
    if (slot.dose) line += ", " + doseText(*slot.dose, e ? e->sides : Sides::Both);
    if (slot.tempo) line += ", " + slot.tempo->text();
    return line;
}

std::string groupText(const Shelf& shelf, const Block& block, Place place, Week week) {
    const Group& group = *groupAt(block, place);
    place.slot = 0;
    const std::string letter = groupLetter(block, place);
    const PlanStep step = planStep(block, place, week);
    std::string text = "\n" + letter + ": rounds " + roundsText(step.rounds);
    text += ", " + std::string(group.rest.hi() > Millis{0} ? "rest " : "") + restText(group.rest);
    if (step.rir) text += ", " + effortText(Range<Rir>(*step.rir)) + " in reserve";
    for (std::size_t i = 0; i < group.slots.size(); ++i)
        text += "\n" + slotLine(shelf, group.slots[i], letter + std::to_string(i + 1));
    return text;
}

std::string sessionText(const Gym& gym, const Block& block, Week week) {
    std::string text;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = block.sections[static_cast<std::size_t>(s)];
        text += (text.empty() ? "" : "\n\n") + std::string(wordOf(section.kind));
        for (int g = 0; g < static_cast<int>(section.groups.size()); ++g)
            if (!section.groups[static_cast<std::size_t>(g)].slots.empty())
                text += groupText(gym.shelf, block, {s, g}, week);
    }
    return text;
}

class Writer {
public:
    Writer(const Gym& gym, const Block& block, const ClassTimes& times)
        : gym_(gym), block_(block), times_(times) {}

    std::string calendar() {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Blockwright//Blockwright//EN");
        const auto days = times_.days.empty() ? usualDays(block_.visitsPerWeek) : times_.days;
        Date date = Date::of(block_.month.year(), block_.month.month(), 1).value();
        for (; date.month() == block_.month; date = date.plusDays(1)) {
            const auto week = weekOfDate(block_, date);
            if (week && days.contains(std::chrono::weekday(date.days()).iso_encoding()))
                event(date, *week);
            if (date.plusDays(1) == date) break; // the end of all dates
        }
        line("END:VCALENDAR");
        return std::move(out_);
    }

private:
    void line(const std::string& text) { out_ += folded(text); }
    void event(Date date, Week week) {
        const std::string gymId = idTextFrom(gym_.settings.name);
        const StairStep& step = block_.step(week);
        line("BEGIN:VEVENT");
        line("UID:" + dateDigits(date.days()) + (gymId.empty() ? "" : "-" + gymId) +
             "@blockwright");
        const auto day = std::chrono::floor<std::chrono::days>(times_.written);
        line("DTSTAMP:" + dateDigits(day) + "T" + clockDigits(times_.written - day) + "Z");
        if (times_.start) {
            const auto start = std::chrono::floor<std::chrono::seconds>(*times_.start);
            line("DTSTART:" + dateDigits(date.days()) + "T" + clockDigits(start));
            line("DURATION:PT" + std::to_string(gym_.settings.classMinutes) + "M");
        } else {
            line("DTSTART;VALUE=DATE:" + dateDigits(date.days()));
        }
        const std::string title = block_.title.empty() ? block_.month.text() : block_.title;
        line("SUMMARY:" + escaped(title + ", week " + std::to_string(week.number()) + ": " +
                                  std::string(wordOf(step.intent))));
        if (!gym_.settings.name.empty()) line("LOCATION:" + escaped(gym_.settings.name));
        line("DESCRIPTION:" + escaped(sessionText(gym_, block_, week)));
        line("END:VEVENT");
    }

    const Gym& gym_;
    const Block& block_;
    const ClassTimes& times_;
    std::string out_;
};
} // namespace

std::set<unsigned> usualDays(int visitsPerWeek) {
    switch (visitsPerWeek) {
    case 1: return {3};
    case 2: return {2, 4};
    case 3: return {1, 3, 5};
    case 4: return {1, 2, 4, 5};
    case 5: return {1, 2, 3, 4, 5};
    case 6: return {1, 2, 3, 4, 5, 6};
    default: return {1, 2, 3, 4, 5, 6, 7};
    }
}

std::string writeCalendar(const Gym& gym, const Block& block, const ClassTimes& times) {
    return Writer(gym, block, times).calendar();
}

} // namespace bw
