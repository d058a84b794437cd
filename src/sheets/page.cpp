// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/page.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr double kSlack = 0.05; // mm; less than a printed dot

struct Report {
    const Layout& layout;
    std::vector<Overflow> found;

    void add(int page, Overflow::Kind kind, const TextItem& item) {
        found.push_back({page, kind, item.text, item.box});
    }
    [[nodiscard]] bool within(const QRectF& ink) const {
        const double m = layout.margin - kSlack;
        return QRectF(QPointF(), layout.paper).adjusted(m / 2, m, -m / 2, -m).contains(ink);
    }
    void checkAlone(int page, const TextItem& item) {
        if (item.width > item.room + kSlack) add(page, Overflow::Kind::Room, item);
        // the ink of a letter such as j may lean over its place, as print has it
        const double right = item.at.x() + item.width;
        const bool placed = item.at.x() >= layout.margin - kSlack &&
                            right <= layout.paper.width() - layout.margin + kSlack;
        if (!placed || !within(item.box)) add(page, Overflow::Kind::Paper, item);
    }
    void checkPairs(int page, std::vector<const TextItem*> texts) {
        const auto top = [](const TextItem* text) { return text->box.top(); };
        std::ranges::stable_sort(texts, {}, top);
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = i + 1; j < texts.size(); ++j) {
                if (top(texts[j]) >= texts[i]->box.bottom()) break; // so are all below it
                const QRectF both = texts[i]->box.intersected(texts[j]->box);
                if (both.width() > kSlack && both.height() > kSlack)
                    add(page, Overflow::Kind::Overlap, *texts[j]);
            }
    }
};
} // namespace

std::vector<Overflow> overflowOf(const Layout& layout) {
    Report report{layout, {}};
    for (std::size_t n = 0; n < layout.pages.size(); ++n) {
        const int page = static_cast<int>(n);
        std::vector<const TextItem*> texts;
        for (const Item& item : layout.pages[n].items)
            if (const auto* text = std::get_if<TextItem>(&item)) texts.push_back(text);
        for (const TextItem* text : texts) report.checkAlone(page, *text);
        report.checkPairs(page, texts);
    }
    return std::move(report.found);
}

Item moved(Item item, QPointF by) {
    if (auto* text = std::get_if<TextItem>(&item)) {
        text->at += by;
        text->box.translate(by);
    } else if (auto* stroke = std::get_if<StrokeItem>(&item)) {
        stroke->points.translate(by);
    } else {
        std::get<FillItem>(item).points.translate(by);
    }
    return item;
}

} // namespace bw
