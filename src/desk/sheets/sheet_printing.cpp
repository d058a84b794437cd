// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_printing.hpp"

#include "sheets/sheet_painter.hpp"

#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

namespace bw {

namespace {
bool askByDialog(QPrinter& printer, QWidget* parent) {
    QPrintDialog dialog(&printer, parent);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
    return dialog.exec() == QDialog::Accepted;
}

void setPaper(QPrinter& printer, const Layout& layout) {
    const bool wide = layout.paper.width() > layout.paper.height();
    const QSizeF upright = wide ? layout.paper.transposed() : layout.paper;
    const QPageSize size(upright, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch);
    printer.setFullPage(true);
    printer.setPageSize(size);
    printer.setPageOrientation(wide ? QPageLayout::Landscape : QPageLayout::Portrait);
    printer.setPageMargins({}, QPageLayout::Millimeter);
    printer.setColorMode(layout.blackAndWhite ? QPrinter::GrayScale : QPrinter::Color);
    printer.setDocName(layout.title);
}
} // namespace

std::function<bool(QPrinter&, QWidget*)>& askPrinter() {
    static std::function<bool(QPrinter&, QWidget*)> kept = askByDialog;
    return kept;
}

Result<Printed> printSheet(const Layout& layout, QWidget* parent,
                           const std::function<bool(int done)>& step) {
    QPrinter printer(QPrinter::HighResolution);
    setPaper(printer, layout);
    if (!askPrinter()(printer, parent)) return Printed::Nothing;
    QPainter painter;
    const Message failed{
        "The printer did not take the sheet, so nothing was printed. See that it is "
        "switched on and has paper, or save a PDF instead.",
        {}};
    if (!painter.begin(&printer)) return failed;
    for (int page = 0; page < static_cast<int>(layout.pages.size()); ++page) {
        if (step && !step(page)) {
            printer.abort();
            return Printed::Stopped;
        }
        if (page > 0 && !printer.newPage()) return failed;
        painter.save();
        useMillimetres(painter);
        paintPage(painter, layout, page);
        painter.restore();
    }
    if (!painter.end() || printer.printerState() == QPrinter::Error) return failed;
    return Printed::All;
}

} // namespace bw
