// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/launch.hpp"

#include "desk/frame/remembered.hpp"

#include <QCommandLineParser>
#include <QCoreApplication>

namespace bw {

namespace {
const QCommandLineOption& option(const char* name) {
    const auto tr = [](const char* words) { return QCoreApplication::translate("launch", words); };
    static const QCommandLineOption demo(QStringLiteral("demo"),
                                         tr("Open a copy of the demonstration gym."));
    static const QCommandLineOption theme(QStringLiteral("theme"),
                                          tr("Colours: system, light, dark or contrast."),
                                          QStringLiteral("theme"));
    static const QCommandLineOption language(
        QStringLiteral("language"), tr("Language: system, en or de."), QStringLiteral("language"));
    static const QCommandLineOption month(QStringLiteral("month"), tr("The month to show."),
                                          QStringLiteral("YYYY-MM"));
    static const QCommandLineOption bench(
        QStringLiteral("bench-start"), tr("Print the milliseconds to the first paint, and quit."));
    for (const QCommandLineOption* o : {&demo, &theme, &language, &month, &bench})
        if (o->names().contains(QLatin1String(name))) return *o;
    return demo;
}

std::optional<Theme> themeFrom(const QString& word) {
    if (word == QLatin1String("system")) return Theme::System;
    if (word == QLatin1String("light")) return Theme::Light;
    if (word == QLatin1String("dark")) return Theme::Dark;
    if (word == QLatin1String("contrast")) return Theme::Contrast;
    return std::nullopt;
}

Result<Launch> fromParser(const QCommandLineParser& parser) {
    Launch launch;
    launch.demo = parser.isSet(option("demo"));
    launch.benchStart = parser.isSet(option("bench-start"));
    if (parser.isSet(option("theme"))) {
        const QString word = parser.value(option("theme"));
        launch.theme = themeFrom(word);
        if (!launch.theme)
            return Message{"--theme %1: it is system, light, dark or contrast.",
                           {word.toStdString()}};
    }
    if (parser.isSet(option("language"))) {
        const QString word = parser.value(option("language"));
        launch.language = languageFrom(word);
        if (!launch.language)
            return Message{"--language %1: it is system, en or de.", {word.toStdString()}};
    }
    if (parser.isSet(option("month"))) {
        const auto month = Month::parse(parser.value(option("month")).toStdString());
        if (!month) return month.why();
        launch.month = month.value();
    }
    const QStringList files = parser.positionalArguments();
    if (files.size() > 1) return Message{"Name one gym file; a window shows one gym.", {}};
    if (!files.isEmpty()) launch.file = pathOf(files.first());
    return launch;
}
} // namespace

Result<Launch> readLaunch(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.setApplicationDescription(QCoreApplication::translate(
        "launch", "Draft a month's class, check it by computing, print its sheets."));
    const auto help = parser.addHelpOption();
    const auto version = parser.addVersionOption();
    for (const char* name : {"demo", "theme", "language", "month", "bench-start"})
        parser.addOption(option(name));
    parser.addPositionalArgument(QStringLiteral("FILE.bwgym"),
                                 QCoreApplication::translate("launch", "The gym file to open."),
                                 QStringLiteral("[FILE.bwgym]"));
    if (!parser.parse(arguments)) return Message{"%1", {parser.errorText().toStdString()}};
    Launch launch;
    if (parser.isSet(help)) launch.answer = parser.helpText();
    if (parser.isSet(version))
        launch.answer = QCoreApplication::applicationName() + QLatin1Char(' ') +
                        QCoreApplication::applicationVersion() + QLatin1Char('\n');
    if (!launch.answer.isEmpty()) return launch;
    return fromParser(parser);
}

} // namespace bw
