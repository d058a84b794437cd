// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_search.hpp"

#include <QRegularExpression>

#include <algorithm>

namespace bw {

namespace {
// Where a word of `text` begins with `word`; -1: nowhere. Both are lower case.
int beginningOf(const QString& word, const QString& text) {
    for (int at = 0; (at = static_cast<int>(text.indexOf(word, at))) >= 0; ++at)
        if (at == 0 || !text[at - 1].isLetterOrNumber()) return at;
    return -1;
}

bool allIn(const QString& text, const QStringList& words) {
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return beginningOf(word, text) >= 0; });
}

bool isFurniture(const QString& line) {
    static const QRegularExpression rule(QStringLiteral("^[|\\s:-]*$"));
    return line.startsWith(QLatin1String("```")) || rule.match(line).hasMatch();
}

QString readable(QString line) {
    static const QRegularExpression link(QStringLiteral(R"(!?\[([^\]]*)\]\([^)]*\))")),
        front(QStringLiteral("^[>\\s-]*")), mark(QStringLiteral("[`*]")),
        cells(QStringLiteral("\\s*\\|\\s*"));
    line.replace(link, QStringLiteral("\\1")).remove(mark).remove(front);
    return line.replace(cells, QStringLiteral("  ")).trimmed();
}

QString lineWith(const QString& text, const QStringList& words) {
    for (const QString& raw : text.split(u'\n')) {
        if (isFurniture(raw)) continue;
        const QString line = readable(raw), low = line.toLower();
        for (const QString& word : words)
            if (beginningOf(word, low) >= 0) return line;
    }
    return {};
}
} // namespace

QStringList handbookWords(const QString& typed) {
    QStringList words =
        typed.toLower().split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts);
    words.removeDuplicates();
    return words;
}

QList<HandbookHit> searchHandbook(const QString& typed) {
    const QStringList words = handbookWords(typed);
    if (words.isEmpty()) return {};
    QList<HandbookHit> inHeading, inText;
    const QList<HandbookPage>& pages = handbookPages();
    for (int p = 0; p < pages.size(); ++p)
        for (int h = 0; h < pages[p].headings.size(); ++h) {
            const HandbookHeading& heading = pages[p].headings[h];
            const QString title = heading.title.toLower();
            if (allIn(title, words))
                inHeading << HandbookHit{{p, h}, lineWith(heading.text, words)};
            else if (allIn(title + u'\n' + readable(heading.text.toLower()), words))
                inText << HandbookHit{{p, h}, lineWith(heading.text, words)};
        }
    return inHeading + inText;
}

} // namespace bw
