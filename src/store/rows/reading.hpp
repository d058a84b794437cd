// SPDX-License-Identifier: GPL-3.0-or-later
// From a column back to a value of the model. What no gym can hold throws Unreadable.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/range.hpp"
#include "blockwright/model/vocabulary.hpp"
#include "store/sqlite/database.hpp"
#include "store/trouble.hpp"

#include <limits>

namespace bw::store {

template <class T> T need(Result<T> result) {
    if (!result) throw Unreadable(result.why().english());
    return std::move(result).value();
}

inline int narrow(std::int64_t value) {
    if (value < std::numeric_limits<int>::min() || value > std::numeric_limits<int>::max())
        throw Unreadable("number " + std::to_string(value) + " is out of range");
    return static_cast<int>(value);
}
inline int small(const sqlite::Statement& row, int column) { return narrow(row.integer(column)); }

template <class E> E word(const sqlite::Statement& row, int column) {
    const auto text = row.text(column);
    if (const auto e = fromWord<E>(text)) return *e;
    throw Unreadable("unknown word “" + std::string(text.substr(0, 40)) + "”");
}
template <class I> I id(const sqlite::Statement& row, int column) {
    return need(I::parse(row.text(column)));
}
inline Mass mass(const sqlite::Statement& row, int column) {
    return need(Mass::fromMicrograms(row.integer(column)));
}
inline Share share(const sqlite::Statement& row, int column) {
    return need(Share::fromBillionths(row.integer(column)));
}
inline Millis millis(const sqlite::Statement& row, int column) {
    return Millis{row.integer(column)};
}

// lo stands in `column`, hi in the one after it.
template <class T, class Read>
Range<T> range(const sqlite::Statement& row, int column, const Read& read) {
    return need(Range<T>::of(read(row, column), read(row, column + 1)));
}
// None when the column is NULL.
template <class Read> auto ifAny(const sqlite::Statement& row, int column, const Read& read)
    -> std::optional<decltype(read(row, column))> {
    if (row.null(column)) return std::nullopt;
    return read(row, column);
}

// All rows of a list that is read in step with its owners must have found one.
inline void exhausted(const sqlite::Rows& rows) {
    if (rows.any()) throw Unreadable("a list belongs to nothing");
}

// A month as the integer 202609.
inline std::int64_t monthNumber(Month m) { return m.year() * 100 + m.month(); }
inline Month monthFrom(std::int64_t number) {
    const int n = narrow(number);
    return need(Month::of(n / 100, n % 100));
}
// A date as days since 1970-01-01.
inline std::int64_t dayNumber(Date d) { return d.days().time_since_epoch().count(); }
inline Date dateFrom(std::int64_t number) {
    const std::chrono::year_month_day d{std::chrono::sys_days{std::chrono::days{narrow(number)}}};
    return need(Date::of(int{d.year()}, static_cast<int>(unsigned{d.month()}),
                         static_cast<int>(unsigned{d.day()})));
}

} // namespace bw::store
