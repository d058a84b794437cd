// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/accepting.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
std::string exerciseWord(const Slot& slot) { return slot.exercise ? slot.exercise->text() : "-"; }

std::string groupWords(const Group& group) {
    std::vector<std::string> words;
    for (const Slot& slot : group.slots) words.push_back(exerciseWord(slot));
    std::sort(words.begin(), words.end());
    std::string text;
    for (const std::string& word : words) text += ' ' + word;
    return text;
}

// What tells the place apart, but for others of the same kind and exercises.
std::string looks(const Block& block, Place p) {
    const std::string kind(wordOf(sectionAt(block, p)->kind));
    if (p.isSection()) return "section " + kind;
    if (p.isGroup()) return "group " + kind + groupWords(*groupAt(block, p));
    return "slot " + kind + ' ' + exerciseWord(*slotAt(block, p));
}

template <class V> int sizeOf(const V& list) { return static_cast<int>(list.size()); }

// How many places of the same sort that look the same stand before this one.
int alikeBefore(const Block& block, Place p, const std::string& look) {
    int n = 0;
    const auto count = [&](Place other) { n += other < p && looks(block, other) == look ? 1 : 0; };
    for (int s = 0; s <= p.section; ++s) {
        if (p.isSection()) count({s});
        const auto& groups = block.sections[static_cast<std::size_t>(s)].groups;
        for (int g = 0; g < sizeOf(groups); ++g) {
            if (p.isGroup()) count({s, g});
            if (!p.isSlot()) continue;
            const auto& slots = groups[static_cast<std::size_t>(g)].slots;
            for (int i = 0; i < sizeOf(slots); ++i) count({s, g, i});
        }
    }
    return n;
}

bool exists(const Block& block, Place p) {
    if (p.isSlot()) return slotAt(block, p) != nullptr;
    return p.isGroup() ? groupAt(block, p) != nullptr : sectionAt(block, p) != nullptr;
}

// In thousandths; none where a bundle has no number for it.
std::optional<double> rounded(double measured) {
    constexpr double kMost = 1e9;
    if (!(std::abs(measured) <= kMost)) return std::nullopt;
    return std::round(measured * 1000) / 1000;
}

double grainOf(const std::string& unit) {
    if (unit == "s") return 5;
    return unit == "share" ? 0.02 : 0.05;
}
} // namespace

std::string placeKey(const Block& block, Place place) {
    if (!exists(block, place)) return "session";
    const std::string look = looks(block, place);
    const int before = alikeBefore(block, place, look);
    return before == 0 ? look : look + " #" + std::to_string(before + 1);
}

Acceptance makeAcceptance(const Block& block, const Finding& f, std::string reason) {
    return {.rule = f.rule,
            .place = placeKey(block, f.place),
            .about = f.about,
            .level = f.level,
            .measured = rounded(f.measured),
            .limit = f.limit,
            .reason = std::move(reason),
            .extras = {}};
}

const Acceptance* acceptanceFor(const Block& block, const Finding& f) {
    std::string place; // made when a rule fits: most findings have none
    for (const Acceptance& a : block.accepted) {
        if (a.rule != f.rule || a.about != f.about) continue;
        if (place.empty()) place = placeKey(block, f.place);
        if (a.place == place) return &a;
    }
    return nullptr;
}

bool factsHold(const Acceptance& a, const Finding& f) {
    if (a.level != f.level || a.limit != f.limit) return false;
    const auto now = rounded(f.measured);
    if (!a.measured || !now) return !a.measured && !now;
    constexpr double kPart = 0.05, kSlip = 1e-9;
    const double room = std::max(std::abs(*a.measured) * kPart, grainOf(f.unit));
    return std::abs(*now - *a.measured) <= room + kSlip;
}

} // namespace bw
