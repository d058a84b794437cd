// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/exercise_text.hpp"
#include "blockwright/model/shelf_search.hpp"
#include "blockwright/model/shorthand.hpp"
#include "core/model/board_text.hpp"
#include "core/model/exercise_words.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace bw {

namespace {
using board::quoted;
using board::trimmed;

// Small, plain and without what stands in brackets; "none" is nothing.
std::string plainField(std::string_view typed) {
    std::string text;
    int deep = 0;
    for (const char c : typed) {
        if (c == '(') ++deep;
        if (deep == 0) text += c;
        if (c == ')' && deep > 0) --deep;
    }
    text = board::plainWords(text);
    return text == "none" || text == "no kit" ? std::string() : text;
}

std::vector<std::string> split(std::string_view text, std::string_view at) {
    std::vector<std::string> parts;
    while (true) {
        const auto end = text.find(at);
        if (std::string part(trimmed(text.substr(0, end))); !part.empty())
            parts.push_back(std::move(part));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + at.size());
    }
}

// "a, b or c"
std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
    return text;
}
template <class E> std::string listedWords() { return listed(spacedWords<E>()); }

Message notOne(std::string_view typed, std::string words) {
    return {"“%1” is not understood: write %2.", {quoted(typed), std::move(words)}};
}

template <class E> std::optional<E> wordIn(std::string_view text) {
    return fromWord<E>(idTextFrom(text));
}

