// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/export_command.hpp"

#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "cli/whole_file.hpp"
#include "interchange/bundle.hpp"
#include "interchange/calendar.hpp"
#include "interchange/results_csv.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <array>

namespace bw::cli {

namespace {
constexpr std::array<std::string_view, 7> kDays{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};

std::vector<std::string> dayWords() { return {kDays.begin(), kDays.end()}; }

Millis clockTime(const std::string& text) {
    int hours = 0, minutes = 0;
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
    bool ok = text.size() == 5 && text[2] == ':' && digit(0) && digit(1) && digit(3) && digit(4);
    if (ok) {
        hours = std::stoi(text.substr(0, 2));
        minutes = std::stoi(text.substr(3));
        ok = hours < 24 && minutes < 60;
    }
    if (!ok) throw Ending(Exit::BadInput, "--at " + text + ": write a time of day as 18:00.");
    return std::chrono::hours(hours) + std::chrono::minutes(minutes);
}
} // namespace

CLI::App& ExportCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("export", "A gym as one bundle, with all its months");
    source_.declare(*part);
    auto* out = part->add_option("--out", out_, "Into a file (standard: standard output)");
    out->type_name("FILE");
    auto* csv = part->add_flag("--csv", csv_, "The results, as a table for a spreadsheet");
    auto* calendar = part->add_flag("--calendar", calendar_, "The month's classes, as iCalendar");
    calendar->excludes(csv);
    part->add_option("--days", days_, "Of the classes (standard: by the visits of the month)")
        ->type_name("mon,wed,fri")
        ->delimiter(',')
        ->check(CLI::IsMember(dayWords()))
        ->needs(calendar);
    part->add_option("--at", at_, "When classes start (standard: all day)")
        ->type_name("HH:MM")
        ->needs(calendar);
    part->add_flag("--json", json_, "With --out: say the file as one JSON object")->needs(out);
    return *part;
}

std::string ExportCommand::text() const {
    auto loaded = source_.load(GymSource::Results::Take);
    if (csv_) {
        const auto month = source_.month();
        ResultsWriter table(loaded.gym);
        for (const LiftResult& r : loaded.results)
            if (!month || r.date.month() == *month) table.add(r);
        return table.take();
    }
    if (source_.month()) { // only that month
        const auto block = source_.block(loaded.gym);
        loaded.gym.blocks = {{block->month, block}};
    }
    return writeBundle(bundleOf(loaded.gym, std::move(loaded.results)));
}

std::string ExportCommand::calendar() const {
    ClassTimes times;
    for (const std::string& day : days_)
        times.days.insert(
            static_cast<unsigned>(std::find(kDays.begin(), kDays.end(), day) - kDays.begin() + 1));
    if (!at_.empty()) times.start = clockTime(at_);
    times.written = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const Gym gym = source_.load().gym;
    return writeCalendar(gym, *source_.block(gym), times);
}

Exit ExportCommand::run() {
    const std::string text = calendar_ ? calendar() : this->text();
    Interrupt::check();
    if (out_.empty()) {
        say(text);
        return Exit::Done;
    }
    writeWholeFile(out_, text);
    if (json_)
        sayJson({{"file", out_}});
    else
        say(out_ + "\n");
    return Exit::Done;
}

} // namespace bw::cli
