// SPDX-License-Identifier: GPL-3.0-or-later
// Month, date and week of the block are different things, and never turn into each other unasked.
// Proleptic Gregorian calendar, years 1900 to 2999. No clock here: today is always a parameter.
#pragma once
#include "blockwright/model/result.hpp"

#include <chrono>
#include <compare>
#include <string>
#include <string_view>

namespace bw {

// A calendar month, written YYYY-MM.
class Month {
public:
    static Result<Month> parse(std::string_view text);
    static Result<Month> of(int year, int month);

    [[nodiscard]] int year() const { return index_ / 12; }
    [[nodiscard]] int month() const { return index_ % 12 + 1; } // 1 to 12
    [[nodiscard]] std::string text() const;
    [[nodiscard]] Month plus(int months) const; // clamped to the years above
    [[nodiscard]] int monthsSince(Month earlier) const { return index_ - earlier.index_; }
    auto operator<=>(const Month&) const = default;

private:
    explicit Month(int index) : index_(index) {}
    int index_; // year * 12 + month - 1
};

// A calendar date, written YYYY-MM-DD.
class Date {
public:
    static Result<Date> parse(std::string_view text);
    static Result<Date> of(int year, int month, int day);

    [[nodiscard]] std::string text() const;
    [[nodiscard]] Month month() const;
    [[nodiscard]] std::chrono::sys_days days() const { return days_; }
    [[nodiscard]] Date plusDays(int n) const; // n within the years above; else the nearest bound
    auto operator<=>(const Date&) const = default;

private:
    explicit Date(std::chrono::sys_days d) : days_(d) {}
    std::chrono::sys_days days_;
};

// Week of the block, 1 to 6 (four in the usual month).
class Week {
public:
    static constexpr int kMost = 6;
    static Result<Week> of(int number);
    static constexpr Week first() { return Week(1); }

    [[nodiscard]] constexpr int number() const { return number_; }
    [[nodiscard]] constexpr int index() const { return number_ - 1; }
    auto operator<=>(const Week&) const = default;

private:
    explicit constexpr Week(int n) : number_(n) {}
    int number_ = 1;
};

} // namespace bw
