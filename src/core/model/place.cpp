// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/place.hpp"

#include <charconv>

namespace bw {

namespace {
// Groups of the same kind that stand in earlier sections.
int groupsBefore(const Block& block, int section) {
    int n = 0;
    for (int i = 0; i < section; ++i)
        if (block.sections[static_cast<std::size_t>(i)].kind ==
            block.sections[static_cast<std::size_t>(section)].kind)
            n += static_cast<int>(block.sections[static_cast<std::size_t>(i)].groups.size());
    return n;
}

// Cuts the text up to the next slash off the front; -1 unless it is a number from 1.
int numberOff(std::string_view& rest) {
    const auto slash = rest.find('/');
    const auto word = rest.substr(0, slash);
    rest = slash == std::string_view::npos ? std::string_view{} : rest.substr(slash + 1);
    int n = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), n);
    return error == std::errc{} && end == word.data() + word.size() && n >= 1 ? n : -1;
}

template <class V> auto* element(V& list, int i) {
    return i >= 0 && i < static_cast<int>(list.size()) ? &list[static_cast<std::size_t>(i)]
                                                       : nullptr;
}
template <class B> auto* findGroup(B& block, Place p) {
    auto* section = element(block.sections, p.section);
    return section ? element(section->groups, p.group) : nullptr;
}
template <class B> auto* findSlot(B& block, Place p) {
    auto* group = findGroup(block, p);
    return group ? element(group->slots, p.slot) : nullptr;
}
} // namespace

std::string placeText(const Block& block, Place place) {
    const Section* section = sectionAt(block, place);
    if (!section) return "session";
    std::string text(wordOf(section->kind));
    if (place.group < 0) return text;
    text += "/" + std::to_string(groupsBefore(block, place.section) + place.group + 1);
    return place.slot < 0 ? text : text + "/" + std::to_string(place.slot + 1);
}

std::optional<Place> placeFrom(const Block& block, std::string_view text) {
    if (text == "session") return Place{};
    const auto slash = text.find('/');
    const auto kind = fromWord<SectionKind>(text.substr(0, slash));
    if (!kind) return std::nullopt;
    std::string_view rest = slash == std::string_view::npos ? "" : text.substr(slash + 1);
    const bool wantsSlot = rest.find('/') != std::string_view::npos;
    int group = slash == std::string_view::npos ? 0 : numberOff(rest);
    const int slot = wantsSlot ? numberOff(rest) : 0;
    if (group < 0 || slot < 0 || !rest.empty()) return std::nullopt;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = block.sections[static_cast<std::size_t>(s)];
        if (section.kind != *kind) continue;
        if (slash == std::string_view::npos) return Place{s};
        if (group > static_cast<int>(section.groups.size())) {
            group -= static_cast<int>(section.groups.size());
            continue;
        }
        const Place place{s, group - 1, slot - 1};
        return !wantsSlot || slotAt(block, place) ? std::optional(place) : std::nullopt;
    }
    return std::nullopt;
}

std::string groupLetter(const Block& block, Place place) {
    int n = place.group;
    for (int s = 0; s < place.section && s < static_cast<int>(block.sections.size()); ++s)
        n += static_cast<int>(block.sections[static_cast<std::size_t>(s)].groups.size());
    std::string text;
    for (; n >= 0; n = n / 26 - 1) text.insert(text.begin(), static_cast<char>('A' + n % 26));
    return text;
}

const Section* sectionAt(const Block& b, Place p) { return element(b.sections, p.section); }
const Group* groupAt(const Block& b, Place p) { return findGroup(b, p); }
const Slot* slotAt(const Block& b, Place p) { return findSlot(b, p); }
Section* sectionAt(Block& b, Place p) { return element(b.sections, p.section); }
Group* groupAt(Block& b, Place p) { return findGroup(b, p); }
Slot* slotAt(Block& b, Place p) { return findSlot(b, p); }

} // namespace bw
