// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_filter.hpp"

#include "desk/frame/typed_month.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("almanac", source); }

// Lower case, hyphens as blanks.
QString even(QString text) { return text.toLower().replace(QLatin1Char('-'), QLatin1Char(' ')); }

bool anyCell(const AlmanacRow& row, bool AlmanacCell::*what) {
    return std::any_of(row.cells.begin(), row.cells.end(),
                       [what](const AlmanacCell& cell) { return cell.*what; });
}
} // namespace

AlmanacFilter AlmanacFilter::parse(const QString& text, Month latest) {
    const QRegularExpression since(
        QStringLiteral("\\b(?:%1\\s+)?(?:%2\\s+)?%3\\b").arg(tr("not"), tr("used"), tr("since")));
    QStringList left =
        text.toLower().replace(since, tr("since")).simplified().split(u' ', Qt::SkipEmptyParts);
    AlmanacFilter filter;
    while (!left.isEmpty()) {
        const QString word = left.takeFirst();
        if (word == tr("since")) {
            filter.notSince = takeMonth(left, latest);
            if (!filter.notSince)
                filter.trouble = tr("After “since” comes a month, such as %1 or July.")
                                     .arg(plain(latest.plus(-3).text()));
        } else if (word == tr("main")) {
            filter.main = true;
        } else if (word == tr("new")) {
            filter.fresh = true;
        } else {
            filter.words << even(word);
        }
    }
    return filter;
}

bool AlmanacFilter::fits(const AlmanacRow& row) const {
    if (notSince ? !(row.last < *notSince) : !row.usedInView()) return false;
    if (main && !anyCell(row, &AlmanacCell::main)) return false;
    if (fresh && !anyCell(row, &AlmanacCell::fresh)) return false;
    const auto pattern = row.pattern();
    const QString all = even(plain(row.name())) + QLatin1Char('\n') +
                        (pattern ? even(patternName(*pattern)) : QString());
    return std::all_of(words.begin(), words.end(),
                       [&all](const QString& word) { return all.contains(word); });
}

} // namespace bw
