// SPDX-License-Identifier: GPL-3.0-or-later
// Every question to the coach goes through here, so that a test can answer in the coach's place.
#pragma once
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>

class QWidget;

namespace bw {

struct Prompts {
    // Tells, with one button.
    std::function<void(QWidget* parent, const QString& title, const QString& text)> tell;
    // The number of the chosen button; -1: closed without choosing. The first is the default.
    std::function<int(QWidget* parent, const QString& title, const QString& text,
                      const QStringList& buttons)>
        choose;
    std::function<std::optional<QString>(QWidget* parent, const QString& title,
                                         const QString& filter)>
        openFile;
    std::function<std::optional<QString>(QWidget* parent, const QString& title,
                                         const QString& suggested, const QString& filter)>
        saveFile;
    std::function<std::optional<QString>(QWidget* parent, const QString& title,
                                         const QString& suggested)>
        openFolder;
};

// The real ones until a test puts others in.
[[nodiscard]] Prompts& prompts();

} // namespace bw
