// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/prompts.hpp"

#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

namespace bw {

namespace {
int chooseByBox(QWidget* parent, const QString& title, const QString& text,
                const QStringList& buttons) {
    QMessageBox box(QMessageBox::NoIcon, title, text, QMessageBox::NoButton, parent);
    QList<QAbstractButton*> made;
    for (const QString& b : buttons) made << box.addButton(b, QMessageBox::AcceptRole);
    if (!made.isEmpty()) box.setDefaultButton(static_cast<QPushButton*>(made.first()));
    auto* cancel = box.addButton(QMessageBox::Cancel);
    cancel->setIcon({}); // words do
    box.setEscapeButton(cancel);
    box.exec();
    return static_cast<int>(made.indexOf(box.clickedButton()));
}

std::optional<QString> named(const QString& file) {
    return file.isEmpty() ? std::nullopt : std::optional(file);
}

Prompts real() {
    return {
        [](QWidget* parent, const QString& title, const QString& text) {
            QMessageBox(QMessageBox::NoIcon, title, text, QMessageBox::Ok, parent).exec();
        },
        chooseByBox,
        [](QWidget* parent, const QString& title, const QString& filter) {
            return named(QFileDialog::getOpenFileName(parent, title, {}, filter));
        },
        [](QWidget* parent, const QString& title, const QString& suggested, const QString& filter) {
            return named(QFileDialog::getSaveFileName(parent, title, suggested, filter));
        },
        [](QWidget* parent, const QString& title, const QString& suggested) {
            return named(QFileDialog::getExistingDirectory(parent, title, suggested));
        }};
}
} // namespace

Prompts& prompts() {
    static Prompts kept = real();
    return kept;
}

} // namespace bw
