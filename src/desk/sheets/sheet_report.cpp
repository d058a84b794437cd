// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_report.hpp"

#include "desk/frame/theme.hpp"
#include "sheets/legibility.hpp"
#include "sheets/sheet_words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace bw {

namespace {
constexpr std::size_t kMostNamed = 3;

QString tr(const char* source) { return QCoreApplication::translate("SheetsPage", source); }

QString pages(const Layout& layout) {
    const auto all = layout.pages.size();
    return all == 1 ? tr("One page.") : tr("%1 pages.").arg(all);
}

QString reading(const Layout& layout) {
    if (layout.keyCap <= 0) return {};
    return tr("Names and doses are at least %1 mm high: read with ease at %2 m, and just about at "
              "%3 m.")
        .arg(layout.keyCap, 0, 'f', 1)
        .arg(readableFrom(layout.keyCap, kEasyReading), 0, 'f', 1)
        .arg(readableFrom(layout.keyCap, kBareReading), 0, 'f', 1);
}

QString fewerCards(int perPage) {
    return perPage == 1 ? tr("One card a page: with more, not every card would fit.")
                        : tr("Two cards a page: with four, not every card would fit.");
}

QString notFitting(const std::vector<Overflow>& over) {
    QStringList named;
    for (std::size_t i = 0; i < over.size() && i < kMostNamed; ++i)
        named << tr("“%1” (page %2)").arg(over[i].text).arg(over[i].page + 1);
    const QString more =
        over.size() > kMostNamed ? tr(" and %1 more").arg(over.size() - kMostNamed) : QString();
    return levelShape(Level::Stop) + QLatin1Char(' ') +
           tr("Does not fit: %1%2. Take a larger paper, turn it, or shorten the text.")
               .arg(named.join(QStringLiteral(", ")), more);
}
} // namespace

SheetReport reportOn(const Layout& layout, const SheetOptions& options) {
    if (layout.pages.empty()) return {};
    QStringList said{pages(layout)};
    if (const QString far = reading(layout); !far.isEmpty()) said << far;
    if (layout.cardsPerPage > 0 && layout.cardsPerPage < options.cardsPerPage)
        said << fewerCards(layout.cardsPerPage);
    const std::vector<Overflow> over = overflowOf(layout);
    if (!over.empty()) said << notFitting(over);
    return {said.join(QLatin1Char('\n')), !over.empty()};
}

QString sheetLabel(SheetKind kind) {
    QString name = sheetName(kind);
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}

} // namespace bw
