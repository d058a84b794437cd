// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/words.hpp"

#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QLocale>

namespace bw {

QString plain(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString say(const Message& message) { return worded(message); }

QString unitSaid(std::string_view figure) {
    const auto blank = figure.rfind(' ');
    if (blank == std::string_view::npos) return plain(figure);
    return plain(figure.substr(0, blank + 1)) + vocabularyWord(figure.substr(blank + 1));
}

QString monthName(Month month) {
    return QLocale().standaloneMonthName(month.month()) + QLatin1Char(' ') +
           QString::number(month.year());
}

QString kindName(SectionKind kind) {
    switch (kind) {
    case SectionKind::WarmUp: return QCoreApplication::translate("engine", "Warm-up");
    case SectionKind::Power: return QCoreApplication::translate("engine", "Power");
    case SectionKind::Strength: return QCoreApplication::translate("engine", "Strength");
    case SectionKind::Finisher: return QCoreApplication::translate("engine", "Finisher");
    }
    return {};
}

QString formatName(Format format) { return vocabularyWord(wordOf(format)); }
QString patternName(Pattern pattern) {
    return vocabularyWord(wordOf(pattern)).replace(QLatin1Char('-'), QLatin1Char(' '));
}
QString weekIntent(Intent intent) { return vocabularyWord(wordOf(intent)); }

} // namespace bw
