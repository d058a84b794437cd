// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/card_sheet.hpp"
#include "sheets/cards/card_strips.hpp"
#include "sheets/sheet_names.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>
#include <optional>

namespace bw {

namespace {
constexpr double kPointMm = 25.4 / 72;
constexpr double kLeastPoints = 7, kLargePoints = 12, kSizeStep = 0.94;
constexpr double kBorder = 8; // mm, of a card; white, for the knife

// How a page is parted. One card is a page.
struct Grid {
    int across = 1, down = 1;
    [[nodiscard]] int cards() const { return across * down; }
};

// Two: the page is cut across its longer side.
Grid gridOf(int cards, QSizeF paper) {
    if (cards >= 4) return {2, 2};
    if (cards >= 2) return paper.width() > paper.height() ? Grid{2, 1} : Grid{1, 2};
    return {};
}

struct Sizes {
    double least = 0, most = 0, hair = 0, writing = 0;
};

Sizes sizesFor(const SheetOptions& options, int cards) {
    const double scale = paperScale(options);
    const double least = options.largePrint ? kLargePoints : kLeastPoints * scale;
    const double most = options.largePrint ? 14 * scale : (cards >= 4 ? 8.5 : 10) * scale;
    return {kPointMm * least, kPointMm * most, 0.16 * scale, (cards >= 4 ? 4.2 : 4.7) * scale};
}

class CardPress {
public:
    CardPress(const CardFrame& frame, const SheetOptions& options, Grid grid,
              const TypeRuler& ruler)
        : frame_(frame), grid_(grid), ruler_(ruler), sizes_(sizesFor(options, grid.cards())),
          border_(kBorder * paperScale(options)) {
        const QSizeF paper = paperSize(options);
        cell_ = {paper.width() / grid.across, paper.height() / grid.down};
    }

    // None where the card does not fit on one side.
    std::optional<Band> fitted(const Card& card, const QString& number) const {
        for (double em = sizes_.most;; em = std::max(sizes_.least, kSizeStep * em)) {
            const CardType type = typeOf(em);
            const CardSetter setter(frame_, type, width(), ruler_);
            const Band head = setter.head(card.member, {}), foot = setter.foot(number);
            const auto strips = setter.strips(card);
            if (heightOf(strips) <= height() - head.height - foot.height)
                return side(head, foot, strips, 0, strips.size());
            if (em <= sizes_.least) return std::nullopt;
        }
    }
    // Over as many sides as it takes, at the least size.
    std::vector<Band> flowed(const Card& card, const QString& number) const {
        const CardType type = typeOf(sizes_.least);
        const CardSetter setter(frame_, type, width(), ruler_);
        const auto strips = setter.strips(card);
        const auto headOf = [&](int n) { return setter.head(card.member, sideText(n)); };
        const Band foot = setter.foot(number);
        std::vector<Band> sides;
        for (std::size_t from = 0; from < strips.size() || sides.empty();) {
            const Band head = headOf(static_cast<int>(sides.size()) + 1);
            const std::size_t end = endOfSide(strips, from, height() - head.height - foot.height);
            sides.push_back(side(head, foot, strips, from, end));
            from = end;
        }
        return sides;
    }
    [[nodiscard]] QPointF corner(int place) const {
        return {cell_.width() * (place % grid_.across) + border_,
                cell_.height() * (place / grid_.across) + border_};
    }
    [[nodiscard]] double border() const { return border_; }
    // Short lines at the edges and a cross in the middle, to cut along.
    void cutMarks(PagePen& pen) const {
        const double w = cell_.width() * grid_.across, h = cell_.height() * grid_.down;
        const double arm = 0.4 * border_;
        const auto tick = [&](QPointF middle, QPointF by) {
            pen.line(middle - by, middle + by, 2 * sizes_.hair, Ink::Hair);
        };
        const double edge = 0.75 * border_;
        if (grid_.across > 1)
            for (const double y : {edge, h - edge}) tick({w / 2, y}, {0, arm / 2});
        if (grid_.down > 1)
            for (const double x : {edge, w - edge}) tick({x, h / 2}, {arm / 2, 0});
        if (grid_.cards() < 4) return;
        tick({w / 2, h / 2}, {0, arm});
        tick({w / 2, h / 2}, {arm, 0});
    }

private:
    [[nodiscard]] CardType typeOf(double em) const {
        return {em, sizes_.least, sizes_.hair, sizes_.writing};
    }
    [[nodiscard]] double width() const { return cell_.width() - 2 * border_; }
    [[nodiscard]] double height() const { return cell_.height() - 2 * border_; }
    static QString sideText(int n) {
        if (n < 2) return {};
        return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "continued, side %1")).arg(n);
    }
    static double heightOf(const std::vector<CardStrip>& strips) {
        double sum = 0;
        for (const CardStrip& s : strips) sum += s.band.height;
        return sum;
    }
    // Groups stay whole while they fit on a side.
    static std::size_t endOfSide(const std::vector<CardStrip>& strips, std::size_t from,
                                 double room) {
        std::size_t end = from, whole = from;
        for (double used = 0; end < strips.size(); ++end) {
            used += strips[end].band.height;
            if (used > room && end > from) break;
            if (!strips[end].keeps) whole = end + 1;
        }
        if (end == strips.size()) return end;
        return whole > from ? whole : end;
    }
    Band side(const Band& head, const Band& foot, const std::vector<CardStrip>& strips,
              std::size_t from, std::size_t end) const {
        Band out;
        PagePen pen(ruler_, out.items);
        pen.put(head.items, {});
        double y = head.height, used = 0;
        for (std::size_t i = from; i < end; ++i) used += strips[i].band.height;
        // what is left goes between the rows, up to a third more
        const double spare = height() - head.height - foot.height - used;
        const double n = std::max(1.0, static_cast<double>(end - from));
        const double air = std::clamp(spare / n, 0.0, 0.33 * sizes_.writing);
        for (std::size_t i = from; i < end; ++i) {
            pen.put(strips[i].band.items, {0, y});
            y += strips[i].band.height + air;
        }
        pen.put(foot.items, {0, height() - foot.height});
        return out;
    }

