// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach does to the gym itself: settings, kit, Shelf; bringing a bundle in.
#pragma once
#include "edit/block_verbs.hpp"
#include "interchange/bundle.hpp"

namespace bw {

[[nodiscard]] std::size_t lengthOf(std::string_view text); // code points of UTF-8

[[nodiscard]] Did setSettings(OpenGym& gym, GymSettings settings);
[[nodiscard]] Did putKit(OpenGym& gym, KitItem item);
[[nodiscard]] Did putExercise(OpenGym& gym, Exercise exercise);

// A first entry for a name that is not on the Shelf yet: reps, 3 s a rep, bodyweight, no kit; the
// id is made from the name and unique. Why() when the name is empty or longer than 200 characters.
[[nodiscard]] Result<Exercise> newExercise(const Gym& gym, std::string_view name, Pattern pattern);

// Puts the exercise on the Shelf and into the slot: one step.
[[nodiscard]] Did addAndSetExercise(OpenGym& gym, Spot slot, Exercise exercise);

// Everything of the bundle into the gym file, all or nothing; can't be undone.
[[nodiscard]] Did importBundle(OpenGym& gym, const Bundle& bundle);
// A new gym in a new file: the words for kit, the shipped Shelf, then the bundle if there is one.
[[nodiscard]] Result<std::unique_ptr<OpenGym>> createGym(const std::filesystem::path& path,
                                                         const Bundle* bundle = nullptr);

} // namespace bw
