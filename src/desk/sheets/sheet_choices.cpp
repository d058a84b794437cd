// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_choices.hpp"

#include "desk/frame/remembered.hpp"
#include "desk/frame/words.hpp"
#include "sheets/sheet_names.hpp"

#include <QDate>
#include <QDir>
#include <QSettings>
#include <QStandardPaths>

namespace bw {

namespace {
QString keyOf(SheetKind kind, const char* name) {
    return QStringLiteral("sheets/%1/%2").arg(plain(sheetWord(kind)), QLatin1String(name));
}
constexpr const char* kFolder = "sheets/folder";
} // namespace

SheetOptions rememberedOptions(SheetKind kind, const GymSettings& gym) {
    const QSettings kept(rememberedFile(), QSettings::IniFormat);
    SheetOptions options = usualOptions(gym, kind);
    const QString paper = kept.value(keyOf(kind, "paper")).toString();
    options.paper = fromWord<Paper>(paper.toStdString()).value_or(options.paper);
    const bool wide = options.orientation == Orientation::Landscape;
    options.orientation = kept.value(keyOf(kind, "landscape"), wide).toBool()
                              ? Orientation::Landscape
                              : Orientation::Portrait;
    const QString unit = kept.value(keyOf(kind, "unit")).toString();
    options.massUnit = fromWord<MassUnit>(unit.toStdString()).value_or(options.massUnit);
    options.cardsPerPage = kept.value(keyOf(kind, "per-page"), 2).toInt() == 4 ? 4 : 2;
    options.blackAndWhite = kept.value(keyOf(kind, "black-and-white"), false).toBool();
    options.largePrint = kept.value(keyOf(kind, "large-print"), false).toBool();
    const QDate today = QDate::currentDate();
    options.printedOn = Date::of(today.year(), today.month(), today.day()).value();
    return options;
}

void rememberOptions(SheetKind kind, const SheetOptions& options) {
    QSettings kept(rememberedFile(), QSettings::IniFormat);
    kept.setValue(keyOf(kind, "paper"), plain(wordOf(options.paper)));
    kept.setValue(keyOf(kind, "landscape"), options.orientation == Orientation::Landscape);
    kept.setValue(keyOf(kind, "unit"), plain(wordOf(options.massUnit)));
    kept.setValue(keyOf(kind, "per-page"), options.cardsPerPage);
    kept.setValue(keyOf(kind, "black-and-white"), options.blackAndWhite);
    kept.setValue(keyOf(kind, "large-print"), options.largePrint);
}

QString rememberedFolder() {
    const QSettings kept(rememberedFile(), QSettings::IniFormat);
    const QString folder = kept.value(QLatin1String(kFolder)).toString();
    if (!folder.isEmpty() && QDir(folder).exists()) return folder;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void rememberFolder(const QString& folder) {
    QSettings(rememberedFile(), QSettings::IniFormat).setValue(QLatin1String(kFolder), folder);
}

} // namespace bw
