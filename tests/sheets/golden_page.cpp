// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/golden_page.hpp"
#include "sheets/sheet_painter.hpp"

#include <QDir>
#include <QPainter>
#include <QTextStream>

#include <algorithm>

namespace bw::test {

namespace {
constexpr int kClear = 48; // of 255, a difference that is seen
constexpr int kPatch = 12; // averaged dots, 10 mm
constexpr int kGreys = 16;

QImage averaged(const QImage& page) {
    const QImage grey = page.convertToFormat(QImage::Format_Grayscale8);
    QImage out(grey.width() / 2, grey.height() / 2, QImage::Format_Grayscale8);
    for (int y = 0; y < out.height(); ++y) {
        const uchar *a = grey.constScanLine(2 * y), *b = grey.constScanLine(2 * y + 1);
        for (int x = 0; x < out.width(); ++x)
            out.scanLine(y)[x] =
                static_cast<uchar>((a[2 * x] + a[2 * x + 1] + b[2 * x] + b[2 * x + 1]) / 4);
    }
    return out;
}

bool clearly(const QImage& a, const QImage& b, int x, int y) {
    return std::abs(int{a.constScanLine(y)[x]} - int{b.constScanLine(y)[x]}) > kClear;
}

// Patches overlap by half, so that no line of text lies half in one and half in the next.
void judge(PageDifference& out, const QImage& a, const QImage& b) {
    out.worst = -1;
    for (int y = 0; y + kPatch <= a.height(); y += kPatch / 2)
        for (int x = 0; x + kPatch <= a.width(); x += kPatch / 2) {
            int astray = 0;
            for (int j = 0; j < kPatch; ++j)
                for (int i = 0; i < kPatch; ++i) astray += clearly(a, b, x + i, y + j);
            const double share = astray / static_cast<double>(kPatch * kPatch);
            if (share <= out.worst) continue;
            out.worst = share;
            out.where = QRect(2 * x, 2 * y, 2 * kPatch, 2 * kPatch);
        }
}

QImage pictureOf(const QImage& a, const QImage& b, const QRect& where) {
    QImage out(2 * a.width(), 2 * a.height(), QImage::Format_RGB32);
    for (int y = 0; y < out.height(); ++y)
        for (int x = 0; x < out.width(); ++x) {
            const int pale = 255 - (255 - a.constScanLine(y / 2)[x / 2]) / 3;
            out.setPixel(x, y,
                         clearly(a, b, x / 2, y / 2) ? qRgb(200, 0, 0) : qRgb(pale, pale, pale));
        }
    QPainter painter(&out);
    painter.setPen(Qt::blue);
    painter.drawRect(where.adjusted(-2, -2, 1, 1));
    return out;
}

QString kept(const std::string& name) {
    return QStringLiteral(BW_SOURCE_DIR "/tests/sheets/golden/") + QString::fromStdString(name) +
           QStringLiteral(".png");
}

std::string writtenOut(const std::string& name, const QImage& now, const PageDifference& d) {
    const QDir folder(QDir::temp().filePath(QStringLiteral("blockwright-pages")));
    folder.mkpath(QStringLiteral("."));
    const QString start = folder.filePath(QString::fromStdString(name));
    const QString page = start + QStringLiteral(".now.png"),
                  differs = start + QStringLiteral(".differs.png");
    QString text;
    QTextStream(&text) << "does not look as " << kept(name) << ": " << qRound(1000 * d.worst) / 10.0
                       << " % of the patch at " << d.where.x() << ", " << d.where.y()
                       << " differs; see " << page;
    if (!now.save(page)) text += QStringLiteral(" (which could not be written)");
    if (!d.picture.isNull() && d.picture.save(differs)) text += QStringLiteral(" and ") + differs;
    return text.toStdString();
}
} // namespace

QImage greyPage(const Layout& layout, int page) {
    const QImage drawn =
        pageImage(layout, page, kGoldenDpi).convertToFormat(QImage::Format_Grayscale8);
    QImage out(drawn.size(), QImage::Format_Indexed8);
    QList<QRgb> greys;
    for (int g = 0; g < kGreys; ++g) greys << qRgb(17 * g, 17 * g, 17 * g);
    out.setColorTable(greys);
    for (int y = 0; y < out.height(); ++y)
        for (int x = 0; x < out.width(); ++x)
            out.scanLine(y)[x] = static_cast<uchar>((drawn.constScanLine(y)[x] + 8) / 17);
    return out;
}

PageDifference comparePages(const QImage& kept, const QImage& now) {
    PageDifference out;
    if (kept.size() != now.size()) return out;
    const QImage a = averaged(kept), b = averaged(now);
    judge(out, a, b);
    out.picture = pictureOf(a, b, out.where);
    return out;
}

std::string checkedAgainstGolden(const std::string& name, const Layout& layout, int page) {
    const QImage now = greyPage(layout, page);
    if (const QByteArray set = qgetenv("BLOCKWRIGHT_WRITE"); !set.isEmpty())
        return now.save(kept(name)) ? "" : kept(name).toStdString() + " could not be written";
    const QImage golden(kept(name));
    const PageDifference difference = comparePages(golden, now);
    return difference.worst <= kMostAstray ? "" : writtenOut(name, now, difference);
}

} // namespace bw::test
