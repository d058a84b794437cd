// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_words.hpp"

#include "blockwright/model/shorthand.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("FindingsPanel", source); }

QString decimal(double value) { // at most two places, no idle zeros
    QString text = QString::number(value, 'f', 2);
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}

bool consecutive(const std::vector<int>& weeks) {
    return weeks.back() - weeks.front() + 1 == static_cast<int>(weeks.size());
}
} // namespace

QString findingWhere(const Block& block, Place place) {
    if (place.isSession()) return tr("session");
    if (place.isSection()) {
        const Section* section = sectionAt(block, place);
        return section ? kindName(section->kind) : QString();
    }
    const QString letter = plain(groupLetter(block, place));
    return place.isSlot() ? letter + QString::number(place.slot + 1) : letter;
}

QString findingWeeks(const std::vector<int>& weeks, int all) {
    if (weeks.empty() || static_cast<int>(weeks.size()) == all) return tr("every week");
    if (weeks.size() == 1) return tr("week %1").arg(weeks.front());
    if (weeks.size() > 2 && consecutive(weeks))
        return tr("weeks %1–%2").arg(weeks.front()).arg(weeks.back());
    QStringList each;
    for (const int week : weeks) each << QString::number(week);
    return tr("weeks %1").arg(each.join(QStringLiteral(", ")));
}

QString figureText(double value, const std::string& unit) {
    if (unit == "s") return plain(clockText(Millis{std::llround(value * 1000)}));
    if (unit == "share") return decimal(value * 100) + QStringLiteral(" %");
    return decimal(value);
}

QString findingFigures(const Finding& f) {
    const LimitValue& limit = f.limit;
    if (!std::isfinite(f.measured) || !std::isfinite(limit.lo) || !std::isfinite(limit.hi))
        return {};
    if (f.measured == 0 && limit.lo == 0 && limit.hi == 0) return {};
    const bool worded = f.unit != "s" && f.unit != "share" && !f.unit.empty();
    const QString unit = worded ? QLatin1Char(' ') + vocabularyWord(f.unit) : QString();
    const QString measured = figureText(f.measured, f.unit);
    if (!limit.band) return tr("%1, limit %2").arg(measured, figureText(limit.hi, f.unit) + unit);
    return tr("%1, band %2–%3")
        .arg(measured, figureText(limit.lo, f.unit), figureText(limit.hi, f.unit) + unit);
}

QString acceptedBefore(const Acceptance& before, const Finding& now) {
    Finding then = now;
    then.level = before.level;
    then.measured = before.measured.value_or(HUGE_VAL);
    then.limit = before.limit;
    const QString figures = findingFigures(then);
    const QString reason = plain(before.reason);
    if (!figures.isEmpty() && figures != findingFigures(now))
        return tr("Accepted when it was %1: “%2”").arg(figures, reason);
    return tr("Accepted as “%1” before: “%2”").arg(levelWord(before.level), reason);
}

} // namespace bw
