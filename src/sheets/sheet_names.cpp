// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_words.hpp"

#include <array>

namespace bw {

namespace {
constexpr std::array<std::string_view, 5> kWords{"wall", "cards", "notes", "kit", "talk"};
constexpr qsizetype kMostBytes =
    160; // of the title in UTF-8; file systems stop at 255 for the whole

// Common file systems refuse these, or a name that ends in a dot or space.
QString fitForFile(const QString& title) {
    QString kept;
    for (const QChar c : title.simplified())
        kept += c.isPrint() && !QStringLiteral("/\\:*?\"<>|").contains(c) ? c : QLatin1Char(' ');
    kept = kept.simplified();
    while (kept.toUtf8().size() > kMostBytes) {
        const bool pair = kept.size() > 1 && kept.back().isLowSurrogate();
        kept.chop(pair ? 2 : 1);
    }
    while (kept.endsWith(QLatin1Char('.')) || kept.endsWith(QLatin1Char(' '))) kept.chop(1);
    return kept;
}
QString wordText(SheetKind kind) {
    const auto word = sheetWord(kind);
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}
} // namespace

std::string_view sheetWord(SheetKind kind) { return kWords[static_cast<std::size_t>(kind)]; }

std::optional<SheetKind> sheetFrom(std::string_view word) {
    for (std::size_t i = 0; i < kWords.size(); ++i)
        if (kWords[i] == word) return static_cast<SheetKind>(i);
    return std::nullopt;
}

QString sheetTitle(SheetKind kind, const Block& block) {
    const QString title = QString::fromStdString(block.title).simplified();
    const QString month = printedMonth(block.month);
    const QString name = title.isEmpty() ? month : month + QStringLiteral(": ") + title;
    return name + QStringLiteral(" (") + sheetName(kind) + QStringLiteral(")");
}

QString sheetFileName(SheetKind kind, const Block& block) {
    const QString title = fitForFile(QString::fromStdString(block.title));
    const QString month = QString::fromStdString(block.month.text());
    const QString start = title.isEmpty() ? month : month + QLatin1Char(' ') + title;
    return start + QStringLiteral(" - ") + wordText(kind) + QStringLiteral(".pdf");
}

Layout emptyLayout(SheetKind kind, const Block& block, const SheetOptions& options) {
    Layout layout;
    layout.title = sheetTitle(kind, block);
    layout.paper = paperSize(options);
    layout.margin = paperMargin(options);
    layout.family = options.family;
    layout.blackAndWhite = options.blackAndWhite;
    return layout;
}

} // namespace bw
