// SPDX-License-Identifier: GPL-3.0-or-later
// A strip of a page whose items stand relative to its own top left corner, and a writer of lines
// into it.
#pragma once
#include "sheets/page_pen.hpp"

namespace bw {

inline constexpr double kPitch = 1.18; // of a line, in ems

struct Band {
    std::vector<Item> items;
    double height = 0;
};

// Writes lines one below the other into a band, from its present height down.
class BandColumn {
public:
    // `left` is where the lines begin, `width` how long they may be.
    BandColumn(Band& band, const TypeRuler& ruler, double width, double left = 0)
        : band_(band), pen_(ruler, band.items), width_(width), left_(left) {}

    void add(const QString& text, const PagePen::Look& look);
    // On two lines at most: as large as the look says, not below `least`.
    void addFitted(const QString& text, PagePen::Look look, double least);
    void space(double mm) { band_.height += mm; }

private:
    Band& band_;
    PagePen pen_;
    double width_, left_;
};

// Full lines, but no last line of a word or two.
[[nodiscard]] QStringList proseLines(const TypeRuler& ruler, const QString& text, Type type,
                                     double width);

} // namespace bw
