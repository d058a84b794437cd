// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backup_words.hpp"

#include "desk/backups/backup_model.hpp"
#include "desk/frame/words.hpp"

#include <QDateTime>
#include <QLocale>

namespace bw {

namespace {
void count(QStringList& lines, const QString& what, std::size_t n) {
    if (n > 0)
        lines << BackupModel::tr("%1: %2").arg(what,
                                               QLocale().toString(static_cast<qulonglong>(n)));
}
void count(DifferenceWords& words, const QString& what, const Differing& d) {
    count(words.gone, what, d.gone);
    count(words.changed, what, d.changed);
    count(words.back, what, d.back);
}

// A few by name, many by number.
void nameMonths(QStringList& lines, const std::vector<Month>& months) {
    constexpr std::size_t kMostNamed = 4;
    if (months.size() > kMostNamed) return count(lines, BackupModel::tr("Months"), months.size());
    QStringList names;
    for (const Month m : months) names << monthName(m);
    if (!names.isEmpty()) lines << names.join(BackupModel::tr(", "));
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
    case BackupReason::Daily: return BackupModel::tr("the first of the day");
    case BackupReason::Update: return BackupModel::tr("before a newer format");
    case BackupReason::Import: return BackupModel::tr("before much was brought in");
    case BackupReason::Restore: return BackupModel::tr("before a restore");
    case BackupReason::Asked: return BackupModel::tr("you asked for it");
    case BackupReason::Damaged: return BackupModel::tr("damaged, set aside");
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
    count(words, BackupModel::tr("Results"), would.results);
    count(words, BackupModel::tr("Members"), would.members);
    count(words, BackupModel::tr("Exercises"), would.exercises);
    count(words, BackupModel::tr("Kit"), would.kit);
    if (would.settings) words.changed << BackupModel::tr("Settings and house limits");
    return words;
}

QString differenceSentence(const BackupDifference& would) {
    const DifferenceWords words = differenceWords(would);
    QStringList parts;
    const auto add = [&](const QString& head, const QStringList& lines) {
        if (!lines.isEmpty()) parts << head.arg(lines.join(BackupModel::tr("; ")));
    };
    add(BackupModel::tr("Would go – %1."), words.gone);
    add(BackupModel::tr("Would change – %1."), words.changed);
    add(BackupModel::tr("Would come back – %1."), words.back);
    return parts.join(QLatin1Char(' '));
}

} // namespace bw
