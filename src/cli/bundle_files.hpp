// SPDX-License-Identifier: GPL-3.0-or-later
// Bundles named on the command line, laid over each other in order. All faults of all of them go to
// standard error as "FILE: /json/pointer: what is wrong", then the command ends.
#pragma once
#include "interchange/bundle.hpp"

#include <string>
#include <vector>

namespace bw::cli {

struct LaidBundles {
    Gym gym;    // the ground with everything laid over it
    Bundle all; // the parts of all bundles as one; where two say the same, the later stands last
};

// Over a gym that has a Shelf already.
[[nodiscard]] LaidBundles layOverGround(const std::vector<std::string>& files, Gym ground);
// Over nothing; when none of the bundles brings a Shelf, over the one that comes with the program.
[[nodiscard]] LaidBundles layAlone(const std::vector<std::string>& files);

[[nodiscard]] Gym shippedGround();

} // namespace bw::cli
