// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_words.hpp"

#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QLocale>

#include <array>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("almanac", source); }

QString inARow(int streak) {
    static constexpr std::array sentences{
        "first month in a row",   "second month in a row", "third month in a row",
        "fourth month in a row",  "fifth month in a row",  "sixth month in a row",
        "seventh month in a row", "eighth month in a row", "ninth month in a row"};
    const auto at = static_cast<std::size_t>(streak - 1);
    if (at < sentences.size()) return tr(sentences[at]);
    return tr("month %1 in a row").arg(streak);
}

QString useOf(const AlmanacCell& cell, bool format) {
    if (!cell.used()) return tr("not used");
    QStringList parts;
    if (cell.main) {
        parts << tr("main lift");
        if (cell.mainStreak > 1) parts << inARow(cell.mainStreak);
        if (cell.mainStreak < cell.streak) parts << tr("used for the %1").arg(inARow(cell.streak));
    } else {
        parts << (format ? tr("this month's format") : tr("used"));
        if (cell.streak > 1) parts << inARow(cell.streak);
    }
    if (cell.fresh) parts << tr("new to this gym");
    return parts.join(QStringLiteral(", "));
}

QString ratioWords(const AlmanacLine& line, std::size_t column) {
    const auto ratio = line.ratios[column];
    if (!ratio) return tr("nothing to compare");
    QString text = ratioText(*ratio);
    if (line.band.band) {
        const bool inside = *ratio >= line.band.lo && *ratio <= line.band.hi;
        text += QStringLiteral(", ") +
                (inside ? tr("within %1") : tr("outside %1")).arg(bandText(line.band));
    }
    return text;
}

QString about(const AlmanacLine& line, std::size_t column) {
    switch (line.kind) {
    case AlmanacLine::Kind::Heading:
        if (column >= line.figures.size()) return {};
        return tr("%1 sets a session")
            .arg(line.figures[column].isEmpty() ? tr("no") : line.figures[column]);
    case AlmanacLine::Kind::Figures:
        return line.figures[column].isEmpty() ? tr("none") : line.figures[column];
    case AlmanacLine::Kind::Ratio: return ratioWords(line, column);
    case AlmanacLine::Kind::Format: return useOf(line.cells[column], true);
    case AlmanacLine::Kind::Exercise: return useOf(line.cells[column], false);
    }
    return {};
}
} // namespace

QString shortMonth(Month month) {
    return QLocale().standaloneMonthName(month.month(), QLocale::ShortFormat);
}
QString shortMonthAndYear(Month month) {
    return shortMonth(month) + QLatin1Char(' ') + QString::number(month.year());
}
QString ratioText(double ratio) { return QLocale().toString(ratio, 'f', 2); }
QString bandText(const LimitValue& band) {
    return tr("%1 to %2").arg(QLocale().toString(band.lo), QLocale().toString(band.hi));
}

QString cellSentence(const AlmanacLine& line, std::size_t column, Month month, bool drafted) {
    const QString what = drafted ? about(line, column) : tr("no block in this month");
    if (what.isEmpty()) return {};
    return tr("%1, %2: %3.").arg(line.name, monthName(month), what);
}

QString lineSentence(const AlmanacLine& line) {
    switch (line.kind) {
    case AlmanacLine::Kind::Format:
    case AlmanacLine::Kind::Exercise:
        return line.last ? tr("%1, last used %2").arg(line.name, monthName(*line.last))
                         : tr("%1, never used").arg(line.name);
    case AlmanacLine::Kind::Ratio:
        return line.band.band ? tr("%1, band %2").arg(line.name, bandText(line.band)) : line.name;
    default: return line.name;
    }
}

} // namespace bw
