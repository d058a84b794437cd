// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/pdf.hpp"
#include "sheets/sheet_painter.hpp"

#include <QFileInfo>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace bw {

namespace {
Message failed(const QString& path, const QString& reason) {
    const bool before = QFileInfo::exists(path);
    return {before ? "“%1” could not be written: %2. The file that was there before is kept. Make "
                     "room or choose another folder, and print again."
                   : "“%1” could not be written: %2. No file was left behind. Make room or choose "
                     "another folder, and print again.",
            {path.toStdString(), reason.toStdString()}};
}

// Upright size and a turn, rather than a wide size, is what printers expect of a landscape page.
QPageLayout pageLayout(QSizeF paper) {
    const bool wide = paper.width() > paper.height();
    const QPageSize size(wide ? paper.transposed() : paper, QPageSize::Millimeter);
    return {size, wide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF()};
}

bool paintAll(QPdfWriter& writer, const Layout& layout) {
    QPainter painter;
    if (!painter.begin(&writer)) return false;
    useMillimetres(painter);
    for (int page = 0; page < static_cast<int>(layout.pages.size()); ++page) {
        if (page > 0 && !writer.newPage()) return false;
        paintPage(painter, layout, page);
    }
    return painter.end();
}
} // namespace

Result<bool> writePdf(const QString& path, const Layout& layout) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return failed(path, file.errorString());
    QPdfWriter writer(&file);
    writer.setTitle(layout.title);
    writer.setCreator(QStringLiteral("Blockwright"));
    writer.setPageLayout(pageLayout(layout.paper));
    const bool painted = paintAll(writer, layout);
    if (!painted || file.error() != QFileDevice::NoError) {
        const QString reason = file.errorString();
        file.cancelWriting();
        return failed(path, reason);
    }
    if (!file.commit()) return failed(path, file.errorString());
    return true;
}

} // namespace bw
