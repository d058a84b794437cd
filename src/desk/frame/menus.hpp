// SPDX-License-Identifier: GPL-3.0-or-later
// The menu bar, made from the registry of actions.
#pragma once
#include "desk/frame/language.hpp"
#include "desk/frame/theme.hpp"

#include <QString>

#include <functional>

class QMenuBar;

namespace bw {

class Actions;

// Everything of a gym is left out when none is on show.
void buildMenus(QMenuBar& bar, const Actions& actions, bool gym,
                const std::function<void(const QString& file)>& openRecent);

[[nodiscard]] QString languageActionId(Language language);
[[nodiscard]] QString themeActionId(Theme theme);
void addLanguageActions(Actions& actions, Language now, const std::function<void(Language)>& set);
void addThemeActions(Actions& actions, Theme now, const std::function<void(Theme)>& set);

} // namespace bw
