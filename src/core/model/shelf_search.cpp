// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shelf_search.hpp"

#include "core/model/board_text.hpp"

#include <algorithm>
#include <tuple>

namespace bw {

namespace {
using board::trimmed;

std::string lowered(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    while (!(text = trimmed(text)).empty()) {
        const auto end = std::min(text.find_first_of(" \t-"), text.size());
        if (end > 0) words.push_back(lowered(text.substr(0, end)));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// Where a name begins a word with this.
bool beginsWord(std::string_view name, std::string_view word) {
    for (auto at = name.find(word); at != std::string_view::npos; at = name.find(word, at + 1))
        if (at == 0 || name[at - 1] == ' ' || name[at - 1] == '-') return true;
    return false;
}

// All words for an exercise that are not its name, each after a space.
std::string otherWords(const Gym& gym, const Exercise& e) {
    std::string text;
    for (std::size_t p = 0; p < kCount<Pattern>; ++p)
        if (e.patterns.has(static_cast<Pattern>(p))) (text += ' ') += Spelling<Pattern>::words[p];
    for (const RoleId& r : e.roles) (text += ' ') += r.text();
    for (const auto& [muscle, share] : e.muscles) (text += ' ') += muscle.text();
    for (const auto& alternative : e.needs)
        for (const KitNeed& need : alternative) {
            (text += ' ') += need.kit.text();
            if (const KitItem* item = gym.findKit(need.kit)) (text += ' ') += lowered(item->name);
        }
    return text;
}

// 0 best; none when a word is not found at all.
std::optional<int> rank(const Gym& gym, const Exercise& e, const std::vector<std::string>& words,
                        const std::string& whole) {
    const std::string name = lowered(e.name);
    if (name.starts_with(whole)) return 0;
    std::string others;
    int worst = 0;
    for (const std::string& word : words) {
        if (beginsWord(name, word)) {
            worst = std::max(worst, 1);
        } else if (name.find(word) != std::string::npos) {
            worst = std::max(worst, 2);
        } else {
            if (others.empty()) others = otherWords(gym, e);
            if (!beginsWord(others, word)) return std::nullopt;
            worst = std::max(worst, 3);
        }
    }
    return worst;
}

int unmet(const Exercise& e, const SearchWish& wish) {
    int n = 0;
    if (wish.section) {
        const auto kind = wordOf(*wish.section);
        const bool fits = std::any_of(e.roles.begin(), e.roles.end(),
                                      [&](const RoleId& r) { return r.text().starts_with(kind); });
        n += fits ? 0 : 1;
    }
    if (!wish.patterns.empty())
        n += std::any_of(wish.patterns.begin(), wish.patterns.end(),
                         [&](Pattern p) { return e.patterns.has(p); })
                 ? 0
                 : 2;
    return n;
}
} // namespace

std::vector<const Exercise*> searchShelf(const Gym& gym, std::string_view query,
                                         const SearchWish& wish, std::size_t most) {
    const auto words = wordsOf(query);
    const std::string whole = lowered(trimmed(query));
    std::vector<std::tuple<int, int, std::string_view, const Exercise*>> hits;
    for (const auto& entry : gym.shelf.entries()) {
        if (entry->retired) continue;
        if (const auto r = rank(gym, *entry, words, whole))
            hits.emplace_back(*r, unmet(*entry, wish), entry->name, entry.get());
    }
    std::sort(hits.begin(), hits.end());
    std::vector<const Exercise*> out;
    for (std::size_t i = 0; i < std::min(most, hits.size()); ++i)
        out.push_back(std::get<3>(hits[i]));
    return out;
}

const Exercise* exerciseNamed(const Shelf& shelf, std::string_view name) {
    const std::string wanted = lowered(trimmed(name));
    for (const auto& entry : shelf.entries())
        if (lowered(entry->name) == wanted) return entry.get();
    return nullptr;
}

} // namespace bw
