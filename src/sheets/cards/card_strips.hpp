// SPDX-License-Identifier: GPL-3.0-or-later
// A card at a size of type: head and foot, and between them strips from above to below, none of
// which is ever parted.
#pragma once
#include "sheets/band.hpp"
#include "sheets/cards/card_content.hpp"

#include <algorithm>

namespace bw {

struct CardStrip {
    Band band;
    bool keeps = false; // on the same card as the next one
};

struct CardType {
    double em = 0;    // names and loads
    double least = 0; // of foot and small print
    double hair = 0;
    double writing = 0; // height that a hand needs to write a line
    [[nodiscard]] double small() const { return std::max(least, 0.88 * em); }
};

class CardSetter {
public:
    // The width of the card within its own border.
    CardSetter(const CardFrame& frame, const CardType& type, double width, const TypeRuler& ruler);

    [[nodiscard]] Band head(const QString& member, const QString& part) const;
    [[nodiscard]] Band foot(const QString& number) const;
    [[nodiscard]] std::vector<CardStrip> strips(const Card& card) const;

private:
    [[nodiscard]] double weekLeft(std::size_t week) const {
        return names_ + week_ * static_cast<double>(week);
    }
    void addBrief(std::vector<CardStrip>& strips, const CardPart& part) const;
    [[nodiscard]] Band partHead(const CardPart& part) const;
    [[nodiscard]] Band row(const CardRow& row, bool apart) const;
    void nameCell(Band& band, const CardRow& row) const;
    [[nodiscard]] double cell(Band& band, const CardCell& cell, std::size_t week, double top,
                              double room) const;
    // Whether a hand has room to write behind the loads, else below them.
    [[nodiscard]] bool beside(const CardRow& row) const;
    // `more` behind the text where there is room, else below it.
    void pair(Band& band, double left, double room, const QString& text, const PagePen::Look& look,
              const QString& more, const PagePen::Look& moreLook) const;

    const CardFrame& frame_;
    const CardType& t_;
    double width_, label_, names_ = 0, week_ = 0; // names_: where the first week begins
    const TypeRuler& ruler_;
};

} // namespace bw
