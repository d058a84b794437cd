// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/house_limits.hpp"
#include "core/model/board_text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace bw {

namespace {
using board::Amount;
using board::Unit;

bool timed(const LimitSpec& spec) { return spec.unit == "s"; }
bool share(const LimitSpec& spec) { return spec.unit == "share"; }

// The unit's own word is no news: "12 %", "6 reps", "1 rep" -> "12", "6", "1".
std::string withoutUnit(std::string text, const LimitSpec& spec) {
    if (share(spec)) std::replace(text.begin(), text.end(), '%', ' ');
    std::string word = spec.unit;
    for (int i = 0; i < 2 && !word.empty() && !timed(spec) && !share(spec); ++i) {
        if (text.size() > word.size() && text.ends_with(word))
            return text.substr(0, text.size() - word.size());
        if (word.ends_with('s')) word.pop_back(); // one month
    }
    return text;
}

// None when the amount is of another kind. Exact figures give the nearest double.
std::optional<double> amount(const Amount& a, const LimitSpec& spec) {
    double per = std::pow(10.0, a.decimals);
    const auto number = static_cast<double>(a.number);
    if (!timed(spec)) {
        const bool own = a.unit == Unit::None || (a.unit == Unit::Rep && spec.unit == "reps");
        if (!own || a.clock) return std::nullopt;
        return number / (share(spec) ? per * 100 : per);
    }
    switch (a.unit) {
    case Unit::None:
    case Unit::Second: return number / per;
    case Unit::Minute: return number * 60 / per;
    case Unit::Hour: return number * 3600 / per;
    default: return std::nullopt;
    }
}

Message understood(std::string_view text, const LimitSpec& spec) {
    const bool band = spec.standard.band;
    const char* example = timed(spec)
                              ? (band ? "60-120 s, 1:30-2:00 or 1-2 min" : "90 s, 1:30 or 2 min")
                          : share(spec) ? (band ? "10-60 %" : "12 %")
                                        : (band ? "0.6-1.4" : "6 or 0.5");
    return {band ? "“%1” is not understood: write lowest and highest, such as %2."
                 : "“%1” is not understood: write one number, such as %2.",
            {board::quoted(text), example}};
}

// As many decimals as can be read back.
std::string figure(double n, const LimitSpec& spec) {
    std::array<char, 40> text{};
    constexpr int kDecimals = 4;
    const auto end = std::to_chars(text.data(), text.data() + text.size(),
                                   share(spec) ? n * 100 : n, std::chars_format::fixed, kDecimals);
    std::string out(text.data(), end.ptr);
    out.erase(out.find_last_not_of('0') + 1);
    if (out.ends_with('.')) out.pop_back();
    return out;
}
} // namespace

Result<LimitValue> parseLimit(std::string_view text, const LimitSpec& spec) {
    constexpr double kMost = 1e9;
    const auto span = board::readSpan(withoutUnit(board::plainWords(text), spec));
    if (!span || span->perSide) return understood(text, spec);
    const auto lo = amount(span->lo, spec), hi = amount(span->hi, spec);
    if (!lo || !hi || *hi > kMost) return understood(text, spec);
    if (!spec.standard.band && *lo != *hi) return understood(text, spec);
    if (*lo > *hi)
        return Message{"The first number must not be above the second: “%1”.",
                       {board::quoted(text)}};
    return LimitValue{*lo, *hi, spec.standard.band};
}

std::string limitText(const LimitValue& value, const LimitSpec& spec) {
    std::string text = figure(value.lo, spec);
    if (value.band) text += "–" + figure(value.hi, spec);
    if (share(spec)) return text + " %";
    if (spec.unit.empty()) return text;
    const bool one = !value.band && value.lo == 1 && !timed(spec) && spec.unit.ends_with('s');
    return text + " " + (one ? spec.unit.substr(0, spec.unit.size() - 1) : spec.unit);
}

} // namespace bw
