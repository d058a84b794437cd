// SPDX-License-Identifier: GPL-3.0-or-later
// The engine's text in the language of the program: the sentence is translated, then filled. On the
// terminal nothing is translated, and all is as the engine wrote it.
#pragma once
#include "blockwright/model/message.hpp"

#include <QString>

#include <string_view>

namespace bw {

[[nodiscard]] QString worded(const Message& message);
// A word of the vocabulary, "vertical-pull", translated; any other comes back as it is.
[[nodiscard]] QString vocabularyWord(std::string_view word);
// "squat, vertical-pull": each that is known.
[[nodiscard]] QString vocabularyWords(std::string_view words);

} // namespace bw
