// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/entry_words.hpp"

#include "desk/frame/words.hpp"
#include "sheets/worded.hpp"

#include <QRegularExpression>

namespace bw {

namespace {
// Kit has the names of the gym, and the rest is the coach's own text.
bool isFree(ExerciseField field) {
    return field == ExerciseField::Name || field == ExerciseField::NoEasier ||
           field == ExerciseField::NoHarder || field == ExerciseField::Pace;
}

// "hip flexors 60 %": each part's word through `turn`, its figure as it is.
template <class Turn> QString byWords(const QString& text, Turn turn) {
    static const QRegularExpression part(QStringLiteral("^([^\\d]+?)( \\d.*)?$"));
    QStringList out;
    for (const QString& each : text.split(QStringLiteral(", "))) {
        const auto found = part.match(each);
        out << (found.hasMatch() ? turn(found.captured(1)) + found.captured(2) : each);
    }
    return out.join(QStringLiteral(", "));
}

QString shownWord(const QString& word) { return vocabularyWord(word.toStdString()); }
} // namespace

QString shownField(ExerciseField field, const std::string& text) {
    if (isFree(field)) return plain(text);
    const QString whole = say({text, {}});
    return whole != plain(text) ? whole : byWords(whole, shownWord);
}

QStringList shownWords(const Gym& gym, ExerciseField field) {
    QStringList words;
    for (const std::string& word : fieldWords(gym, field)) words << vocabularyWord(word);
    return words;
}

std::string typedField(const Gym& gym, ExerciseField field, const QString& typed) {
    if (isFree(field)) return typed.toStdString();
    std::vector<std::string> known = fieldWords(gym, field);
    known.emplace_back("none");
    const auto back = [&](const QString& word) {
        for (const std::string& own : known) {
            const QString shown = vocabularyWord(own);
            // What is in brackets behind a word explains it.
            if (word.compare(shown, Qt::CaseInsensitive) == 0 ||
                word.startsWith(shown + QLatin1String(" ("), Qt::CaseInsensitive))
                return shown == plain(own) ? word : plain(own);
        }
        return word;
    };
    QString text = byWords(typed, back);
    static const QRegularExpression skill(QStringLiteral("^([123]) \\(.*\\)$"));
    if (field == ExerciseField::Skill) text.replace(skill, QStringLiteral("\\1"));
    return text.toStdString();
}

} // namespace bw
