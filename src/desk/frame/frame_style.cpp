// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/frame_style.hpp"

#include <QColor>
#include <QWidget>

namespace bw {

namespace {
// @name stands for a colour.
constexpr const char* kStyle = R"(
QToolButton, QPushButton {
    color: @ink; background: @paper; border: 1px solid @line; border-radius: 3px; padding: 4px 10px;
}
QToolButton:hover, QPushButton:hover { border-color: @quiet; }
QToolButton:checked { color: @onAccent; background: @accent; border-color: @accent; }
QToolButton:disabled, QPushButton:disabled { color: @quiet; background: transparent; }
QToolButton:focus, QPushButton:focus { border: 2px solid @accent; padding: 3px 9px; }
QToolButton:checked:focus { border-color: @ink; }
QToolButton::menu-indicator {
    image: url(:/icons/down.svg); width: 10px; subcontrol-position: right center; right: 6px;
}
QToolButton[popupMode="2"] { padding-right: 22px; }
QToolButton[popupMode="2"]:focus { padding-right: 21px; }
QToolButton[bare="true"] { background: transparent; border-color: transparent; }
QToolButton[bare="true"]:hover { border-color: @line; }
QToolButton[bare="true"]:focus { border-color: @accent; }
QLineEdit, QSpinBox, QComboBox {
    color: @ink; background: transparent; border: 1px solid transparent;
    border-bottom: 1px dotted @line; padding: 3px 4px; selection-background-color: @accent;
    selection-color: @onAccent;
}
QLineEdit:hover, QSpinBox:hover, QComboBox:hover { border-bottom: 1px solid @quiet; }
QLineEdit:focus, QSpinBox:focus, QComboBox:focus { border: 2px solid @accent; padding: 2px 3px; }
QLineEdit:disabled, QSpinBox:disabled, QComboBox:disabled { color: @quiet; }
QPlainTextEdit { color: @ink; background: @paper; border: 1px solid @line; padding: 1px; }
QPlainTextEdit:focus { border: 2px solid @accent; padding: 0; }
QComboBox::drop-down { border: none; width: 16px; }
QComboBox::down-arrow { image: url(:/icons/down.svg); width: 10px; }
QSpinBox::up-button, QSpinBox::down-button { width: 0; }
QComboBox QAbstractItemView {
    color: @ink; background: @paper; border: 1px solid @line;
    selection-background-color: @accent; selection-color: @onAccent;
}
QHeaderView { background: @paper; }
QHeaderView::section {
    color: @quiet; background: @paper; border: none; border-bottom: 1px solid @line; padding: 2px;
}
QFrame#notice { background: @wash; border: 1px solid @accent; border-radius: 3px; }
QFrame#commands { background: @paper; border: 1px solid @quiet; border-radius: 2px; }
QFrame#card { background: @paper; border: 1px solid @line; border-radius: 3px; }
QLabel { color: @ink; background: transparent; }
QLabel:focus { background: @wash; }
QLabel#trouble { color: @look; }
QLabel[quiet="true"], QWidget#status QLabel { color: @quiet; }
)";
// Thick lines; what can't be used is dashed, not only paler.
constexpr const char* kThick = R"(
QToolButton, QPushButton { border: 2px solid @line; padding: 3px 9px; }
QToolButton:hover, QPushButton:hover { background: @wash; }
QToolButton:checked:hover { background: @accent; }
QToolButton:disabled, QPushButton:disabled { border-style: dashed; }
QToolButton:focus, QPushButton:focus { border: 4px solid @accent; padding: 1px 7px; }
QToolButton:checked:focus { border-color: @ink; }
QToolButton[popupMode="2"]:focus { padding-right: 19px; }
QToolButton[bare="true"]:hover { border-color: @line; }
QLineEdit, QSpinBox, QComboBox { border-bottom: 2px solid @line; }
QLineEdit:focus, QSpinBox:focus, QComboBox:focus { border: 3px solid @accent; padding: 1px 2px; }
QHeaderView::section { color: @ink; border-bottom: 2px solid @line; }
QFrame#notice, QFrame#card, QFrame#commands { border: 2px solid @line; }
)";
constexpr const char* kDressed = "dressedAsFrame";
} // namespace

void dressAsFrame(QWidget* part) {
    part->setProperty(kDressed, true);
    part->setStyleSheet(frameStyle(inks()));
}

void dressAgain(QWidget* window) {
    const QString style = frameStyle(inks());
    for (QWidget* part : window->findChildren<QWidget*>())
        if (part->property(kDressed).toBool() && part->styleSheet() != style)
            part->setStyleSheet(style);
}

QString frameStyle(const Inks& k) {
    QString style = QString::fromLatin1(kStyle);
    if (k.highContrast) style += QLatin1String(kThick);
    const std::pair<const char*, QColor> colors[] = {
        {"@onAccent", k.onAccent}, {"@look", k.level[1]}, {"@accent", k.accent},
        {"@paper", k.paper},       {"@quiet", k.quiet},   {"@wash", k.wash},
        {"@line", k.line},         {"@ink", k.ink}};
    for (const auto& [name, color] : colors) style.replace(QLatin1String(name), color.name());
    return style;
}

} // namespace bw
