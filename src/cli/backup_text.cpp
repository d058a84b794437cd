// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/backup_text.hpp"

#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace bw::cli {

namespace {
std::string sizeText(std::uintmax_t bytes) {
    constexpr double kKilo = 1e3, kMega = 1e6;
    const auto n = static_cast<double>(bytes);
    return n < kMega ? fmt::format("{:.0f} kB", n / kKilo) : fmt::format("{:.1f} MB", n / kMega);
}

std::string counted(std::size_t n, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", n, n == 1 ? one : many);
}

std::string holdsText(const SeenBackup& seen) {
    if (!seen.in) return "can't be restored";
    const BackupContents& c = *seen.in;
    std::string text = counted(c.months, "month", "months");
    if (c.lastMonth) text += " to " + c.lastMonth->text();
    text += ", " + counted(c.members, "member", "members") + ", " +
            counted(c.results, "result", "results");
    if (c.newestResult) text += " to " + c.newestResult->text();
    if (!c.asMade) text += "; changed since";
    return text;
}

Json orNull(bool there, const std::string& text) { return there ? Json(text) : Json(); }

void addContents(Json& json, const BackupContents& c) {
    json["as_made"] = c.asMade;
    json["version"] = c.version;
    json["gym"] = c.gym;
    json["months"] = c.months;
    json["first_month"] =
        orNull(c.firstMonth.has_value(), c.firstMonth ? c.firstMonth->text() : "");
    json["last_month"] = orNull(c.lastMonth.has_value(), c.lastMonth ? c.lastMonth->text() : "");
    json["exercises"] = c.exercises;
    json["members"] = c.members;
    json["results"] = c.results;
    json["newest_result"] =
        orNull(c.newestResult.has_value(), c.newestResult ? c.newestResult->text() : "");
}
} // namespace

std::string timeText(WallTime at) {
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const std::chrono::year_month_day d(day);
    const auto minutes = std::chrono::floor<std::chrono::minutes>(at - day).count();
    return fmt::format("{:04}-{:02}-{:02} {:02}:{:02}", static_cast<int>(d.year()),
                       static_cast<unsigned>(d.month()), static_cast<unsigned>(d.day()),
                       minutes / 60, minutes % 60);
}

Json backupJson(const SeenBackup& seen) {
    std::string made = timeText(seen.backup.at);
    std::replace(made.begin(), made.end(), ' ', 'T'); // ISO 8601
    Json json{{"number", seen.backup.number},
              {"file", seen.backup.file.string()},
              {"made", made},
              {"reason", wordOf(seen.backup.reason)},
              {"bytes", seen.backup.bytes},
              {"good", seen.in.ok()}};
    if (seen.in)
        addContents(json, *seen.in);
    else
        json["why"] = seen.in.why().english();
    return json;
}

std::string backupTable(const std::vector<SeenBackup>& list) {
    using Align = Table::Align;
    Table table({Align::Right, Align::Left, Align::Left, Align::Right, Align::Left});
    table.add({"no.", "made", "reason", "size", "holds"});
    for (const SeenBackup& seen : list)
        table.add({std::to_string(seen.backup.number), timeText(seen.backup.at),
                   std::string(wordOf(seen.backup.reason)), sizeText(seen.backup.bytes),
                   holdsText(seen)});
    return table.text();
}

void backUpFirst(const std::string& gym) {
    const auto made = backUp(gym, BackupReason::Import, wallTime());
    if (!made) complain(made.why().english());
}

} // namespace bw::cli
