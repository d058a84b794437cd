// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board/board_ink.hpp"
#include "sheets/ink.hpp"

namespace bw {

QColor boardGround(bool dark) { return dark ? QColor(0x12, 0x17, 0x19) : QColor(Qt::white); }

QColor boardColour(Ink ink, bool dark) {
    if (!dark) return colourOf(ink, false);
    switch (ink) {
    case Ink::Text: return {0xF2, 0xF4, 0xF4};
    case Ink::Quiet: return {0xB4, 0xBE, 0xBF};
    case Ink::Accent: return {0x6F, 0xCF, 0xC8};
    case Ink::Hair: return {0x5E, 0x6A, 0x6C};
    case Ink::Tint: break;
    }
    return {0x24, 0x33, 0x36};
}

} // namespace bw
