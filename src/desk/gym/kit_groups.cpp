// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/kit_groups.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace bw {

namespace {
enum Part { Bars, Hands, Stands, Lanes, Small, Own, kParts };

struct Known {
    std::string_view id;
    Part part;
};
constexpr std::array kKnown{Known{"barbell", Bars},        Known{"trap-bar", Bars},
                            Known{"landmine", Bars},       Known{"plate", Bars},
                            Known{"rack", Bars},           Known{"kettlebell", Hands},
                            Known{"dumbbell", Hands},      Known{"medicine-ball", Hands},
                            Known{"slam-ball", Hands},     Known{"sandbag", Hands},
                            Known{"bench", Stands},        Known{"box", Stands},
                            Known{"low-step", Stands},     Known{"pull-up-station", Stands},
                            Known{"dip-station", Stands},  Known{"rings", Stands},
                            Known{"straps", Stands},       Known{"cable-tower", Stands},
                            Known{"band-tower", Stands},   Known{"sled-lane", Lanes},
                            Known{"air-bike", Lanes},      Known{"rowing-machine", Lanes},
                            Known{"heavy-rope", Lanes},    Known{"mat", Small},
                            Known{"mini-band", Small},     Known{"long-band", Small},
                            Known{"slider", Small},        Known{"skipping-rope", Small},
                            Known{"hurdle", Small},        Known{"foam-roller", Small},
                            Known{"stability-ball", Small}};

Part partOf(const KitId& id) {
    const auto it = std::find_if(kKnown.begin(), kKnown.end(),
                                 [&](const Known& k) { return k.id == id.text(); });
    return it == kKnown.end() ? Own : it->part;
}

QString titleOf(int part) {
    const auto tr = [](const char* text) {
        return QCoreApplication::translate("bw::KitGroups", text);
    };
    switch (part) {
    case Bars: return tr("Bars and plates");
    case Hands: return tr("Bells, balls and bags");
    case Stands: return tr("Stands and stations");
    case Lanes: return tr("Lanes and machines");
    case Small: return tr("Small kit");
    default: return tr("This gym's own");
    }
}
} // namespace

std::vector<KitGroup> kitGroups(const Gym& gym) {
    std::vector<KitGroup> groups;
    for (int part = 0; part < kParts; ++part) {
        KitGroup group{titleOf(part), {}};
        for (const KitItem& item : gym.kit)
            if (partOf(item.id) == part) group.kit.push_back(item.id);
        if (part == Own || !group.kit.empty()) groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace bw
