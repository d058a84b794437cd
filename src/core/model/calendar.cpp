// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/calendar.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr int kFirstYear = 1900;
constexpr int kLastYear = 2999;

Message notAMonth(std::string_view text) {
    return {"“%1” is not a month: write it as 2026-09.", {std::string(text.substr(0, 40))}};
}
Message notADate(std::string_view text) {
    return {"“%1” is not a date: write it as 2026-09-03.", {std::string(text.substr(0, 40))}};
}
// -1 unless text is n digits.
int digits(std::string_view text) {
    int n = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return -1;
        n = n * 10 + (c - '0');
    }
    return n;
}
std::string padded(int n, std::size_t width) {
    std::string s = std::to_string(n);
    return std::string(width > s.size() ? width - s.size() : 0, '0') + s;
}
} // namespace

Result<Month> Month::of(int year, int month) {
    if (year < kFirstYear || year > kLastYear || month < 1 || month > 12)
        return notAMonth(std::to_string(year) + "-" + std::to_string(month));
    return Month(year * 12 + month - 1);
}

Result<Month> Month::parse(std::string_view text) {
    if (text.size() != 7 || text[4] != '-') return notAMonth(text);
    auto month = of(digits(text.substr(0, 4)), digits(text.substr(5, 2)));
    return month ? month : Result<Month>(notAMonth(text));
}

std::string Month::text() const { return padded(year(), 4) + "-" + padded(month(), 2); }

Month Month::plus(int months) const {
    return Month(std::clamp(index_ + months, kFirstYear * 12, kLastYear * 12 + 11));
}

Result<Date> Date::of(int year, int month, int day) {
    namespace c = std::chrono;
    const c::year_month_day ymd{c::year{year}, c::month{static_cast<unsigned>(month)},
                                c::day{static_cast<unsigned>(day)}};
    if (year < kFirstYear || year > kLastYear || month < 1 || day < 1 || !ymd.ok())
        return notADate(std::to_string(year) + "-" + std::to_string(month) + "-" +
                        std::to_string(day));
    return Date(c::sys_days(ymd));
}

Result<Date> Date::parse(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return notADate(text);
    auto date = of(digits(text.substr(0, 4)), digits(text.substr(5, 2)), digits(text.substr(8, 2)));
    return date ? date : Result<Date>(notADate(text));
}

std::string Date::text() const {
    const std::chrono::year_month_day ymd{days_};
    return month().text() + "-" + padded(static_cast<int>(static_cast<unsigned>(ymd.day())), 2);
}

Month Date::month() const {
    const std::chrono::year_month_day ymd{days_};
    return Month::of(static_cast<int>(ymd.year()),
                     static_cast<int>(static_cast<unsigned>(ymd.month())))
        .value();
}

Date Date::plusDays(int n) const {
    return std::clamp(Date(days_ + std::chrono::days{n}), of(kFirstYear, 1, 1).value(),
                      of(kLastYear, 12, 31).value());
}

Result<Week> Week::of(int number) {
    if (number < 1 || number > kMost)
        return Message{"There is no week %1: weeks run from 1 to %2.",
                       {std::to_string(number), std::to_string(kMost)}};
    return Week(number);
}

} // namespace bw
