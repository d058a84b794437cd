// SPDX-License-Identifier: GPL-3.0-or-later
// One JSON file for exchange (docs/bundle.md). Reading lists every fault, each with the JSON
// pointer (RFC 6901) of where it is; a bundle with one error gives nothing at all.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/member.hpp"
#include "blockwright/model/message.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bw {

// The parts of a bundle; a part that was not there is empty (settings: none).
struct Bundle {
    std::optional<GymSettings> settings;
    bool hasKit = false, hasShelf = false;
    std::vector<KitItem> kit;
    std::vector<Exercise> shelf;
    std::vector<Block> blocks;
    std::vector<Member> members;
    std::vector<LiftResult> results;
    Extras extras, gymExtras;
};

struct BundleFault {
    std::string pointer; // "/blocks/0/sections/2/groups/0/slots/1/reps"
    Message text;
};

struct BundleReading {
    std::optional<Bundle> bundle;    // none when there is an error
    std::vector<BundleFault> errors; // in the order of the file; at most kMostFaults, then a last
                                     // one that says how many more
    std::vector<BundleFault> notes;  // keys not known (kept), numbers rounded to their grain
};

inline constexpr std::size_t kMostBundleBytes = 32u << 20;
inline constexpr int kDeepestBundle = 64;
inline constexpr std::size_t kMostFaults = 200;

// What an id may refer to besides the bundle itself: the gym it will be laid over.
// Null: only the bundle; then a reference to a part the bundle does not have is not followed.
// Settings that the bundle leaves out keep the value they have in that gym.
[[nodiscard]] BundleReading readBundle(std::string_view json, const Gym* over = nullptr);

// Lays the bundle's parts over the gym: by id, by month; the bundle wins. Results are not part of a
// gym.
void layOver(Gym& gym, const Bundle& bundle);

// All parts of a gym as a bundle, and a bundle as text (two-space indent, keys in the documented
// order, numbers as short as they can be, ends with a newline).
[[nodiscard]] Bundle bundleOf(const Gym& gym, std::vector<LiftResult> results = {});
[[nodiscard]] std::string writeBundle(const Bundle& bundle);

// The Shelf and the words for kit that come with the program (kit with 0 units).
[[nodiscard]] const Bundle& shippedShelf();

} // namespace bw
