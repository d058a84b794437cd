// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/resources.hpp"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

// Outside any namespace, as Qt wants it: the resources are in a static library.
static void loadOnce() {
    static const bool loaded = [] {
        Q_INIT_RESOURCE(resources);
        Q_INIT_RESOURCE(translations);
        return true;
    }();
    Q_UNUSED(loaded)
}

namespace bw {

QString demoBundleFile() {
    loadOnce();
    return QStringLiteral(":/demo/saltmarsh-boathouse.bundle.json");
}

QString translationFile(const QString& language) {
    loadOnce();
    return QStringLiteral(":/translations/blockwright_%1.qm").arg(language);
}

QIcon lineIcon(const QString& name, const QColor& color) {
    loadOnce();
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QSvgRenderer drawing(file.readAll().replace("currentColor", color.name().toLatin1()));
    QIcon icon;
    for (const int size : {24, 36, 48, 72}) { // for scales of 1 to 3
        QPixmap picture(size, size);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        drawing.render(&painter);
        icon.addPixmap(picture);
    }
    return icon;
}

QIcon programIcon() {
    loadOnce();
    return QIcon(QStringLiteral(":/icons/program.svg"));
}

} // namespace bw
