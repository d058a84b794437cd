// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/language.hpp"

#include "desk/frame/resources.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <array>
#include <cstring>
#include <utility>

namespace bw {

namespace {
constexpr std::array<const char*, 3> kWords{"system", "en", "de"};

// The sources name many places; a translation has two lists (tools/texts.py).
class Tongue : public QTranslator {
public:
    using QTranslator::QTranslator;
    QString translate(const char* context, const char* source, const char* remark,
                      int n) const override {
        QString text;
        if (std::strcmp(context, "words") != 0)
            text = QTranslator::translate("texts", source, remark, n);
        return text.isNull() ? QTranslator::translate("words", source, nullptr, n) : text;
    }
};

// A language that there is, else English.
Language spoken(Language wanted) {
    if (wanted != Language::System) return wanted;
    const QStringList asked = QLocale::system().uiLanguages();
    return !asked.isEmpty() && asked.first().startsWith(QLatin1String("de")) ? Language::German
                                                                             : Language::English;
}

// The country's own way of writing numbers and dates stays where it goes with the language.
QLocale localeOf(Language wanted) {
    const QLocale system = QLocale::system();
    if (spoken(wanted) == Language::German)
        return system.language() == QLocale::German ? system
                                                    : QLocale(QLocale::German, QLocale::Germany);
    const bool fits = system.language() == QLocale::English || system.language() == QLocale::C;
    return wanted == Language::System || fits ? system
                                              : QLocale(QLocale::English, QLocale::UnitedKingdom);
}

void install(QTranslator* translator, const QString& file, QList<QTranslator*>& installed) {
    if (!translator->load(file)) return delete translator;
    QCoreApplication::installTranslator(translator);
    installed << translator;
}
} // namespace

QString languageWord(Language language) {
    return QLatin1String(kWords[static_cast<std::size_t>(language)]);
}

std::optional<Language> languageFrom(const QString& word) {
    for (std::size_t i = 0; i < kWords.size(); ++i)
        if (word == QLatin1String(kWords[i])) return static_cast<Language>(i);
    return std::nullopt;
}

void speak(Language language) {
    QLocale::setDefault(localeOf(language));
    static QList<QTranslator*> installed;
    qDeleteAll(std::exchange(installed, {}));
    const QString word = languageWord(spoken(language));
    install(new Tongue(qApp), translationFile(word), installed);
    // Of the buttons and dialogs that are Qt's; without it they are in English.
    install(new QTranslator(qApp),
            QLibraryInfo::path(QLibraryInfo::TranslationsPath) + QLatin1String("/qtbase_") + word,
            installed);
}

} // namespace bw
