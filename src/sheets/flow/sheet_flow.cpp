// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/flow/sheet_flow.hpp"
#include "sheets/sheet_names.hpp"

#include <algorithm>

namespace bw {

using Look = PagePen::Look;

SheetWords sheetWords(SheetKind kind, const Gym& gym, const Block& block,
                      const SheetOptions& options) {
    SheetWords words;
    const QString month = printedMonth(block.month), title = printed(block.title);
    words.kicker = sheetName(kind);
    words.kicker[0] = words.kicker[0].toUpper();
    if (!title.isEmpty()) words.kicker = month + QStringLiteral(" · ") + words.kicker;
    words.title = title.isEmpty() ? month : title;
    words.running = blockText(block) + QStringLiteral(" · ") + sheetName(kind);
    words.whose = footText(gym, block, options);
    return words;
}

SheetFlow::SheetFlow(SheetKind kind, const Block& block, SheetWords words,
                     const SheetOptions& options, SheetReader reader)
    : words_(std::move(words)), ruler_(options.family), type_(sheetType(reader, options)),
      layout_(emptyLayout(kind, block, options)),
      width_(layout_.paper.width() - 2 * layout_.margin) {}

void SheetFlow::put(Band band, double gap, Keep keep) {
    pieces_.push_back({std::move(band), gap, keep == Keep::WithNext, std::exchange(turn_, false)});
}

void SheetFlow::text(const QString& text, const Look& look, double gap, Keep keep, double indent) {
    const QStringList lines = proseLines(ruler_, text, look.type, width_ - indent);
    for (qsizetype i = 0; i < lines.size(); ++i) {
        Band band;
        PagePen(ruler_, band.items)
            .left(lines[i], {indent, 0.95 * look.type.em}, width_ - indent, look);
        band.height = kPitch * look.type.em;
        const bool last = i + 1 == lines.size();
        put(std::move(band), i == 0 ? gap : 0, last ? keep : Keep::WithNext);
    }
}

void SheetFlow::heading(const QString& text, const QString& right) {
    Band band;
    PagePen pen(ruler_, band.items);
    const Look look{{type_.head, Weight::Bold}, Ink::Accent, Rank::Head};
    const Look quiet{{type_.small}, Ink::Quiet, Rank::Small};
    const double beside = right.isEmpty() ? 0 : ruler_.width(right, quiet.type) + 2 * type_.small;
    BandColumn(band, ruler_, width_ - beside).add(text, look);
    if (!right.isEmpty()) pen.right(right, {width_, 0.95 * type_.head}, width_, quiet);
    band.height += 0.15 * type_.head;
    pen.line({0, band.height}, {width_, band.height}, 2 * type_.hair, Ink::Accent);
    band.height += 0.35 * type_.head;
    put(std::move(band), 1.1 * type_.head, Keep::WithNext);
}

Band SheetFlow::titleBand() const {
    Band band;
    BandColumn column(band, ruler_, width_);
    column.add(words_.kicker, {{0.5 * type_.title}, Ink::Accent, Rank::Head});
    column.addFitted(words_.title, {{type_.title, Weight::Bold}, Ink::Text, Rank::Title},
                     1.2 * type_.body);
    column.add(words_.sentence, {{type_.body}, Ink::Quiet, Rank::Small});
    column.space(0.55 * type_.title);
    return band;
}

Band SheetFlow::runningBand() const {
    Band band;
    BandColumn(band, ruler_, width_).add(words_.running, {{type_.small}, Ink::Accent, Rank::Head});
    band.height += type_.small;
    return band;
}

Band SheetFlow::footBand(int page, int pages) const {
    Band band;
    PagePen pen(ruler_, band.items);
    const Look small{{type_.foot}, Ink::Quiet, Rank::Small};
    band.height = 1.2 * type_.foot;
    pen.line({0, band.height}, {width_, band.height}, type_.hair, Ink::Hair);
    band.height += 0.4 * type_.foot;
    BandColumn column(band, ruler_, width_);
    column.add(words_.note, {{type_.foot}, Ink::Text, Rank::Small});
    column.space(0.25 * type_.foot);
    const QString number = pageText(page, pages);
    pen.right(number, {width_, band.height + 0.95 * type_.foot}, width_, small);
    const double left = width_ - ruler_.width(number, small.type) - 2 * type_.foot;
    BandColumn(band, ruler_, left).add(words_.whose, small);
    band.height += 0.1 * type_.foot;
    return band;
}

double SheetFlow::room() const {
    return layout_.paper.height() - 2 * layout_.margin - foot_ - top_ - used_;
}

std::size_t SheetFlow::chainEnd(std::size_t from) const {
    std::size_t end = from + 1;
    while (end < pieces_.size() && pieces_[end - 1].keeps && !pieces_[end].turns) ++end;
    return end;
}

double SheetFlow::chainHeight(std::size_t from, std::size_t end) const {
    double sum = 0;
    for (std::size_t i = from; i < end; ++i)
        sum += pieces_[i].band.height + (i == from && fresh_ ? 0 : pieces_[i].gap);
    return sum;
}

void SheetFlow::place(const Piece& piece) {
    if (!fresh_) used_ += piece.gap;
    if (piece.band.height > room() && (!fresh_ || layout_.pages.size() == 1)) {
        layout_.pages.emplace_back();
        top_ = runningBand().height;
        used_ = 0;
    }
    PagePen(ruler_, layout_.pages.back().items)
        .put(piece.band.items, {layout_.margin, layout_.margin + top_ + used_});
    used_ += piece.band.height;
    fresh_ = false;
}

void SheetFlow::fill() {
    layout_.pages.emplace_back();
    top_ = titleBand().height;
    for (std::size_t i = 0; i < pieces_.size();) {
        const std::size_t end = chainEnd(i);
        if (!fresh_ && (pieces_[i].turns || chainHeight(i, end) > room())) {
            layout_.pages.emplace_back();
            top_ = runningBand().height;
            used_ = 0;
            fresh_ = true;
        }
        for (; i < end; ++i) place(pieces_[i]);
    }
}

Layout SheetFlow::done() {
    foot_ = footBand(100, 100).height;
    fill();
    const int pages = static_cast<int>(layout_.pages.size());
    for (int n = 0; n < pages; ++n) {
        PagePen pen(ruler_, layout_.pages[static_cast<std::size_t>(n)].items);
        pen.put((n == 0 ? titleBand() : runningBand()).items, {layout_.margin, layout_.margin});
        const Band foot = footBand(n + 1, pages);
        pen.put(foot.items,
                {layout_.margin, layout_.paper.height() - layout_.margin - foot.height});
    }
    return std::move(layout_);
}

Layout forStanding(const std::function<Layout(SheetReader)>& layOut) {
    Layout larger = layOut(SheetReader::Standing);
    if (larger.pages.size() == 1) return larger;
    Layout usual = layOut(SheetReader::Sitting);
    return usual.pages.size() < larger.pages.size() ? usual : larger;
}

} // namespace bw