// Off the front of the text; none when it begins with no number.
std::optional<double> takeNumber(std::string_view& text) {
    double number = 0;
    const auto [end, fault] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    if (fault != std::errc() || !std::isfinite(number)) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

// "squat 90 %": a word and what stands behind it, if a number does.
struct Counted {
    std::string word;
    std::optional<double> number;
};
Counted counted(std::string text) {
    if (text.ends_with('%'))
        text = std::string(trimmed(std::string_view(text).substr(0, text.size() - 1)));
    const auto blank = text.find_last_of(' ');
    if (blank == std::string::npos) return {text, {}};
    std::string_view rest = std::string_view(text).substr(blank + 1);
    const auto number = takeNumber(rest);
    if (!number || !rest.empty()) return {text, {}};
    return {std::string(trimmed(std::string_view(text).substr(0, blank))), number};
}

std::optional<Share> perCent(double number) {
    const auto share = Share::of(number / 100);
    return share ? std::optional(share.value()) : std::nullopt;
}

// One part without a number gets what the others leave.
template <class E> Result<Shares<E>> readShares(std::string_view typed, bool mayBeEmpty) {
    const auto items = split(plainField(typed), ",");
    if (items.empty() && mayBeEmpty) return Shares<E>{};
    std::vector<std::pair<E, std::optional<double>>> parts;
    double sum = 0;
    int open = 0;
    for (const std::string& item : items) {
        const auto [word, number] = counted(item);
        const auto e = wordIn<E>(word);
        if (!e) return notOne(item, listedWords<E>());
        if (number && (*number <= 0 || *number > 100))
            return Message{"“%1” is out of range: a part is above 0 and at most 100 %.",
                           {quoted(item)}};
        parts.emplace_back(*e, number);
        sum += number.value_or(0);
        open += number ? 0 : 1;
    }
    if (open > 1 || parts.empty())
        return Message{"Write how much each has, in per cent: %1 60, %2 40.",
                       {spacedWord(Spelling<E>::words[0]), spacedWord(Spelling<E>::words[1])}};
    std::vector<std::pair<E, Share>> shares;
    for (const auto& [e, number] : parts) {
        const auto share = perCent(number.value_or(100 - sum));
        if (!share || share->billionths() == 0) break; // nothing is left for it
        shares.emplace_back(e, *share);
    }
    auto all = Shares<E>::of(shares);
    if (shares.size() == parts.size() && all) return all;
    return Message{"The parts of “%1” do not add up to 100 %.", {quoted(typed)}};
}

// A word of the list, or a new one behind a plus; empty when it is neither.
std::string openWord(const std::string& typed, const std::vector<std::string>& known) {
    const bool fresh = typed.starts_with('+');
    const std::string word = idTextFrom(typed);
    return fresh || std::find(known.begin(), known.end(), word) != known.end() ? word
                                                                               : std::string();
}
Message notKnown(const std::string& typed, const std::vector<std::string>& known) {
    std::vector<std::string> near; // those that begin alike, when there are many
    for (const std::string& word : known)
        if (known.size() < 10 || (!typed.empty() && word.front() == typed.front()))
            near.push_back(word);
    near.push_back("+" + idTextFrom(typed) + " for a word of your own");
    return notOne(typed, listed(near));
}

Result<std::map<MuscleId, Share>> readMuscles(const Gym& gym, std::string_view typed) {
    const auto known = muscleWords(gym);
    std::map<MuscleId, Share> muscles;
    for (const std::string& item : split(plainField(typed), ",")) {
        const auto [word, number] = counted(item);
        const auto id = MuscleId::parse(openWord(word, known));
        const auto share = perCent(number.value_or(100));
        if (!id) return notKnown(word, known);
        if (!share)
            return Message{"“%1” is out of range: a part is above 0 and at most 100 %.",
                           {quoted(item)}};
        muscles.insert_or_assign(*id, *share);
    }
    return muscles;
}

Result<std::vector<RoleId>> readRoles(const Gym& gym, std::string_view typed) {
    const auto known = roleWords(gym);
    std::vector<RoleId> roles;
    for (const std::string& item : split(plainField(typed), ",")) {
        const auto role = RoleId::parse(openWord(item, known));
        if (!role) return notKnown(item, known);
        if (std::find(roles.begin(), roles.end(), *role) == roles.end()) roles.push_back(*role);
    }
    return roles;
}

Result<Demands> readDemands(std::string_view typed) {
    Demands demands;
    for (const std::string& item : split(plainField(typed), ",")) {
        const auto [word, number] = counted(item);
        const auto demand = wordIn<Demand>(word);
        if (!demand) return notOne(item, listedWords<Demand>());
        const int level = static_cast<int>(number.value_or(-1));
        if (!number || level != *number || !demands.set(*demand, level))
            return Message{"“%1” does not say how much: write 0 to 3 behind it, such as %2 2.",
                           {quoted(item), word}};
    }
    return demands;
}

std::optional<int> countOf(std::string_view& text) {
    const auto end = text.find_first_not_of("0123456789");
    if (end == 0 || end > 3) return std::nullopt;
    const auto count = takeNumber(text);
    if (!count || *count != std::floor(*count)) return std::nullopt;
    text.remove_prefix(std::min(text.find_first_not_of(" x"), text.size()));
    return static_cast<int>(*count);
}

Result<KitNeed> readNeed(const Gym& gym, const std::string& typed) {
    if (const KitId* whole = kitNamed(gym, typed)) return KitNeed{*whole, 1, {}};
    std::string_view word = typed;
    const auto count = countOf(word);
    const KitId* id = count ? kitNamed(gym, word) : nullptr;
    if (id && *count >= 1 && *count <= 100) return KitNeed{*id, *count, {}};
    std::vector<std::string> near;
    for (const KitItem& item : gym.kit)
        if (const std::string name = kitWord(gym, item.id);
            gym.kit.size() < 10 || (!word.empty() && name.front() == word.front()))
            near.push_back(name);
    if (near.empty())
        return Message{"“%1” is no kit of this gym: write its name, such as %2.",
                       {quoted(typed), gym.kit.empty() ? "none" : kitWord(gym, gym.kit[0].id)}};
    return Message{"“%1” is no kit of this gym: write %2, with how many before it, such as 2 %3.",
                   {quoted(typed), listed(near), near.front()}};
}

// What a file carried along with a need stays with it.
void keepExtras(KitNeeds& needs, const KitNeeds& before) {
    for (auto& alternative : needs)
        for (KitNeed& need : alternative)
            for (const auto& old : before)
                for (const KitNeed& had : old)
                    if (had.kit == need.kit && had.count == need.count) need.extras = had.extras;
}

Result<KitNeeds> readKit(const Gym& gym, const Exercise& e, std::string_view typed) {
    KitNeeds needs;
    for (const std::string& part : split(plainField(typed), " or ")) {
        std::vector<KitNeed> all;
        for (const std::string& list : split(part == "none" ? std::string() : part, ","))
            for (const std::string& item : split(list, "+")) {
                auto need = readNeed(gym, item);
                if (!need) return need.why();
                all.push_back(std::move(need).value());
            }
        needs.push_back(std::move(all));
    }
    keepExtras(needs, e.needs);
    return needs;
}

// The unit as written, without blanks: "s/rep", "saareps".
std::optional<Rate> Pace::Rates::*rateOf(std::string unit) {
    std::erase(unit, ' ');
    for (const char* w : {"s/rep", "s", "sarep", "sperrep"})
        if (unit == w) return &Pace::Rates::secondsPerRep;
    for (const char* w : {"m/s", "masecond", "mpersecond"})
        if (unit == w) return &Pace::Rates::metresPerSecond;
    for (const char* w : {"kcal/min", "cal/min", "kcalaminute", "calaminute", "kcalperminute"})
        if (unit == w) return &Pace::Rates::kcalPerMinute;
    return nullptr;
}

Result<Pace> readPace(Measure usual, std::string_view typed) {
    Pace::Rates rates;
    for (const std::string& item : split(plainField(typed), ",")) {
        std::string_view unit = item;
        const auto number = takeNumber(unit);
        const auto field = number ? rateOf(std::string(unit)) : nullptr;
        if (!field) return notOne(item, "3 s/rep, 1.2 m/s or 10 kcal/min");
        const auto rate = Rate::of(*number);
        if (!rate)
            return Message{"“%1” is out of range: a pace is above 0 and at most 1000.",
                           {quoted(item)}};
        rates.*field = rate.value();
    }
    auto pace = Pace::of(usual, rates);
    if (pace) return pace;
    return Message{"It is measured in %1, so it needs a pace for that, such as %2.",
                   {std::string(wordOf(usual)), usual == Measure::Reps     ? "3 s/rep"
                                                : usual == Measure::Metres ? "1.2 m/s"
                                                                           : "10 kcal/min"}};
}

Result<Pace> readMeasure(const Pace& pace, std::string_view typed) {
    const std::string word = plainField(typed);
    const auto measure = word == "cal" ? Measure::Kcal : wordIn<Measure>(word);
    if (!measure) return notOne(typed, listedWords<Measure>());
    auto now = Pace::of(*measure, pace.rates());
    if (now) return now;
    return Message{"Measured in %1 it needs a pace for that: write it on the line “pace” first.",
                   {std::string(wordOf(*measure))}};
}

Result<Millis> readSetup(std::string_view typed) {
    constexpr Millis kMost{600'000};
    const std::string text = plainField(typed);
    if (text.empty()) return Millis{0};
    const auto time = parseRest(text);
    if (time && time->lo() == time->hi() && time->lo() <= kMost) return time->lo();
    return notOne(typed, "one time, at most 10 min: 10 s, 1:30, 2 min or none");
}

Result<std::string> readSentence(std::string_view typed, bool mayBeEmpty) {
    std::string text(trimmed(typed));
    const auto length = std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    });
    if (length > 200)
        return Message{"%1 characters are too long: at most 200.", {std::to_string(length)}};
    if (text.empty() && !mayBeEmpty) return Message{"An exercise needs a name.", {}};
    return text;
}

