// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_line.hpp"

#include "blockwright/rules/house_limits.hpp"
#include "desk/almanac/almanac_filter.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("almanac", source); }

AlmanacLine formatLine(const AlmanacFormat& format) {
    AlmanacLine line;
    line.kind = AlmanacLine::Kind::Format;
    line.name = formatName(format.format);
    line.last = format.last;
    for (const int streak : format.streaks) line.cells.push_back({false, false, streak, 0});
    return line;
}

AlmanacLine newLine(const Almanac& almanac) {
    AlmanacLine line;
    line.kind = AlmanacLine::Kind::Figures;
    line.name = tr("new exercises");
    for (const AlmanacMonth& m : almanac.months)
        line.figures.push_back(m.fresh.empty() ? QString() : QString::number(m.fresh.size()));
    return line;
}

AlmanacLine headingLine(const Almanac& almanac, std::optional<Pattern> pattern) {
    AlmanacLine line;
    line.kind = AlmanacLine::Kind::Heading;
    line.name = pattern ? patternName(*pattern) : tr("no pattern");
    if (!pattern) return line;
    for (const AlmanacMonth& m : almanac.months) {
        const double sets = std::round(m.balance.of(*pattern) * 10) / 10;
        line.figures.push_back(sets > 0 ? QLocale().toString(sets) : QString());
    }
    return line;
}

// As this gym holds it; none when there is no such rule.
LimitValue bandOf(const GymSettings& gym, const std::string& rule) {
    const HouseLimit* limit = houseLimit(rule + ".block");
    if (!limit) return {};
    const auto own = gym.limits.find(limit->key);
    return own == gym.limits.end() ? limit->spec.standard : own->second;
}

AlmanacLine ratioLine(const Almanac& almanac, const GymSettings& gym, const char* rule,
                      const QString& name, Ratio (Balance::*ratio)() const) {
    AlmanacLine line;
    line.kind = AlmanacLine::Kind::Ratio;
    line.name = name;
    line.rule = rule;
    line.band = bandOf(gym, line.rule);
    for (const AlmanacMonth& m : almanac.months)
        line.ratios.push_back((m.balance.*ratio)().value());
    return line;
}

AlmanacLine exerciseLine(const AlmanacRow& row) {
    AlmanacLine line;
    line.name = plain(row.name());
    line.last = row.last;
    line.exercise = row.exercise;
    line.cells = row.cells;
    return line;
}
} // namespace

std::vector<AlmanacLine> turnLines(const Almanac& almanac) {
    std::vector<AlmanacLine> lines;
    for (const AlmanacFormat& format : almanac.formats) lines.push_back(formatLine(format));
    if (!lines.empty()) lines.push_back(newLine(almanac));
    return lines;
}

std::vector<AlmanacLine> ratioLines(const Almanac& almanac, const GymSettings& gym) {
    if (almanac.months.empty()) return {};
    return {ratioLine(almanac, gym, "push-pull", tr("push : pull"), &Balance::pushPull),
            ratioLine(almanac, gym, "knee-hip", tr("knee : hip"), &Balance::kneeHip)};
}

std::vector<AlmanacLine> exerciseLines(const Almanac& almanac, const AlmanacFilter& filter) {
    std::vector<AlmanacLine> lines;
    std::optional<Pattern> under;
    for (const AlmanacRow& row : almanac.rows) {
        if (!filter.fits(row)) continue;
        const auto pattern = row.pattern();
        if (lines.empty() || pattern != under) lines.push_back(headingLine(almanac, pattern));
        under = pattern;
        lines.push_back(exerciseLine(row));
    }
    return lines;
}

int countExercises(const std::vector<AlmanacLine>& lines) {
    return static_cast<int>(std::count_if(lines.begin(), lines.end(), [](const auto& line) {
        return line.kind == AlmanacLine::Kind::Exercise;
    }));
}

} // namespace bw
