// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window and of what it prints. English is in the sources; the others come from
// resources/translations (docs/translating.md).
#pragma once
#include <QString>

#include <optional>

namespace bw {

enum class Language { System, English, German };

// "system", "en", "de": on the command line and in blockwright.ini.
[[nodiscard]] QString languageWord(Language language);
[[nodiscard]] std::optional<Language> languageFrom(const QString& word);

// From here on texts, numbers and dates are in that language. What is on the screen already keeps
// its own until it is made anew.
void speak(Language language);

} // namespace bw
