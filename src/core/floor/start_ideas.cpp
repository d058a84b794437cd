// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/start_ideas.hpp"

namespace bw {

namespace {
std::function<void(Block&)> setStart(Place section, Start start) {
    return [section, start = std::move(start)](Block& b) {
        if (Section* s = sectionAt(b, section)) s->start = start;
    };
}

template <class List, class Text> std::string listed(const List& list, Text text) {
    std::string out;
    for (const auto& x : list) out += (out.empty() ? "" : ", ") + text(x);
    return out;
}

std::string lettersOf(const Block& block, Place section) {
    std::vector<Place> groups;
    for (int g = 0; groupAt(block, {section.section, g}); ++g)
        groups.push_back({section.section, g});
    return listed(groups, [&](Place group) { return groupLetter(block, group); });
}

FloorIdea together(const Block& block, Place section) {
    const std::string first = groupLetter(block, {section.section, 0});
    return {.saves = {"Start everybody at group %1: saves %2", {first}},
            .spares = {"Start everybody at group %1: %2 less waiting for each", {first}},
            .place = section,
            .change = setStart(section, StartTogether{})};
}
FloorIdea spread(const Block& block, Place section) {
    const std::string letters = lettersOf(block, section);
    return {.saves = {"Start spread over groups %1: saves %2", {letters}},
            .spares = {"Start spread over groups %1: %2 less waiting for each", {letters}},
            .place = section,
            .change = setStart(section, StartSpread{})};
}
FloorIdea withHeads(const Block& block, Place section, const std::vector<int>& heads) {
    const std::string letters = lettersOf(block, section);
    const std::string counts = listed(heads, [](int n) { return std::to_string(n); });
    return {.saves = {"Start with %1 at groups %2: saves %3", {counts, letters}},
            .spares = {"Start with %1 at groups %2: %3 less waiting for each", {counts, letters}},
            .place = section,
            .change = setStart(section, StartCounts{heads})};
}
} // namespace

std::vector<FloorIdea> startIdeas(const Block& block, const FloorHeads& best) {
    std::vector<FloorIdea> ideas;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Place section{s};
        if (sectionAt(block, section)->groups.size() < 2) continue;
        ideas.push_back(together(block, section));
        ideas.push_back(spread(block, section));
        ideas.push_back(withHeads(block, section, best.counts[static_cast<std::size_t>(s)]));
    }
    return ideas;
}

} // namespace bw
