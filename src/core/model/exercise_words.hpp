// SPDX-License-Identifier: GPL-3.0-or-later
// The words that the fields of an exercise are written in.
#pragma once
#include "blockwright/model/gym.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bw {

[[nodiscard]] std::string spacedWord(std::string_view word); // "trunk-stability": "trunk stability"

template <class E> [[nodiscard]] std::vector<std::string> spacedWords() {
    std::vector<std::string> words;
    words.reserve(kCount<E>);
    for (const std::string_view word : Spelling<E>::words) words.push_back(spacedWord(word));
    return words;
}

// Ids: those shipped, then those that stand on this gym's Shelf.
[[nodiscard]] std::vector<std::string> roleWords(const Gym& gym);
[[nodiscard]] std::vector<std::string> muscleWords(const Gym& gym);
[[nodiscard]] std::vector<std::string> loadWords(const Gym& gym);

// The kit with this name or id, however spaced; null when there is none.
[[nodiscard]] const KitId* kitNamed(const Gym& gym, std::string_view word);

} // namespace bw
