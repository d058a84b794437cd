// SPDX-License-Identifier: GPL-3.0-or-later
// What the program carries inside itself (resources/resources.qrc).
#pragma once
#include <QColor>
#include <QIcon>
#include <QString>

namespace bw {

[[nodiscard]] QString demoBundleFile();
[[nodiscard]] QString translationFile(const QString& language); // "de"; may not be there
// Our own line drawing of that name, in one colour, sharp on any screen.
[[nodiscard]] QIcon lineIcon(const QString& name, const QColor& color);
[[nodiscard]] QIcon programIcon();

} // namespace bw
