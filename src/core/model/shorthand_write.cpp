// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"

namespace bw {

namespace {
constexpr std::int64_t kMinute = 60'000;

std::string padded(std::int64_t n) { return (n < 10 ? "0" : "") + std::to_string(n); }

// n / perUnit without needless zeros: 1500 of 1000 is "1.5". perUnit is a power of ten.
std::string decimal(std::int64_t n, std::int64_t perUnit) {
    std::string text = std::to_string(n / perUnit);
    std::int64_t left = n % perUnit;
    if (left == 0) return text;
    text += '.';
    for (; left != 0; left %= perUnit) {
        left *= 10;
        text += static_cast<char>('0' + left / perUnit);
    }
    return text;
}

template <class Write> std::string spanText(std::int64_t lo, std::int64_t hi, Write write) {
    return lo == hi ? write(lo) : write(lo) + "–" + write(hi);
}

// Seconds up to three minutes, whole minutes where both are, a clock for the rest.
std::string timeText(std::int64_t lo, std::int64_t hi) {
    const bool minutes = lo % kMinute == 0 && hi % kMinute == 0;
    const bool wholeSeconds = lo % 1000 == 0 && hi % 1000 == 0;
    if (minutes && (lo >= 2 * kMinute || hi > 3 * kMinute))
        return spanText(lo, hi, [](auto t) { return std::to_string(t / kMinute); }) + " min";
    if (wholeSeconds && hi > 3 * kMinute)
        return spanText(lo, hi, [](auto t) { return clockText(Millis{t}); });
    return spanText(lo, hi, [](auto t) { return decimal(t, 1000); }) + " s";
}

std::string_view unitText(Measure m) { return m == Measure::Metres ? " m" : " cal"; }
} // namespace

std::string doseText(const Dose& dose, Sides sides, Measure usual) {
    const auto lo = dose.amount().lo();
    const auto hi = dose.amount().hi();
    std::string text;
    switch (dose.measure()) {
    case Measure::Reps:
        text = spanText(lo, hi, [](auto n) { return std::to_string(n); });
        if (usual != Measure::Reps) text += " reps";
        break;
    case Measure::Seconds: text = timeText(lo, hi); break;
    case Measure::Metres:
    case Measure::Kcal:
        text = spanText(lo, hi, [](auto n) { return decimal(n, 1000); });
        text += unitText(dose.measure());
        break;
    }
    return sides == Sides::Each ? text + "/side" : text;
}

std::string roundsText(Range<int> rounds) {
    return spanText(rounds.lo(), rounds.hi(), [](auto n) { return std::to_string(n); });
}

std::string restText(Range<Millis> rest) {
    return rest.hi() == Millis{0} ? "no rest" : timeText(rest.lo().count(), rest.hi().count());
}

std::string effortText(Range<Rir> effort) {
    return spanText(effort.lo().tenths(), effort.hi().tenths(),
                    [](auto n) { return decimal(n, 10); });
}

std::string clockText(Millis t) {
    const bool minus = t < Millis{0};
    const std::int64_t s = ((minus ? -t : t).count() + 500) / 1000;
    const std::int64_t hours = s / 3600;
    const std::int64_t minutes = s / 60 % 60;
    const std::string head =
        hours > 0 ? std::to_string(hours) + ":" + padded(minutes) : std::to_string(minutes);
    return (minus && s > 0 ? "-" : "") + head + ":" + padded(s % 60);
}

} // namespace bw
