// SPDX-License-Identifier: GPL-3.0-or-later
// What a small gym usually has: common practice, no source.
#include "edit/kit_verbs.hpp"

#include <algorithm>
#include <array>

namespace bw {

namespace {
struct Usual {
    std::string_view id;
    int forTwelve; // in a class of twelve
    bool owned = false;
};
constexpr std::array kUsual{Usual{"mat", 12, true},
                            Usual{"mini-band", 12},
                            Usual{"long-band", 12, true},
                            Usual{"kettlebell", 12, true},
                            Usual{"dumbbell", 24, true},
                            Usual{"barbell", 6, true},
                            Usual{"rack", 4, true},
                            Usual{"bench", 6, true},
                            Usual{"box", 6, true},
                            Usual{"low-step", 4},
                            Usual{"medicine-ball", 6},
                            Usual{"slam-ball", 4},
                            Usual{"sandbag", 4},
                            Usual{"slider", 12},
                            Usual{"rings", 4},
                            Usual{"straps", 4},
                            Usual{"skipping-rope", 12},
                            Usual{"hurdle", 6},
                            Usual{"plate", 12, true},
                            Usual{"foam-roller", 6},
                            Usual{"stability-ball", 4},
                            Usual{"landmine", 2},
                            Usual{"pull-up-station", 2, true},
                            Usual{"air-bike", 2},
                            Usual{"rowing-machine", 2},
                            Usual{"band-tower", 2}};

const Usual* usualOf(const KitId& id) {
    const auto it = std::find_if(kUsual.begin(), kUsual.end(),
                                 [&](const Usual& u) { return u.id == id.text(); });
    return it == kUsual.end() ? nullptr : &*it;
}
} // namespace

int usualUnits(const KitId& id, int places) {
    constexpr int kTwelve = 12;
    const Usual* usual = usualOf(id);
    if (!usual) return 1;
    return std::clamp((usual->forTwelve * places + kTwelve - 1) / kTwelve, 1, kMostPieces);
}

bool usuallyOwned(const KitId& id) {
    const Usual* usual = usualOf(id);
    return usual && usual->owned;
}

} // namespace bw
