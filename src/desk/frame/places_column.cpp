// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/places_column.hpp"

#include "desk/frame/resources.hpp"
#include "desk/frame/theme.hpp"

#include <QAction>
#include <QEvent>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

namespace bw {

namespace {
constexpr int kWidth = 84;

QString buttonStyle(const Inks& k) {
    return QStringLiteral("QToolButton { color: %1; background: transparent; border: 2px solid "
                          "transparent; padding: 6px 0 5px 0; }"
                          "QToolButton:hover { border-color: %2; }"
                          "QToolButton:checked { background: %2; border-color: %2; }"
                          "QToolButton:focus { border-color: %1; }%3")
        .arg(k.onColumn.name(), k.columnNow.name(),
             k.highContrast ? QStringLiteral("QToolButton:checked { border-left: 8px solid %1; }"
                                             "QToolButton:focus { border: 4px double %1; }")
                                  .arg(k.onColumn.name())
                            : QString());
}
} // namespace

PlacesColumn::PlacesColumn(QWidget* parent) : QWidget(parent), layout_(new QVBoxLayout(this)) {
    setFixedWidth(kWidth);
    setAccessibleName(tr("Places"));
    layout_->setContentsMargins(0, 10, 0, 10);
    layout_->setSpacing(6);
    layout_->addStretch(1);
}

void PlacesColumn::add(const QString& icon, QAction* go) {
    auto* button = new QToolButton(this);
    button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    button->setDefaultAction(go);
    button->setIconSize({24, 24});
    button->setFixedWidth(kWidth);
    button->setFocusPolicy(Qt::TabFocus);
    button->setAccessibleName(go->iconText());
    layout_->insertWidget(layout_->count() - 1, button);
    buttons_.append({button, icon});
    recolour();
}

void PlacesColumn::recolour() {
    const Inks& k = inks();
    for (const auto& [button, icon] : buttons_) {
        button->defaultAction()->setIcon(lineIcon(icon, k.onColumn));
        button->setStyleSheet(buttonStyle(k));
    }
}

void PlacesColumn::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) recolour();
    QWidget::changeEvent(event);
}

void PlacesColumn::paintEvent(QPaintEvent*) { QPainter(this).fillRect(rect(), inks().column); }

} // namespace bw
