// SPDX-License-Identifier: GPL-3.0-or-later
// What the program remembers from one start to the next, in blockwright.ini: below
// $BLOCKWRIGHT_HOME when that is set, else $XDG_CONFIG_HOME/blockwright. It is never needed:
// without it all is as new.
#pragma once
#include "desk/frame/language.hpp"
#include "desk/frame/theme.hpp"

#include <QByteArray>
#include <QStringList>

#include <filesystem>
#include <optional>

namespace bw {

// Where gym files of our own making go.
[[nodiscard]] std::filesystem::path dataFolder();
[[nodiscard]] std::filesystem::path demoPath();

[[nodiscard]] QString pathText(const std::filesystem::path& path);
[[nodiscard]] std::filesystem::path pathOf(const QString& text);

// Both must be there.
[[nodiscard]] bool sameFile(const std::filesystem::path& a, const std::filesystem::path& b);

[[nodiscard]] QString rememberedFile(); // blockwright.ini, for QSettings

struct Remembered {
    static constexpr int kMostRecent = 8;

    [[nodiscard]] static QStringList recent(); // newest first; only files that are there
    static void opened(const std::filesystem::path& gymFile);
    [[nodiscard]] static std::optional<std::filesystem::path> last(); // none: not there any more

    [[nodiscard]] static Theme theme();
    static void setTheme(Theme theme);

    [[nodiscard]] static Language language();
    static void setLanguage(Language language);

    // Of the program's window, or of another by its name; empty: none.
    [[nodiscard]] static QByteArray geometry(const QString& window = {});
    static void setGeometry(const QByteArray& geometry, const QString& window = {});

    // A part of a screen that folds: "beam". None: the coach has never chosen.
    [[nodiscard]] static std::optional<bool> shown(const QString& part);
    static void setShown(const QString& part, bool shown);
};

} // namespace bw
