// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet that is read from above to below, over as many pages as it takes: a title on the first
// page, one line on later ones, a foot on all. What is put is never parted; what keeps together
// is parted only when it is longer than a page.
#pragma once
#include "sheets/band.hpp"
#include "sheets/flow/sheet_type.hpp"
#include "sheets/sheet_words.hpp"

#include <functional>

namespace bw {

struct SheetWords {
    QString kicker, title, sentence; // title band
    QString running, whose;          // head of later pages; foot of all
    QString note;                    // in the foot, above whose page it is
};
// Month, block, gym and date; the caution stands in the note of what members read.
[[nodiscard]] SheetWords sheetWords(SheetKind kind, const Gym& gym, const Block& block,
                                    const SheetOptions& options);

class SheetFlow {
public:
    SheetFlow(SheetKind kind, const Block& block, SheetWords words, const SheetOptions& options,
              SheetReader reader = SheetReader::Sitting);

    enum class Keep { WithNext, Free };

    [[nodiscard]] const SheetType& type() const { return type_; }
    [[nodiscard]] const TypeRuler& ruler() const { return ruler_; }
    [[nodiscard]] double width() const { return width_; }

    // `gap` is above it, and falls away at the top of a page.
    void put(Band band, double gap, Keep keep = Keep::Free);
    // A paragraph, line by line.
    void text(const QString& text, const PagePen::Look& look, double gap, Keep keep = Keep::Free,
              double indent = 0);
    void heading(const QString& text, const QString& right = {});
    void turnPage() { turn_ = true; }

    [[nodiscard]] Layout done();

private:
    struct Piece {
        Band band;
        double gap = 0;
        bool keeps = false, turns = false;
    };
    [[nodiscard]] std::size_t chainEnd(std::size_t from) const;
    [[nodiscard]] double chainHeight(std::size_t from, std::size_t end) const;
    void place(const Piece& piece);
    void fill();
    [[nodiscard]] Band titleBand() const;
    [[nodiscard]] Band runningBand() const;
    [[nodiscard]] Band footBand(int page, int pages) const;
    [[nodiscard]] double room() const;

    SheetWords words_;
    TypeRuler ruler_;
    SheetType type_;
    Layout layout_;
    double width_, foot_ = 0, top_ = 0, used_ = 0;
    bool fresh_ = true, turn_ = false;
    std::vector<Piece> pieces_;
};

// For a reader who stands, unless that takes more pages.
[[nodiscard]] Layout forStanding(const std::function<Layout(SheetReader)>& layOut);

} // namespace bw
