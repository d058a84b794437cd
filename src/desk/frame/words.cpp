// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QLocale>

namespace bw {

namespace {
QString translated(std::string_view source) {
    return QCoreApplication::translate("engine", std::string(source).c_str());
}
QString spaced(std::string_view word) {
    std::string text(word);
    for (char& c : text)
        if (c == '-') c = ' ';
    return translated(text);
}
} // namespace

QString plain(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString say(const Message& message) {
    return plain(Message::fill(translated(message.source).toStdString(), message.args));
}

QString monthName(Month month) {
    return QLocale().standaloneMonthName(month.month()) + QLatin1Char(' ') +
           QString::number(month.year());
}

QString kindName(SectionKind kind) {
    switch (kind) {
    case SectionKind::WarmUp: return translated("Warm-up");
    case SectionKind::Power: return translated("Power");
    case SectionKind::Strength: return translated("Strength");
    case SectionKind::Finisher: return translated("Finisher");
    }
    return {};
}

QString formatName(Format format) { return translated(wordOf(format)); }
QString patternName(Pattern pattern) { return spaced(wordOf(pattern)); }
QString weekIntent(Intent intent) { return translated(wordOf(intent)); }

} // namespace bw
