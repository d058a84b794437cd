// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_line.hpp"

#include "blockwright/model/exercise_text.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"
#include "sheets/worded.hpp"

#include <QLocale>

namespace bw {

namespace {
QString kitCell(const Gym& gym, const KitNeeds& needs) {
    if (needs.empty()) return {};
    QStringList words;
    for (const KitNeed& need : needs.front()) words << plain(kitWord(gym, need.kit));
    return words.join(QStringLiteral(" + ")) +
           (needs.size() > 1 ? QStringLiteral(" …") : QString());
}

QString rolesCell(const Exercise& e) {
    QStringList words;
    for (const RoleId& role : e.roles) {
        QString word = vocabularyWord(role.text());
        const QString kind = plain(wordOf(SectionKind::Strength)) + QLatin1Char('-');
        if (word.startsWith(kind)) word.remove(0, kind.size()); // heavy, long
        words << word;
    }
    return words.join(QStringLiteral(", "));
}

QString demandsCell(const Exercise& e) {
    QStringList words;
    for (int level = 3; level > 0; --level)
        for (std::size_t i = 0; i < kCount<Demand>; ++i)
            if (const auto d = static_cast<Demand>(i); e.demands[d] == level)
                words << demandName(d) + QLatin1Char(' ') + QString::number(level);
    return words.join(QStringLiteral(", "));
}

// A squat rack does not make a squat: words that name a pattern are left out.
QString kitWords(const QString& kit) {
    QString words;
    for (const QString& word : findable(kit).split(u' ', Qt::SkipEmptyParts))
        if (!fromWord<bw::Pattern>(word.toStdString())) words += QLatin1Char(' ') + word;
    return words;
}

// All a word can find it by, but for demands, which are asked for by themselves.
QString wordsOf(const Gym& gym, const Exercise& e) {
    QString words = findable(plain(e.name));
    for (std::size_t p = 0; p < kCount<bw::Pattern>; ++p)
        if (const auto pattern = static_cast<bw::Pattern>(p); e.patterns.has(pattern))
            words += findable(plain(wordOf(pattern))) + findable(patternName(pattern));
    for (const RoleId& role : e.roles) words += findable(plain(role.text()));
    for (const auto& [muscle, share] : e.muscles)
        words += findable(plain(muscle.text())) + findable(vocabularyWord(muscle.text()));
    for (const auto& alternative : e.needs)
        for (const KitNeed& need : alternative) words += kitWords(plain(kitWord(gym, need.kit)));
    return words + findable(plain(e.load.text())) + findable(vocabularyWord(e.load.text()));
}
} // namespace

QString findable(const QString& text) {
    QString words = QLatin1Char(' ') + text.toLower();
    for (QChar& c : words)
        if (c == QLatin1Char('-') || c == QLatin1Char(',')) c = QLatin1Char(' ');
    return words;
}

void ShelfLine::setUse(std::optional<Month> lastUsed, int monthsUsed) {
    last = lastUsed;
    months = monthsUsed;
    cells[Last] = last ? QLocale().standaloneMonthName(last->month(), QLocale::ShortFormat) +
                             QLatin1Char(' ') + QString::number(last->year())
                       : QString();
    cells[Months] = months > 0 ? QString::number(months) : QString();
}

ShelfLine shelfLine(const Gym& gym, Shelf::Entry entry) {
    const Exercise& e = *entry;
    ShelfLine line{entry, {}, wordsOf(gym, e), {}, 0};
    line.cells[ShelfLine::Name] = plain(e.name);
    if (!e.patterns.none()) line.cells[ShelfLine::Pattern] = patternName(e.patterns.largest());
    line.cells[ShelfLine::Roles] = rolesCell(e);
    line.cells[ShelfLine::Kit] = kitCell(gym, e.needs);
    line.cells[ShelfLine::Demands] = demandsCell(e);
    line.cells[ShelfLine::Load] = vocabularyWord(e.load.text());
    return line;
}

} // namespace bw
