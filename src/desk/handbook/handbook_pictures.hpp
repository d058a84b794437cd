// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of the Handbook in a text: as wide as the column at most, decoded when they come
// into sight, and drawn dot for dot on any screen.
#pragma once
#include <QHash>
#include <QPixmap>
#include <QTextObjectInterface>

namespace bw {

class HandbookPictures : public QObject, public QTextObjectInterface {
    Q_OBJECT
    Q_INTERFACES(QTextObjectInterface)
public:
    using QObject::QObject;

    // Of the text, in logical pixels, and the dots in each of them. True when either has changed.
    bool setColumn(double width, double dotsPerPixel);
    void forget() { drawn_.clear(); } // those that were decoded

    // By its name in a document, "pictures/bench.png"; null when there is none.
    [[nodiscard]] static QSize dotsOf(const QString& name);
    [[nodiscard]] static QString fileOf(const QString& name);

    QSizeF intrinsicSize(QTextDocument* text, int position, const QTextFormat& format) override;
    void drawObject(QPainter* painter, const QRectF& rect, QTextDocument* text, int position,
                    const QTextFormat& format) override;

private:
    [[nodiscard]] const QPixmap& drawnAt(const QString& name, QSize dots);

    double column_ = 600, dots_ = 1;
    QHash<QString, QPixmap> drawn_;
};

} // namespace bw
