// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/gym_text.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "core/ledger/decimals.hpp"
#include "core/model/board_text.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace bw {

namespace {
using board::quoted;
using board::trimmed;
constexpr int kLongestName = 200;

// A gym may be without a name, kit may not.
Result<std::string> readName(std::string_view typed, bool mayBeEmpty) {
    std::string text(trimmed(typed));
    const auto length = std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    });
    if (length > kLongestName)
        return Message{"%1 characters are too long: at most 200.", {std::to_string(length)}};
    if (text.empty() && !mayBeEmpty) return Message{"Kit needs a name.", {}};
    return text;
}

template <class N> std::optional<N> wholeText(std::string_view text) {
    N value{};
    const char* last = text.data() + text.size();
    const auto [at, error] = std::from_chars(text.data(), last, value);
    if (error != std::errc{} || at != last || text.empty()) return std::nullopt;
    return value;
}

// Two of a name could not be told apart where an exercise names its kit.
Result<std::string> readKitName(const Gym& gym, const KitItem& item, std::string_view typed) {
    auto name = readName(typed, false);
    if (!name) return name;
    const std::string wanted = idTextFrom(*name);
    for (const KitItem& other : gym.kit)
        if (!(other.id == item.id) &&
            (other.id.text() == wanted || idTextFrom(other.name) == wanted))
            return Message{"“%1” is in the table already: write another name.", {quoted(*name)}};
    return name;
}

Result<int> readWhole(std::string_view typed, int least, int most) {
    const auto value = wholeText<int>(trimmed(typed));
    if (value && *value >= least && *value <= most) return *value;
    return Message{"“%1” is not understood: write a whole number from %2 to %3.",
                   {quoted(typed), std::to_string(least), std::to_string(most)}};
}

Result<int> readMinutes(std::string_view typed) {
    constexpr Millis kLeast{5 * 60'000}, kMost{300 * 60'000}, kMinute{60'000};
    const auto time = parseBudget(typed);
    if (time && time->lo() == time->hi() && time->lo() >= kLeast && time->lo() <= kMost &&
        time->lo() % kMinute == Millis{0})
        return static_cast<int>(time->lo() / kMinute);
    return Message{"“%1” is no class length: write whole minutes from 5 to 300, such as 60.",
                   {quoted(typed)}};
}

Result<Millis> readTalk(std::string_view typed) {
    constexpr Millis kMost{3'600'000};
    if (trimmed(typed).empty()) return Millis{0};
    const auto time = parseBudget(typed);
    if (time && time->lo() == time->hi() && time->lo() <= kMost) return time->lo();
    return Message{"“%1” is not understood: write minutes, at most 60, such as 3, 2:30 or 90 s.",
                   {quoted(typed)}};
}

Result<Share> readWeight(std::string_view typed) {
    std::string text(trimmed(typed));
    std::replace(text.begin(), text.end(), ',', '.');
    const bool perCent = text.ends_with('%');
    if (perCent) text = std::string(trimmed(std::string_view(text).substr(0, text.size() - 1)));
    const auto value = wholeText<double>(text);
    if (value && std::isfinite(*value))
        if (auto share = Share::of(*value / (perCent ? 100 : 1))) return share;
    return Message{"“%1” is not understood: write how much of a set it counts, from 0 to 1, such "
                   "as 0.5.",
                   {quoted(typed)}};
}

template <class E> Result<E> readWord(std::string_view typed, std::string choices) {
    const std::string text = board::plainWords(typed);
    for (std::size_t i = 0; i < kCount<E>; ++i)
        if (board::plainWords(Spelling<E>::words[i]) == text) return static_cast<E>(i);
    return Message{"“%1” is not understood: write %2.", {quoted(typed), std::move(choices)}};
}

SectionKind kindOf(GymField field) {
    return static_cast<SectionKind>(static_cast<int>(field) - static_cast<int>(GymField::WarmUp));
}

template <class Whole, class T> Result<Whole> put(Whole whole, T Whole::*field, Result<T> read) {
    if (!read) return read.why();
    whole.*field = std::move(read).value();
    return whole;
}

// What was shown as the same number is the same load.
LoadStock asBefore(const LoadStock& typed, const LoadStock& before, MassUnit unit) {
    LoadStock out;
    for (const auto& [load, count] : typed) {
        const auto shown = massNumber(load, unit);
        const auto was = std::find_if(before.begin(), before.end(), [&](const auto& old) {
            return massNumber(old.first, unit) == shown;
        });
        out[was == before.end() ? load : was->first] += count;
    }
    return out;
}

Result<KitItem> withStock(KitItem item, LoadStock KitItem::*field, std::string_view typed,
                          MassUnit unit) {
    const auto stock = parseStock(typed, unit);
    if (!stock) return stock.why();
    item.*field = asBefore(*stock, item.*field, unit);
    if (item.loads.empty() || field != &KitItem::loads) return item;
    if (item.claim == Claim::Group) item.units = piecesOf(item.loads);
    item.units = std::max(item.units, 1);
    return item;
}

Result<KitItem> withBar(KitItem item, std::string_view typed, MassUnit unit) {
    const auto stock = parseStock(typed, unit);
    if (!stock || stock->size() > 1 || piecesOf(*stock) > 1)
        return Message{"“%1” is not understood: write what it weighs empty, such as 20.",
                       {quoted(typed)}};
    LoadStock before;
    if (item.bar) before[*item.bar] = 1;
    const LoadStock now = asBefore(*stock, before, unit);
    item.bar = now.empty() ? std::nullopt : std::optional(now.begin()->first);
    return item;
}
} // namespace