Result<std::string> readName(const Gym& gym, const Exercise& e, std::string_view typed) {
    auto name = readSentence(typed, false);
    if (!name) return name;
    const Exercise* other = exerciseNamed(gym.shelf, name.value());
    if (!other || other->id == e.id) return name;
    if (other->retired)
        return Message{"“%1” is on the Shelf, retired: bring it back, or write another name.",
                       {quoted(name.value())}};
    return Message{"“%1” is on the Shelf already: write another name.", {quoted(name.value())}};
}

template <class T> Result<Exercise> put(Exercise e, T Exercise::*field, Result<T> read) {
    if (!read) return read.why();
    e.*field = std::move(read).value();
    return e;
}
} // namespace

const KitId* kitNamed(const Gym& gym, std::string_view word) {
    const std::string wanted = idTextFrom(word);
    for (const KitItem& item : gym.kit)
        if (item.id.text() == wanted) return &item.id;
    for (const KitItem& item : gym.kit)
        if (!wanted.empty() && idTextFrom(item.name) == wanted) return &item.id;
    return nullptr;
}

Result<Exercise> withField(const Gym& gym, Exercise e, ExerciseField field,
                           std::string_view typed) {
    const std::string plain = plainField(typed);
    switch (field) {
    case ExerciseField::Name: return put(e, &Exercise::name, readName(gym, e, typed));
    case ExerciseField::Patterns:
        return put(e, &Exercise::patterns, readShares<Pattern>(typed, false));
    case ExerciseField::Planes: return put(e, &Exercise::planes, readShares<Plane>(typed, true));
    case ExerciseField::Muscles: return put(e, &Exercise::muscles, readMuscles(gym, typed));
    case ExerciseField::Roles: return put(e, &Exercise::roles, readRoles(gym, typed));
    case ExerciseField::Demands: return put(e, &Exercise::demands, readDemands(typed));
    case ExerciseField::Kit: return put(e, &Exercise::needs, readKit(gym, e, typed));
    case ExerciseField::Measure: return put(e, &Exercise::pace, readMeasure(e.pace, typed));
    case ExerciseField::Pace: return put(e, &Exercise::pace, readPace(e.pace.usual(), typed));
    case ExerciseField::Setup: return put(e, &Exercise::setup, readSetup(typed));
    case ExerciseField::NoEasier: return put(e, &Exercise::noEasier, readSentence(typed, true));
    case ExerciseField::NoHarder: return put(e, &Exercise::noHarder, readSentence(typed, true));
    case ExerciseField::Sides:
        if (const auto sides = wordIn<Sides>(plain))
            e.sides = *sides;
        else
            return notOne(typed, listedWords<Sides>());
        return e;
    case ExerciseField::Skill:
        if (plain != "1" && plain != "2" && plain != "3") return notOne(typed, "1, 2 or 3");
        e.skill = plain.front() - '0';
        return e;
    case ExerciseField::Load: {
        const auto known = loadWords(gym);
        auto load = LoadId::parse(openWord(plain, known));
        if (!load) return notKnown(plain, known);
        return put(e, &Exercise::load, Result<LoadId>(std::move(load).value()));
    }
    }
    return e;
}

Result<std::vector<std::string>> withLine(std::vector<std::string> lines, std::size_t at,
                                          std::string_view typed) {
    auto text = readSentence(typed, true);
    if (!text) return text.why();
    if (at >= lines.size()) {
        if (!text->empty()) lines.push_back(std::move(text).value());
    } else if (text->empty()) {
        lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(at));
    } else {
        lines[at] = std::move(text).value();
    }
    return lines;
}

} // namespace bw
