// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall_sheet.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/wall/wall_bands.hpp"
#include "sheets/wall/wall_rows.hpp"

#include <algorithm>
#include <optional>

namespace bw {

namespace {
constexpr int kSizeSteps = 7;         // halvings of the span of sizes
constexpr double kHintsMayCost = 0.9; // easier and harder may make names this much smaller
constexpr double kLeastNameEms = 6;   // width of the names

class Planner {
public:
    Planner(const WallContent& content, const SheetOptions& options, const TypeRuler& ruler)
        : content_(content), options_(options), ruler_(ruler), bounds_(wallBounds(options, ruler)) {
        const WallType type = wallType(options, {}, ruler);
        const double width = paperSize(options).width() - 2 * paperMargin(options);
        title_ = titleBand(content, type, width, ruler);
        running_ = runningBand(content, type, width, ruler);
        foot_ = footBand(content, type, width, 100, 100, ruler).height;
    }

    // Fewest pages first, then the largest type, with easier and harder if they cost little of it.
    // Not sound only if some name or dose alone is longer than a page.
    WallPlan best() const {
        std::vector<WallPlan> smallest;
        for (int bits = 0; bits < 8; ++bits) {
            WallPlan p =
                plan({bounds_.floor, bool(bits & 1), bool(bits & 2), bool(bits & 4), false});
            if (p.sound) smallest.push_back(std::move(p));
        }
        if (smallest.empty()) smallest.push_back(plan({bounds_.floor, false, false, false, true}));
        const auto fewer = [](const WallPlan& a, const WallPlan& b) {
            return a.pages.size() < b.pages.size();
        };
        const auto least = std::min_element(smallest.begin(), smallest.end(), fewer)->pages.size();
        std::optional<WallPlan> bare, hinted;
        for (WallPlan& p : smallest) {
            if (p.pages.size() > least) continue;
            auto& kept = p.style.hints ? hinted : bare;
            WallPlan grown = grow(std::move(p), least);
            if (!kept || grown.type.key > kept->type.key) kept = std::move(grown);
        }
        const bool keepHints =
            hinted && (!bare || hinted->type.key >= kHintsMayCost * bare->type.key);
        return keepHints ? *hinted : *bare;
    }
    [[nodiscard]] const Band& title() const { return title_; }
    [[nodiscard]] const Band& running() const { return running_; }

private:
    WallPlan plan(const WallStyle& style) const {
        WallPlan p;
        p.style = style;
        p.type = wallType(options_, style, ruler_);
        p.columns = wallColumns(content_, options_, style, p.type, ruler_);
        p.boxes = wallBoxes(content_, style, p.type, p.columns, ruler_);
        if (p.columns.tempoWidth + p.columns.effortWidth > 0) p.columnHeads = 1.5 * p.type.small;
        const double body =
            paperSize(options_).height() - 2 * paperMargin(options_) - foot_ - p.columnHeads;
        const WallRoom room{body - title_.height, body - running_.height};
        p.pages = wallFlow(p.boxes, p.type, room);
        p.sound = p.columns.nameWidth >= kLeastNameEms * p.type.key && fitsPages(p.pages, room);
        return p;
    }
    // The largest type that keeps to so many pages.
    WallPlan grow(WallPlan best, std::size_t pages) const {
        double low = bounds_.floor, high = bounds_.ceiling;
        for (int i = 0; i < kSizeSteps; ++i) {
            WallStyle style = best.style;
            style.em = (low + high) / 2;
            WallPlan p = plan(style);
            const bool fits = p.sound && !p.boxes.cramped && p.pages.size() <= pages;
            (fits ? low : high) = style.em;
            if (fits) best = std::move(p);
        }
        return best;
    }

    const WallContent& content_;
    const SheetOptions& options_;
    const TypeRuler& ruler_;
    WallBounds bounds_;
    Band title_, running_;
    double foot_ = 0;
};
} // namespace

Layout layoutWall(const Gym& gym, const Block& block, const SheetOptions& options) {
    const TypeRuler ruler(options.family);
    const WallContent content = wallContent(gym, block, options);
    const Planner planner(content, options, ruler);
    const WallPlan plan = planner.best();
    if (!plan.sound && options.largePrint) { // a row longer than a page
        SheetOptions usual = options;
        usual.largePrint = false;
        return layoutWall(gym, block, usual);
    }
    Layout layout = emptyLayout(SheetKind::Wall, block, options);
    layout.keyCap = ruler.cap(plan.boxes.smallestKey);
    const int pages = static_cast<int>(plan.pages.size());
    const double width = layout.paper.width() - 2 * layout.margin;
    for (int n = 0; n < pages; ++n) {
        SheetPage page;
        PagePen pen(ruler, page.items);
        const Band& top = n == 0 ? planner.title() : planner.running();
        pen.put(top.items, {layout.margin, layout.margin});
        drawWallRows(pen, content, plan, static_cast<std::size_t>(n), layout.margin + top.height);
        const Band foot = footBand(content, plan.type, width, n + 1, pages, ruler);
        pen.put(foot.items, {layout.margin, layout.paper.height() - layout.margin - foot.height});
        layout.pages.push_back(std::move(page));
    }
    return layout;
}

} // namespace bw
