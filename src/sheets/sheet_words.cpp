// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_words.hpp"

#include "sheets/worded.hpp"

#include <QCoreApplication>

#include <array>
#include <span>

namespace bw {

namespace {
QString pick(std::span<const char* const> words, std::size_t i) { return sheetSay(words[i]); }
} // namespace

QString sheetSay(const char* english) { return QCoreApplication::translate("bw::sheets", english); }

QString printed(const std::string& text) { return QString::fromStdString(text).simplified(); }

QString printed(const Message& message) { return worded(message).simplified(); }

QString nameOf(const Shelf& shelf, const ExerciseId& id) {
    const Exercise* found = shelf.find(id);
    const QString name = found ? printed(found->name) : QString();
    return name.isEmpty() ? printed(id.text()) : name;
}

QString sheetName(SheetKind kind) {
    static constexpr std::array words{QT_TRANSLATE_NOOP("bw::sheets", "wall sheet"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "member cards"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "coach notes"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "kit list"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "talk outline")};
    return pick(words, static_cast<std::size_t>(kind));
}

QString monthWord(int month) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("bw::sheets", "January"),   QT_TRANSLATE_NOOP("bw::sheets", "February"),
        QT_TRANSLATE_NOOP("bw::sheets", "March"),     QT_TRANSLATE_NOOP("bw::sheets", "April"),
        QT_TRANSLATE_NOOP("bw::sheets", "May"),       QT_TRANSLATE_NOOP("bw::sheets", "June"),
        QT_TRANSLATE_NOOP("bw::sheets", "July"),      QT_TRANSLATE_NOOP("bw::sheets", "August"),
        QT_TRANSLATE_NOOP("bw::sheets", "September"), QT_TRANSLATE_NOOP("bw::sheets", "October"),
        QT_TRANSLATE_NOOP("bw::sheets", "November"),  QT_TRANSLATE_NOOP("bw::sheets", "December")};
    return pick(words, static_cast<std::size_t>(month - 1));
}

QString printedMonth(Month month) {
    return monthWord(month.month()) + QLatin1Char(' ') + QString::number(month.year());
}

QString printedDate(Date date) {
    const std::chrono::year_month_day day(date.days());
    return QCoreApplication::translate("bw::sheets", "%1 %2", "3, September 2026")
        .arg(QString::number(static_cast<unsigned>(day.day())), printedMonth(date.month()));
}

QString blockText(const Block& block) {
    const QString title = printed(block.title), month = printedMonth(block.month);
    return title.isEmpty() ? month : month + QStringLiteral(" · ") + title;
}

QString footText(const Gym& gym, const Block& block, const SheetOptions& options) {
    QStringList parts{blockText(block)};
    if (const QString name = printed(gym.settings.name); !name.isEmpty()) parts.prepend(name);
    if (options.printedOn)
        parts << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "printed %1"))
                     .arg(printedDate(*options.printedOn));
    return parts.join(QStringLiteral(" · "));
}

QString sectionName(SectionKind kind) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("bw::sheets", "Warm-up"), QT_TRANSLATE_NOOP("bw::sheets", "Power"),
        QT_TRANSLATE_NOOP("bw::sheets", "Strength"), QT_TRANSLATE_NOOP("bw::sheets", "Finisher")};
    return pick(words, static_cast<std::size_t>(kind));
}

QString printedFormat(Format format) {
    static constexpr std::array words{QT_TRANSLATE_NOOP("bw::sheets", "Heavy-then-long"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "Opposed"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "Heavy-then-fast"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "Straight-heavy"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "Round-trip")};
    return pick(words, static_cast<std::size_t>(format));
}

QString formatSentence(Format format) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("bw::sheets", "a heavy set, straight into a lighter, longer one"),
        QT_TRANSLATE_NOOP("bw::sheets",
                          "two opposite movements in turn, one rests while the other works"),
        QT_TRANSLATE_NOOP("bw::sheets", "a heavy set, then a fast one of the same movement"),
        QT_TRANSLATE_NOOP("bw::sheets", "one main lift at a time, with full rests"),
        QT_TRANSLATE_NOOP("bw::sheets", "three or four exercises in a circuit, moderate loads")};
    return pick(words, static_cast<std::size_t>(format));
}

QString intentName(Intent intent) {
    static constexpr std::array words{QT_TRANSLATE_NOOP("bw::sheets", "learn"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "build"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "challenge")};
    return pick(words, static_cast<std::size_t>(intent));
}

QString roundsName(RoundsMode mode) {
    static constexpr std::array words{QT_TRANSLATE_NOOP("bw::sheets", "low"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "open"),
                                      QT_TRANSLATE_NOOP("bw::sheets", "high")};
    return pick(words, static_cast<std::size_t>(mode));
}

QString cautionText() {
    return sheetSay(QT_TRANSLATE_NOOP(
        "bw::sheets",
        "Members should be screened before they start. Stop on pain, dizziness or chest "
        "discomfort. Take medical questions to a licensed professional. Local codes and "
        "the gym’s own emergency plan come first."));
}

QString pageText(int page, int pages) {
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "page %1 of %2")).arg(page).arg(pages);
}

} // namespace bw