std::string gymFieldText(const GymSettings& s, GymField field) {
    switch (field) {
    case GymField::Name: return s.name;
    case GymField::Unit: return std::string(wordOf(s.massUnit));
    case GymField::Paper: return std::string(wordOf(s.paper));
    case GymField::Minutes: return std::to_string(s.classMinutes) + " min";
    case GymField::Places: return std::to_string(s.places);
    case GymField::OpeningTime: return clockText(s.opening);
    case GymField::ClosingTime: return clockText(s.closing);
    default: {
        constexpr int kAllDecimals = 9;
        return decimals(s.weights.of[static_cast<std::size_t>(kindOf(field))].part(), kAllDecimals);
    }
    }
}

Result<GymSettings> withGymField(GymSettings s, GymField field, std::string_view typed) {
    constexpr int kMostPlaces = 400;
    switch (field) {
    case GymField::Name: return put(std::move(s), &GymSettings::name, readName(typed, true));
    case GymField::Unit:
        return put(std::move(s), &GymSettings::massUnit, readWord<MassUnit>(typed, "kg or lb"));
    case GymField::Paper:
        return put(std::move(s), &GymSettings::paper, readWord<Paper>(typed, "A4, Letter or A3"));
    case GymField::Minutes:
        return put(std::move(s), &GymSettings::classMinutes, readMinutes(typed));
    case GymField::Places:
        return put(std::move(s), &GymSettings::places, readWhole(typed, 1, kMostPlaces));
    case GymField::OpeningTime: return put(std::move(s), &GymSettings::opening, readTalk(typed));
    case GymField::ClosingTime: return put(std::move(s), &GymSettings::closing, readTalk(typed));
    default: break;
    }
    const auto weight = readWeight(typed);
    if (!weight) return weight.why();
    s.weights.of[static_cast<std::size_t>(kindOf(field))] = *weight;
    return s;
}

std::string kitFieldText(const Gym& gym, const KitItem& item, KitField field) {
    const MassUnit unit = gym.settings.massUnit;
    switch (field) {
    case KitField::Name: return item.name;
    case KitField::Units: return std::to_string(item.units);
    case KitField::Claim: return std::string(wordOf(item.claim));
    case KitField::Loads: return stockText(item.loads, unit);
    case KitField::Bar: return item.bar ? massNumber(*item.bar, unit) : std::string();
    case KitField::Plates: return stockText(item.plates, unit);
    }
    return {};
}

Result<KitItem> withKitField(const Gym& gym, KitItem item, KitField field, std::string_view typed) {
    const MassUnit unit = gym.settings.massUnit;
    switch (field) {
    case KitField::Name: {
        auto name = readKitName(gym, item, typed);
        return put(std::move(item), &KitItem::name, std::move(name));
    }
    case KitField::Units:
        if (trimmed(typed).empty()) typed = "0";
        return put(std::move(item), &KitItem::units, readWhole(typed, 0, kMostPieces));
    case KitField::Claim:
        return put(std::move(item), &KitItem::claim, readWord<Claim>(typed, "set or group"));
    case KitField::Loads: return withStock(std::move(item), &KitItem::loads, typed, unit);
    case KitField::Bar: return withBar(std::move(item), typed, unit);
    case KitField::Plates: return withStock(std::move(item), &KitItem::plates, typed, unit);
    }
    return item;
}

} // namespace bw
