// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/month_news.hpp"
#include "blockwright/rules/member_substitute.hpp"
#include "sheets/coach/notes_parts.hpp"
#include "sheets/coach_sheets.hpp"

namespace bw {

namespace {
SheetWords noteWords(const SheetMatter& matter, const SheetOptions& options) {
    SheetWords words = sheetWords(SheetKind::Notes, matter.gym, matter.block, options);
    if (matter.block.format)
        words.sentence = printedFormat(*matter.block.format) + QStringLiteral(": ") +
                         formatSentence(*matter.block.format) + QLatin1Char('.');
    words.note = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "For the coach. Not for the wall."));
    return words;
}
} // namespace

Layout layoutNotes(const SheetMatter& matter, const SheetOptions& options) {
    SheetFlow flow(SheetKind::Notes, matter.block, noteWords(matter, options), options);
    const MonthNews news = monthNews(matter.gym, matter.block);
    putNews(flow, matter, news);
    for (int s = 0; s < static_cast<int>(matter.block.sections.size()); ++s)
        putSection(flow, matter, news, s);
    if (matter.verdict) putFindings(flow, *matter.verdict, matter.block);
    putFlags(flow, matter);
    return flow.done();
}

} // namespace bw
