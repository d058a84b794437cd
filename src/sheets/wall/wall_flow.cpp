// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_flow.hpp"

#include <algorithm>

namespace bw {

namespace {
// When a page has room left, a part of it goes between the rows and the rest into the gaps.
constexpr double kRowShare = 0.6, kMostRowAir = 0.35; // of the room; of the type's size
constexpr double kMostStretch = 1.2;                  // of a gap

class Flow {
public:
    Flow(const WallBoxes& boxes, const WallType& type, WallRoom room)
        : boxes_(boxes), type_(type), room_(room) {}

    WallPages run() {
        pages_.emplace_back();
        for (int s = 0; s < static_cast<int>(boxes_.sections.size()); ++s) section(s);
        for (std::size_t i = 0; i < pages_.size(); ++i) settle(pages_[i], roomOf(i));
        return std::move(pages_);
    }

private:
    [[nodiscard]] double roomOf(std::size_t page) const {
        return page == 0 ? room_.firstPage : room_.laterPages;
    }
    [[nodiscard]] const SectionBox& box(int s) const {
        return boxes_.sections[static_cast<std::size_t>(s)];
    }
    [[nodiscard]] double left() const { return roomOf(pages_.size() - 1) - used_; }
    [[nodiscard]] bool fresh() const { return pages_.back().empty(); }
    void turn() {
        pages_.emplace_back();
        used_ = 0;
    }

    void section(int s) {
        const double whole = heightOf(s);
        const bool fitsHere = whole + (fresh() ? 0 : type_.sectionGap()) <= left();
        if (!fitsHere && !fresh()) turn();
        const auto& groups = box(s).groups;
        if (groups.empty()) place(startOf(s, -1, false));
        for (int g = 0; g < static_cast<int>(groups.size()); ++g) group(s, g);
    }
    double heightOf(int s) const {
        const auto& groups = box(s).groups;
        if (groups.empty()) return box(s).head + box(s).least;
        double h = box(s).head + std::max(box(s).least, groups[0].height(0, groups[0].rows.size()));
        for (std::size_t g = 1; g < groups.size(); ++g)
            h += type_.groupGap() + groups[g].height(0, groups[g].rows.size());
        return h;
    }
    WallPiece startOf(int s, int g, bool again) const {
        WallPiece piece;
        piece.section = s;
        piece.group = g;
        piece.head = g <= 0 || again;
        piece.again = again;
        piece.headHeight = piece.head ? box(s).head : 0;
        piece.gap = fresh() ? 0 : piece.head ? type_.sectionGap() : type_.groupGap();
        piece.height = box(s).least;
        return piece;
    }
    void group(int s, int g) {
        const GroupBox& b = box(s).groups[static_cast<std::size_t>(g)];
        std::size_t first = 0;
        WallPiece piece = startOf(s, g, fresh() && g > 0);
        if (piece.gap + piece.headHeight + b.height(0, b.rows.size()) > left() && !fresh()) {
            turn();
            piece = startOf(s, g, g > 0);
        }
        if (fresh() && pages_.size() == 1 && piece.headHeight + b.height(0, 1) > left()) turn();
        while (first < b.rows.size()) {
            std::size_t end = b.rows.size();
            while (end > first + 1 && piece.headHeight + piece.gap + b.height(first, end) > left())
                --end;
            piece.first = first;
            piece.end = end;
            piece.opens = first == 0;
            piece.closes = end == b.rows.size();
            piece.height = std::max(piece.head ? box(s).least : 0, b.height(first, end));
            place(piece);
            first = end;
            if (first == b.rows.size()) break;
            turn();
            piece = startOf(s, g, true);
        }
    }
    void place(const WallPiece& piece) {
        used_ += piece.gap + piece.headHeight + piece.height;
        pages_.back().push_back(piece);
    }
    void settle(std::vector<WallPiece>& page, double room) const {
        double gaps = 0, used = 0;
        std::size_t rows = 0;
        for (const WallPiece& p : page) {
            gaps += p.gap;
            used += p.gap + p.headHeight + p.height;
            rows += p.end - p.first;
        }
        double spare = std::max(0.0, room - used);
        const double n = std::max(1.0, static_cast<double>(rows));
        const double air = std::min(kRowShare * spare / n, kMostRowAir * type_.key);
        spare -= air * static_cast<double>(rows);
        spread(page, air, gaps > 0 ? std::min(spare / gaps, kMostStretch) : 0);
    }
    static void spread(std::vector<WallPiece>& page, double air, double stretch) {
        double y = 0;
        for (WallPiece& p : page) {
            p.gap *= 1 + stretch;
            p.height += air * static_cast<double>(p.end - p.first);
            p.top = y + p.gap;
            y = p.top + p.headHeight + p.height;
        }
    }

    const WallBoxes& boxes_;
    const WallType& type_;
    WallRoom room_;
    WallPages pages_;
    double used_ = 0;
};
} // namespace

bool fitsPages(const WallPages& pages, WallRoom room) {
    for (std::size_t n = 0; n < pages.size(); ++n) {
        const double bottom = (n == 0 ? room.firstPage : room.laterPages) + 0.01;
        for (const WallPiece& p : pages[n])
            if (p.top + p.headHeight + p.height > bottom) return false;
    }
    return true;
}

WallPages wallFlow(const WallBoxes& boxes, const WallType& type, WallRoom room) {
    return Flow(boxes, type, room).run();
}

} // namespace bw
