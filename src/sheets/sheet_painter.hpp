// SPDX-License-Identifier: GPL-3.0-or-later
// The one painter of every sheet.
#pragma once
#include "sheets/page.hpp"

#include <QColor>
#include <QImage>

#include <functional>

class QPainter;

namespace bw {

// Sets the painter so that one unit is one millimetre on its device, from the corner of the paper
// (a printer must be set to the full page).
void useMillimetres(QPainter& painter);
// Paints page n, from 0, with one painter unit for a millimetre, in the text and lines of the
// layout only: the paper stays as it is.
void paintPage(QPainter& painter, const Layout& layout, int page);
using InkColours = std::function<QColor(Ink)>;
void paintPage(QPainter& painter, const Layout& layout, int page, const InkColours& colours);
// The page on white paper.
[[nodiscard]] QImage pageImage(const Layout& layout, int page, double dotsPerInch);

} // namespace bw
