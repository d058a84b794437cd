// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/typed_month.hpp"

#include <QLocale>

namespace bw {

namespace {
std::optional<int> monthNumber(const QString& word) {
    constexpr int kShortest = 3, kMonths = 12;
    if (word.size() < kShortest) return std::nullopt;
    for (int m = 1; m <= kMonths; ++m)
        if (QLocale().standaloneMonthName(m).toLower().startsWith(word)) return m;
    return std::nullopt;
}
} // namespace

std::optional<Month> takeMonth(QStringList& words, Month latest) {
    if (words.isEmpty()) return std::nullopt;
    if (const auto month = Month::parse(words.first().toStdString())) {
        words.removeFirst();
        return month.value();
    }
    const auto number = monthNumber(words.first());
    if (!number) return std::nullopt;
    words.removeFirst();
    bool isYear = false;
    const int year = words.isEmpty() ? 0 : words.first().toInt(&isYear);
    if (isYear) words.removeFirst();
    const int usual = *number <= latest.month() ? latest.year() : latest.year() - 1;
    const auto month = Month::of(isYear ? year : usual, *number);
    return month ? std::optional(month.value()) : std::nullopt;
}

} // namespace bw
