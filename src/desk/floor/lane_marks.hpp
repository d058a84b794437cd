// SPDX-License-Identifier: GPL-3.0-or-later
// The marks that stand in the lanes, and in their legend.
#pragma once
#include "desk/frame/theme.hpp"

#include <QPixmap>
#include <QRectF>

class QPainter;

namespace bw {

[[nodiscard]] QColor faint(QColor color, double alpha);
[[nodiscard]] QColor restInk(QColor section); // lighter than its sets

// Diagonal strokes to fill with; as fine on a fine screen (scale: pixels a unit).
[[nodiscard]] QPixmap waitHatch(const QColor& ink, double scale);
void paintWait(QPainter& painter, const QRectF& box, const QPixmap& hatch, const Inks& inks);
void paintThrough(QPainter& painter, const QRectF& box, const Inks& inks);
void paintWall(QPainter& painter, double x, double top, double bottom, const Inks& inks);

// One mark by itself, for the legend.
enum class LaneMark { Sets, Wait, Rest, Through, Wall };
void paintLaneMark(QPainter& painter, LaneMark mark, const QRectF& box, const Inks& inks);

} // namespace bw
