// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <array>
#include <optional>

namespace bw {

namespace {
std::optional<QString> translated(const char* context, const std::string& source) {
    const QString text = QCoreApplication::translate(context, source.c_str());
    return text == QString::fromStdString(source) ? std::nullopt : std::optional(text);
}

// What the engine says of a set inside another sentence (ledger/mass_text.cpp).
std::optional<QString> aSet(const std::string& arg) {
    struct Form {
        const char* source;
        QRegularExpression shape;
    };
    static const std::array forms{
        Form{"%1 × %2 with %3 in reserve",
             QRegularExpression(QStringLiteral("^(\\d+) × (.+) with (\\S+) in reserve$"))},
        Form{"%1 repetitions with %2 in reserve",
             QRegularExpression(QStringLiteral("^(\\d+) repetitions with (\\S+) in reserve$"))},
        Form{"%1 repetitions", QRegularExpression(QStringLiteral("^(\\d+) repetitions$"))}};
    for (const Form& form : forms) {
        const auto found = form.shape.match(QString::fromStdString(arg));
        if (!found.hasMatch()) continue;
        QString text = QCoreApplication::translate("engine", form.source);
        for (int i = 1; i <= found.lastCapturedIndex(); ++i) text = text.arg(found.captured(i));
        return text;
    }
    return std::nullopt;
}

// A name that the coach gave is no sentence of ours, and is looked for among the words alone.
std::string filler(const std::string& arg) {
    if (const auto set = aSet(arg)) return set->toStdString();
    if (arg.find(' ') != std::string::npos)
        if (const auto phrase = translated("engine", arg)) return phrase->toStdString();
    return vocabularyWords(arg).toStdString();
}
} // namespace

QString worded(const Message& message) {
    std::vector<std::string> args;
    for (const std::string& arg : message.args) args.push_back(filler(arg));
    const QString source = QCoreApplication::translate("engine", message.source.c_str());
    return QString::fromStdString(Message::fill(source.toStdString(), args));
}

QString vocabularyWord(std::string_view word) {
    std::string spaced(word);
    std::replace(spaced.begin(), spaced.end(), '-', ' ');
    const auto known = translated("words", spaced);
    return known ? *known : QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

QString vocabularyWords(std::string_view words) {
    const QString all = QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
    QStringList out;
    for (const QString& word : all.split(QStringLiteral(", ")))
        out << vocabularyWord(word.toStdString());
    return out.join(QStringLiteral(", "));
}

} // namespace bw
