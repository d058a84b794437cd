// SPDX-License-Identifier: GPL-3.0-or-later
// Looking into laid-out pages.
#pragma once
#include "sheets/page.hpp"
#include "sheets/sheet_options.hpp"

#include <QStringList>

#include <string>
#include <vector>

namespace bw::test {

[[nodiscard]] std::vector<TextItem> textsOf(const SheetPage& page);
[[nodiscard]] std::vector<TextItem> textsOf(const Layout& layout); // of all pages
// Texts of one rank and ink, in the order they were put.
[[nodiscard]] QStringList textsOf(const SheetPage& page, Rank rank, Ink ink);
// All text of the pages in the order it was put, one space between.
[[nodiscard]] QString allText(const Layout& layout);
// "A1", "A2", ... of a wall page, from above to below.
[[nodiscard]] QStringList labelsOf(const SheetPage& page);

// "Paper: text [x y w h]" a line; empty when nothing overflows.
[[nodiscard]] std::string overflowText(const Layout& layout);

// Every paper, upright and wide, in that font.
[[nodiscard]] std::vector<SheetOptions> everyPaper(const QString& family);
[[nodiscard]] bool installed(const QString& family);

// What a program prints, or nothing with a warning when it is not installed.
[[nodiscard]] QString outputOf(const QString& program, const QStringList& arguments);

} // namespace bw::test
