// SPDX-License-Identifier: GPL-3.0-or-later
// What the command line of the window program asks for.
//   blockwright [FILE.bwgym] [--demo] [--theme system|light|dark|contrast]
//     [--language system|en|de] [--month YYYY-MM] [--bench-start]
#pragma once
#include "blockwright/model/calendar.hpp"
#include "desk/frame/language.hpp"
#include "desk/frame/theme.hpp"

#include <QString>
#include <QStringList>

#include <filesystem>
#include <optional>

namespace bw {

struct Launch {
    std::optional<std::filesystem::path> file;
    bool demo = false;
    std::optional<Theme> theme;
    std::optional<Language> language;
    std::optional<Month> month;
    bool benchStart = false; // say the milliseconds to the first paint, then quit
    QString answer;          // --help, --version: say this and end
};

// Why() is what standard error says.
[[nodiscard]] Result<Launch> readLaunch(const QStringList& arguments);

} // namespace bw
