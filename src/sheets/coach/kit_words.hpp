// SPDX-License-Identifier: GPL-3.0-or-later
// What the kit list says of kit and stations.
#pragma once
#include "blockwright/floor/kit_moves.hpp"
#include "sheets/sheet_layout.hpp"
#include "sheets/slot_words.hpp"

namespace bw {

class KitWords {
public:
    KitWords(const SheetMatter& matter, MassUnit unit) : matter_(matter), unit_(unit) {}

    [[nodiscard]] QString name(const KitId& kit) const;
    [[nodiscard]] QString counted(const KitId& kit, int units) const; // "12 × Kettlebell"
    [[nodiscard]] QString letter(const KitStation& station) const;
    [[nodiscard]] QString heading(const KitSection& section) const;
    [[nodiscard]] QString people(const KitSection& section) const;
    // "12, 16, 20 kg"; empty for kit that has none.
    [[nodiscard]] QString loads(const KitLine& line) const;
    // "already out, but for 8, 12 kg"; empty for kit that did not stand before.
    [[nodiscard]] QString standing(const KitMove& move) const;
    [[nodiscard]] QString shortage(const KitLine& line) const; // empty where there is enough
    [[nodiscard]] QString starting(const KitSection& section, std::size_t station) const;
    // "shared with G"; empty where nobody else takes it.
    [[nodiscard]] QString sharing(const KitSection& section, std::size_t station,
                                  const KitId& kit) const;

private:
    const SheetMatter& matter_;
    MassUnit unit_;
};

} // namespace bw
