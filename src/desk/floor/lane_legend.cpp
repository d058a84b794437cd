// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_legend.hpp"

#include "desk/floor/lane_marks.hpp"
#include "desk/frame/paper.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace bw {

namespace {
constexpr double kSwatch = 18, kGap = 5, kBetween = 16;

QList<std::pair<LaneMark, QString>> marks() {
    return {{LaneMark::Sets, LaneLegend::tr("sets, the first of a round highest")},
            {LaneMark::Wait, LaneLegend::tr("waits for kit")},
            {LaneMark::Rest, LaneLegend::tr("rests")},
            {LaneMark::Through, LaneLegend::tr("is through")},
            {LaneMark::Wall, LaneLegend::tr("the class ends")}};
}
} // namespace

LaneLegend::LaneLegend(QWidget* parent) : QWidget(parent) {
    QStringList words;
    for (const auto& [mark, text] : marks()) words << text;
    setAccessibleName(tr("Marks in the lanes: %1").arg(words.join(QStringLiteral(", "))));
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
}

QSize LaneLegend::sizeHint() const {
    const QFontMetricsF wide(smallFont(font()));
    double width = 0;
    for (const auto& [mark, text] : marks())
        width += kSwatch + kGap + wide.horizontalAdvance(text) + kBetween;
    return {static_cast<int>(std::ceil(width)), static_cast<int>(std::ceil(wide.height() + 4))};
}

void LaneLegend::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setFont(smallFont(font()));
    double x = 0;
    for (const auto& [mark, text] : marks()) {
        paintLaneMark(p, mark, {x, 3, kSwatch, height() - 6.0}, inks());
        p.setPen(inks().quiet);
        const double wide = QFontMetricsF(p.font()).horizontalAdvance(text) + 2;
        p.drawText(QRectF(x + kSwatch + kGap, 0, wide, height()), Qt::AlignVCenter, text);
        x += kSwatch + kGap + wide + kBetween;
    }
}

} // namespace bw