    const CardFrame& frame_;
    Grid grid_;
    const TypeRuler& ruler_;
    Sizes sizes_;
    double border_;
    QSizeF cell_;
};

QString numberText(std::size_t n, std::size_t all) {
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "card %1 of %2")).arg(n).arg(all);
}

class CardSheets {
public:
    CardSheets(const SheetMatter& matter, const SheetOptions& options,
               const SheetProgress& progress)
        : options_(options), progress_(progress), ruler_(options.family),
          frame_(cardFrame(matter, options)),
          layout_(emptyLayout(SheetKind::Cards, matter.block, options)) {}

    // False: stopped.
    bool write(const SheetMatter& matter) {
        const Ledger none(
            matter.gym, Date::of(matter.block.month.year(), matter.block.month.month(), 1).value());
        const Ledger& ledger = matter.ledger ? *matter.ledger : none;
        MonthTargets targets(matter.gym, matter.block);
        std::vector<const Member*> members;
        for (const Member& m : matter.gym.members)
            if (m.active) members.push_back(&m);
        for (const Member* m : members) {
            if (!tell(cards_.size(), 2 * members.size())) return false;
            cards_.push_back(cardOf(matter, *m, targets.of(ledger, *m), options_.massUnit));
        }
        return true;
    }
    bool set() {
        for (int perPage = options_.cardsPerPage;; perPage /= 2) {
            const Grid grid = gridOf(cards_.empty() ? 1 : perPage, layout_.paper);
            const CardPress press(frame_, options_, grid, ruler_);
            const auto done = sides(press, grid.cards() == 1);
            if (stopped_) return false;
            if (!done) continue;
            layout_.margin = press.border();
            layout_.cardsPerPage = grid.cards();
            assemble(press, grid, *done);
            return true;
        }
    }
    Layout take() { return std::move(layout_); }

private:
    bool tell(std::size_t done, std::size_t all) {
        stopped_ = progress_ && !progress_(static_cast<int>(done), static_cast<int>(all));
        return !stopped_;
    }
    // None: stopped, or some card does not fit.
    std::optional<std::vector<Band>> sides(const CardPress& press, bool mayFlow) {
        std::vector<Band> out;
        for (std::size_t i = 0; i < cards_.size(); ++i) {
            if (!tell(cards_.size() + i, 2 * cards_.size())) return std::nullopt;
            const QString number = numberText(i + 1, cards_.size());
            if (auto one = press.fitted(cards_[i], number)) {
                out.push_back(std::move(*one));
                continue;
            }
            if (!mayFlow) return std::nullopt;
            for (Band& band : press.flowed(cards_[i], number)) out.push_back(std::move(band));
        }
        return out;
    }
    void assemble(const CardPress& press, Grid grid, const std::vector<Band>& all) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            const int place = static_cast<int>(i) % grid.cards();
            if (place == 0) {
                layout_.pages.emplace_back();
                PagePen pen(ruler_, layout_.pages.back().items);
                press.cutMarks(pen);
            }
            PagePen(ruler_, layout_.pages.back().items).put(all[i].items, press.corner(place));
        }
    }

    const SheetOptions& options_;
    const SheetProgress& progress_;
    TypeRuler ruler_;
    CardFrame frame_;
    Layout layout_;
    std::vector<Card> cards_;
    bool stopped_ = false;
};
} // namespace

Layout layoutCards(const SheetMatter& matter, const SheetOptions& options,
                   const SheetProgress& progress) {
    CardSheets sheets(matter, options, progress);
    if (!sheets.write(matter) || !sheets.set())
        return emptyLayout(SheetKind::Cards, matter.block, options);
    return sheets.take();
}

} // namespace bw
