// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <optional>

namespace bw {

namespace {
std::optional<QString> translated(const char* context, const std::string& source) {
    const QString text = QCoreApplication::translate(context, source.c_str());
    return text == QString::fromStdString(source) ? std::nullopt : std::optional(text);
}

// A name that the coach gave is no sentence of ours, and is looked for among the words alone.
std::string filler(const std::string& arg) {
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
