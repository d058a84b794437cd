// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook.hpp"

#include "desk/handbook/handbook_window.hpp"

#include <memory>

namespace bw {

namespace {
constexpr const char* kPlace = "handbookPlace";
const QString kBeginning = QStringLiteral("first-month.md");

// Not a child of the window on the screen, so it need not stay before it.
class Owner : public QObject {
public:
    explicit Owner(QWidget* window) : QObject(window) {}
    HandbookWindow handbook;
};
} // namespace

void setHandbookPlace(QWidget* part, const QString& place) { part->setProperty(kPlace, place); }

QString handbookPlaceFor(const QWidget* part) {
    for (; part; part = part->parentWidget())
        if (const QString place = part->property(kPlace).toString(); !place.isEmpty()) return place;
    return kBeginning;
}

namespace {
const QString kOwner = QStringLiteral("handbook-owner");
}

void closeHandbook(QWidget& window) {
    delete window.findChild<QObject*>(kOwner, Qt::FindDirectChildrenOnly);
}

HandbookWindow& openHandbook(QWidget* part, const QString& place) {
    QWidget* window = part->window();
    auto* owner =
        static_cast<Owner*>(window->findChild<QObject*>(kOwner, Qt::FindDirectChildrenOnly));
    if (!owner) {
        owner = new Owner(window);
        owner->setObjectName(kOwner);
    }
    if (owner->handbook.isMinimized()) owner->handbook.showNormal();
    owner->handbook.show(); // first: where a part stands depends on the width
    owner->handbook.goTo(place);
    owner->handbook.raise();
    owner->handbook.activateWindow();
    return owner->handbook;
}

} // namespace bw
