// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/remembered.hpp"

#include "store/gym_file.hpp"

#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace bw {

QString rememberedFile() {
    const QString home = qEnvironmentVariable("BLOCKWRIGHT_HOME");
    if (!home.isEmpty()) return home + QLatin1String("/blockwright.ini");
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           QLatin1String("/blockwright/blockwright.ini");
}

namespace {
QVariant value(const char* key) {
    return QSettings(rememberedFile(), QSettings::IniFormat).value(QLatin1String(key));
}
void setValue(const char* key, const QVariant& value) {
    QSettings(rememberedFile(), QSettings::IniFormat).setValue(QLatin1String(key), value);
}

constexpr const char *kRecent = "files/recent", *kTheme = "look/theme",
                     *kGeometry = "look/geometry", *kLanguage = "look/language";
constexpr std::array<const char*, 4> kThemes{"system", "light", "dark", "contrast"};
} // namespace

std::filesystem::path dataFolder() { return defaultGymPath().parent_path(); }
std::filesystem::path demoPath() { return dataFolder() / "demo.bwgym"; }

QString pathText(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}
std::filesystem::path pathOf(const QString& text) { return text.toStdString(); }

bool sameFile(const std::filesystem::path& a, const std::filesystem::path& b) {
    std::error_code ignored;
    return std::filesystem::equivalent(a, b, ignored);
}

QStringList Remembered::recent() {
    QStringList there;
    for (const QString& file : value(kRecent).toStringList())
        if (QFileInfo::exists(file)) there << file;
    return there;
}

void Remembered::opened(const std::filesystem::path& gymFile) {
    const QString file = QFileInfo(pathText(gymFile)).absoluteFilePath();
    QStringList files = value(kRecent).toStringList();
    files.removeAll(file);
    files.prepend(file);
    setValue(kRecent, files.mid(0, kMostRecent));
}

std::optional<std::filesystem::path> Remembered::last() {
    const QStringList files = value(kRecent).toStringList();
    if (files.isEmpty() || !QFileInfo::exists(files.first())) return std::nullopt;
    return pathOf(files.first());
}

Theme Remembered::theme() {
    const QString word = value(kTheme).toString();
    for (std::size_t i = 0; i < kThemes.size(); ++i)
        if (word == QLatin1String(kThemes[i])) return static_cast<Theme>(i);
    return Theme::System;
}
void Remembered::setTheme(Theme theme) {
    setValue(kTheme, QLatin1String(kThemes[static_cast<std::size_t>(theme)]));
}

Language Remembered::language() {
    return languageFrom(value(kLanguage).toString()).value_or(Language::System);
}
void Remembered::setLanguage(Language language) { setValue(kLanguage, languageWord(language)); }

QByteArray Remembered::geometry(const QString& window) {
    return value((kGeometry + window.toStdString()).c_str()).toByteArray();
}
void Remembered::setGeometry(const QByteArray& geometry, const QString& window) {
    setValue((kGeometry + window.toStdString()).c_str(), geometry);
}

std::optional<bool> Remembered::shown(const QString& part) {
    const QVariant kept = value(("shown/" + part.toStdString()).c_str());
    return kept.isValid() ? std::optional(kept.toBool()) : std::nullopt;
}
void Remembered::setShown(const QString& part, bool shown) {
    setValue(("shown/" + part.toStdString()).c_str(), shown);
}

} // namespace bw
