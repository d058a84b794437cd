// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/exercise_text.hpp"

#include "blockwright/model/shorthand.hpp"
#include "core/model/exercise_words.hpp"

#include <algorithm>
#include <set>

namespace bw {

namespace {
constexpr std::int64_t kPerCent = Share::kWhole / 100;

// A decimal of at most nine places, as short as it can be: 0.333 of a billion is "0.333".
std::string decimal(std::int64_t n, std::int64_t perOne) {
    std::string text = std::to_string(n / perOne);
    std::string rest = std::to_string(n % perOne + perOne).substr(1);
    while (!rest.empty() && rest.back() == '0') rest.pop_back();
    return rest.empty() ? text : text + '.' + rest;
}

std::string perCent(Share share) { return decimal(share.billionths(), kPerCent) + " %"; }

void append(std::string& text, const std::string& word, std::string_view between = ", ") {
    if (!text.empty()) text += between;
    text += word;
}

std::string orNone(const std::string& text) { return text.empty() ? "none" : text; }

struct Part {
    std::string word;
    Share share;
};
// Largest first. A part of `silent` is not told.
std::string partsText(std::vector<Part> parts, Share silent) {
    std::stable_sort(parts.begin(), parts.end(),
                     [](const Part& a, const Part& b) { return a.share > b.share; });
    std::string text;
    for (const Part& p : parts)
        append(text, p.share == silent ? p.word : p.word + ' ' + perCent(p.share));
    return orNone(text);
}

template <class E> std::string sharesText(const Shares<E>& shares) {
    std::vector<Part> parts;
    for (std::size_t i = 0; i < kCount<E>; ++i)
        if (const auto e = static_cast<E>(i); shares.has(e))
            parts.push_back({spacedWord(wordOf(e)), shares[e]});
    return partsText(std::move(parts), Share::whole());
}

std::string musclesText(const Exercise& e) {
    std::vector<Part> parts;
    for (const auto& [muscle, share] : e.muscles)
        parts.push_back({spacedWord(muscle.text()), share});
    return partsText(std::move(parts), Share::whole());
}

std::string demandsText(const Demands& demands) {
    std::string text;
    for (int level = 3; level > 0; --level)
        for (std::size_t i = 0; i < kCount<Demand>; ++i)
            if (const auto d = static_cast<Demand>(i); demands[d] == level)
                append(text, std::string(wordOf(d)) + ' ' + std::to_string(level));
    return orNone(text);
}

std::string needText(const Gym& gym, const KitNeed& need) {
    const std::string word = kitWord(gym, need.kit);
    const bool figure = word.front() >= '0' && word.front() <= '9';
    return need.count == 1 && !figure ? word : std::to_string(need.count) + " × " + word;
}

std::string kitText(const Gym& gym, const KitNeeds& needs) {
    std::string text;
    for (const auto& alternative : needs) {
        std::string all;
        for (const KitNeed& need : alternative) append(all, needText(gym, need), " + ");
        append(text, orNone(all), " or ");
    }
    return orNone(text);
}

std::string rolesText(const Exercise& e) {
    std::string text;
    for (const RoleId& role : e.roles) append(text, role.text());
    return orNone(text);
}

std::string paceText(const Pace::Rates& rates) {
    std::string text;
    const auto add = [&](const std::optional<Rate>& rate, std::string_view unit) {
        if (rate) append(text, decimal(rate->billionths(), Rate::kUnit) + std::string(unit));
    };
    add(rates.secondsPerRep, " s/rep");
    add(rates.metresPerSecond, " m/s");
    add(rates.kcalPerMinute, " kcal/min");
    return orNone(text);
}

std::string sidesText(Sides sides) {
    switch (sides) {
    case Sides::Both: return "both";
    case Sides::Each: return "each (the dose is per side)";
    case Sides::Alternating: return "alternating (the dose is both sides together)";
    }
    return {};
}

std::string skillText(int skill) {
    if (skill == 1) return "1 (anyone)";
    return skill == 2 ? "2 (needs teaching)" : "3 (needs weeks of coaching)";
}

// The shipped words and those that stand on this Shelf.
template <class Of> std::vector<std::string>
openWords(const Gym& gym, std::span<const std::string_view> shipped, Of of) {
    std::vector<std::string> words(shipped.begin(), shipped.end());
    std::set<std::string> others;
    for (const auto& entry : gym.shelf.entries()) of(*entry, others);
    for (const std::string& word : others)
        if (std::find(shipped.begin(), shipped.end(), word) == shipped.end()) words.push_back(word);
    return words;
}
} // namespace

std::string spacedWord(std::string_view word) {
    std::string text(word);
    std::replace(text.begin(), text.end(), '-', ' ');
    return text;
}

std::vector<std::string> roleWords(const Gym& gym) {
    return openWords(gym, shippedRoles(), [](const Exercise& e, auto& words) {
        for (const RoleId& role : e.roles) words.insert(role.text());
    });
}
std::vector<std::string> muscleWords(const Gym& gym) {
    return openWords(gym, shippedMuscles(), [](const Exercise& e, auto& words) {
        for (const auto& [muscle, share] : e.muscles) words.insert(muscle.text());
    });
}
std::vector<std::string> loadWords(const Gym& gym) {
    return openWords(gym, shippedLoads(),
                     [](const Exercise& e, auto& words) { words.insert(e.load.text()); });
}

std::string kitWord(const Gym& gym, const KitId& id) {
    const KitItem* item = gym.findKit(id);
    if (!item || idTextFrom(item->name).empty()) return spacedWord(id.text());
    std::string word = item->name;
    for (char& c : word)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    const KitId* back = kitNamed(gym, word);
    const bool plain =
        word.find_first_of(",+()") == std::string::npos && word.find(" or ") == std::string::npos;
    return plain && back && *back == id ? word : spacedWord(id.text());
}

std::string fieldText(const Gym& gym, const Exercise& e, ExerciseField field) {
    switch (field) {
    case ExerciseField::Name: return e.name;
    case ExerciseField::Patterns: return sharesText(e.patterns);
    case ExerciseField::Planes: return sharesText(e.planes);
    case ExerciseField::Muscles: return musclesText(e);
    case ExerciseField::Sides: return sidesText(e.sides);
    case ExerciseField::Roles: return rolesText(e);
    case ExerciseField::Demands: return demandsText(e.demands);
    case ExerciseField::Skill: return skillText(e.skill);
    case ExerciseField::Kit: return kitText(gym, e.needs);
    case ExerciseField::Load: return e.load.text();
    case ExerciseField::Measure: return std::string(wordOf(e.pace.usual()));
    case ExerciseField::Pace: return paceText(e.pace.rates());
    case ExerciseField::Setup:
        return e.setup.count() == 0 ? "none" : decimal(e.setup.count(), 1'000) + " s";
    case ExerciseField::NoEasier: return e.noEasier;
    case ExerciseField::NoHarder: return e.noHarder;
    }
    return {};
}

std::vector<std::string> fieldWords(const Gym& gym, ExerciseField field) {
    std::vector<std::string> words;
    switch (field) {
    case ExerciseField::Patterns: return spacedWords<Pattern>();
    case ExerciseField::Planes: return spacedWords<Plane>();
    case ExerciseField::Demands: return spacedWords<Demand>();
    case ExerciseField::Sides: return spacedWords<Sides>();
    case ExerciseField::Measure: return spacedWords<Measure>();
    case ExerciseField::Roles: return roleWords(gym);
    case ExerciseField::Load: return loadWords(gym);
    case ExerciseField::Muscles:
        for (const std::string& word : muscleWords(gym)) words.push_back(spacedWord(word));
        break;
    case ExerciseField::Kit:
        for (const KitItem& item : gym.kit) words.push_back(kitWord(gym, item.id));
        break;
    default: break;
    }
    return words;
}

} // namespace bw
