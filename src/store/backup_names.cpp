// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup_names.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <ctime>

namespace bw {

namespace {
constexpr std::array<std::string_view, 6> kWords{"daily",   "update", "import",
                                                 "restore", "asked",  "damaged"};
constexpr std::string_view kEnding = ".bwgym";
} // namespace

std::string_view wordOf(BackupReason reason) { return kWords[static_cast<std::size_t>(reason)]; }

WallTime wallTime() {
    const std::time_t now = std::time(nullptr);
    std::tm here{};
    ::localtime_r(&now, &here);
    const std::chrono::year_month_day day{
        std::chrono::year(here.tm_year + 1900),
        std::chrono::month(static_cast<unsigned>(here.tm_mon + 1)),
        std::chrono::day(static_cast<unsigned>(here.tm_mday))};
    return std::chrono::local_days(day) + std::chrono::hours(here.tm_hour) +
           std::chrono::minutes(here.tm_min) + std::chrono::seconds(here.tm_sec);
}

namespace store {

namespace {
// Takes the part up to the next hyphen, or all that is left.
std::string_view part(std::string_view& text) {
    const auto end = std::min(text.find('-'), text.size());
    const auto out = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return out;
}
template <class N> std::optional<N> numeral(std::string_view text, int base = 10) {
    N n{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n, base);
    if (error != std::errc() || end != text.data() + text.size() || text.empty())
        return std::nullopt;
    return n;
}
std::optional<BackupReason> reasonOf(std::string_view word) {
    for (std::size_t i = 0; i < kWords.size(); ++i)
        if (kWords[i] == word) return static_cast<BackupReason>(i);
    return std::nullopt;
}
// YYYY-MM-DD-HHMM
std::optional<WallTime> timeOf(std::string_view text) {
    constexpr std::size_t kDay = 10, kAll = 15;
    if (text.size() != kAll || text[kDay] != '-') return std::nullopt;
    const auto day = Date::parse(text.substr(0, kDay));
    const auto clock = numeral<unsigned>(text.substr(kDay + 1));
    if (!day || !clock || *clock / 100 > 23 || *clock % 100 > 59) return std::nullopt;
    return std::chrono::local_days(day->days().time_since_epoch()) +
           std::chrono::hours(*clock / 100) + std::chrono::minutes(*clock % 100);
}
} // namespace

std::chrono::local_days dayOf(WallTime at) { return std::chrono::floor<std::chrono::days>(at); }

std::string BackupName::text() const {
    const std::chrono::year_month_day day(dayOf(at));
    const auto minutes = std::chrono::floor<std::chrono::minutes>(at - dayOf(at)).count();
    std::array<char, 64> out{};
    std::snprintf(out.data(), out.size(), "%04d-%04d-%02u-%02u-%02d%02d-", number,
                  static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                  static_cast<unsigned>(day.day()), static_cast<int>(minutes / 60),
                  static_cast<int>(minutes % 60));
    std::string text = out.data();
    text += wordOf(reason);
    if (checksum) {
        std::snprintf(out.data(), out.size(), "-%08x", *checksum);
        text += out.data();
    }
    return text.append(kEnding);
}

std::optional<BackupName> BackupName::parse(std::string_view text) {
    constexpr std::size_t kTime = 15;
    if (!text.ends_with(kEnding)) return std::nullopt;
    text.remove_suffix(kEnding.size());
    const auto count = numeral<int>(part(text));
    const auto at = timeOf(text.substr(0, kTime));
    if (!count || *count < 1 || !at || text.size() <= kTime || text[kTime] != '-')
        return std::nullopt;
    text.remove_prefix(kTime + 1);
    const auto reason = reasonOf(part(text));
    if (!reason) return std::nullopt;
    BackupName name{*count, *at, *reason, {}};
    if (text.empty()) return name;
    name.checksum = numeral<std::uint32_t>(text, 16);
    if (!name.checksum) return std::nullopt;
    return name;
}

} // namespace store
} // namespace bw
