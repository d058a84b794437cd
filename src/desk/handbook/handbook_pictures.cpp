// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_pictures.hpp"

#include "desk/frame/theme.hpp"

#include <QImageReader>
#include <QPainter>
#include <QTextFormat>

#include <algorithm>

namespace bw {

namespace {
constexpr double kTallest = 640;  // logical pixels: a printed page is seen whole
constexpr double kNearly = 0.8;   // so much of the width is given up for dots that fit
constexpr QSize kUnknown{64, 48}; // a frame where a picture is missing
} // namespace

bool HandbookPictures::setColumn(double width, double dotsPerPixel) {
    if (width == column_ && dotsPerPixel == dots_) return false;
    column_ = width;
    dots_ = dotsPerPixel;
    forget();
    return true;
}

QString HandbookPictures::fileOf(const QString& name) {
    return QStringLiteral(":/handbook/") + name;
}

QSize HandbookPictures::dotsOf(const QString& name) { return QImageReader(fileOf(name)).size(); }

QSizeF HandbookPictures::intrinsicSize(QTextDocument*, int, const QTextFormat& format) {
    const QSize known = dotsOf(format.toImageFormat().name());
    const QSizeF dots = known.isValid() ? known : kUnknown;
    double scale = std::min({1.0, column_ / dots.width(), kTallest / dots.height()});
    if (const double exact = 1 / dots_; exact < scale && exact >= kNearly * scale) scale = exact;
    return dots * scale;
}

const QPixmap& HandbookPictures::drawnAt(const QString& name, QSize dots) {
    QPixmap& kept = drawn_[name];
    if (kept.size() == dots) return kept;
    const QImage whole = QImageReader(fileOf(name)).read();
    kept = whole.isNull() ? QPixmap()
                          : QPixmap::fromImage(whole.scaled(dots, Qt::IgnoreAspectRatio,
                                                            Qt::SmoothTransformation));
    return kept;
}

void HandbookPictures::drawObject(QPainter* painter, const QRectF& rect, QTextDocument*, int,
                                  const QTextFormat& format) {
    const double dots = painter->device()->devicePixelRatioF();
    const QPixmap& picture = drawnAt(format.toImageFormat().name(), (rect.size() * dots).toSize());
    if (!picture.isNull()) painter->drawPixmap(rect, picture, QRectF(picture.rect()));
    painter->setPen(inks().line);
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(rect.adjusted(0, 0, -1, -1));
}

} // namespace bw
