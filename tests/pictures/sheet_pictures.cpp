// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet_pictures.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_painter.hpp"

#include <QDir>

#include <cstdio>

namespace bw::test {

bool drawSheets(const QString& folder) {
    constexpr double kDpi = 72;
    bool all = true;
    for (const SheetKind kind :
         {SheetKind::Wall, SheetKind::Cards, SheetKind::Notes, SheetKind::Kit, SheetKind::Talk}) {
        const SheetMatter matter = demoMonth().matter();
        const Layout layout = layoutSheet(kind, matter, usualOptions(matter.gym.settings, kind));
        const std::string word(sheetWord(kind));
        const QString file =
            QDir(folder).filePath(QString::fromStdString(word) + QStringLiteral(".png"));
        const bool saved = pageImage(layout, 0, kDpi).save(file);
        std::printf("%s %s\n", saved ? "drawn" : "NOT drawn", qPrintable(file));
        all = saved && all;
    }
    return all;
}

} // namespace bw::test
