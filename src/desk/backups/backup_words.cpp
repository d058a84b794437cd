// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backup_words.hpp"

#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("backups", text); }

void count(QStringList& lines, const QString& what, std::size_t n) {
    if (n > 0) lines << tr("%1: %2").arg(what, QLocale().toString(static_cast<qulonglong>(n)));
}
void count(DifferenceWords& words, const QString& what, const Differing& d) {
    count(words.gone, what, d.gone);
    count(words.changed, what, d.changed);
    count(words.back, what, d.back);
}

// A few by name, many by number.
void nameMonths(QStringList& lines, const std::vector<Month>& months) {
    constexpr std::size_t kMostNamed = 4;
    if (months.size() > kMostNamed) return count(lines, tr("Months"), months.size());
    QStringList names;
    for (const Month m : months) names << monthName(m);
    if (!names.isEmpty()) lines << tr("%1: %2").arg(tr("Months"), names.join(tr(", ")));
}
} // namespace

// The clock on the wall, so no time zone must touch it.
QString backupTime(WallTime at) {
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const auto minutes = std::chrono::floor<std::chrono::minutes>(at - day).count();
    const std::chrono::year_month_day d(day);
    const QDate date(static_cast<int>(d.year()), static_cast<int>(static_cast<unsigned>(d.month())),
                     static_cast<int>(static_cast<unsigned>(d.day())));
    const QTime clock(static_cast<int>(minutes / 60), static_cast<int>(minutes % 60));
    return QLocale().toString(date, QStringLiteral("ddd d MMM yyyy")) + QStringLiteral(", ") +
           clock.toString(QStringLiteral("HH:mm"));
}

QString backupReason(BackupReason reason) {
    switch (reason) {
    case BackupReason::Daily: return tr("the first of the day");
    case BackupReason::Update: return tr("before a newer format");
    case BackupReason::Import: return tr("before much was brought in");
    case BackupReason::Restore: return tr("before a restore");
    case BackupReason::Asked: return tr("you asked for it");
    case BackupReason::Damaged: return tr("damaged, set aside");
    }
    return {};
}

QString backupSize(std::uintmax_t bytes) {
    return QLocale().formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeSIFormat);
}

DifferenceWords differenceWords(const BackupDifference& would) {
    DifferenceWords words;
    nameMonths(words.gone, would.monthsGone);
    nameMonths(words.changed, would.monthsChanged);
    nameMonths(words.back, would.monthsBack);
    count(words, tr("Results"), would.results);
    count(words, tr("Members"), would.members);
    count(words, tr("Exercises"), would.exercises);
    count(words, tr("Kit"), would.kit);
    if (would.settings) words.changed << tr("Settings and house limits");
    return words;
}

QString differenceSentence(const BackupDifference& would) {
    const DifferenceWords words = differenceWords(would);
    QStringList parts;
    const auto add = [&](const QString& head, const QStringList& lines) {
        if (!lines.isEmpty()) parts << head.arg(lines.join(tr("; ")));
    };
    add(tr("Would go: %1."), words.gone);
    add(tr("Would change: %1."), words.changed);
    add(tr("Would come back: %1."), words.back);
    return parts.join(QLatin1Char(' '));
}

} // namespace bw
