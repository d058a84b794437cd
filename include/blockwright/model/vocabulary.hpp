// SPDX-License-Identifier: GPL-3.0-or-later
// The closed word lists of the trade that the engine computes with, and their spelling in a bundle.
// Roles, muscles and ways of loading are open lists (a gym may add words): shippedRoles() and its
// siblings give the words that come with the program.
#pragma once
#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace bw {

enum class Pattern {
    Squat,
    Hinge,
    Lunge,
    HorizontalPush,
    VerticalPush,
    HorizontalPull,
    VerticalPull,
    Carry,
    Rotation,
    TrunkStability,
    Locomotion,
    Mobility
};
enum class Plane { Sagittal, Frontal, Transverse };
enum class Demand { Grip, Lumbar, Overhead, Knee, Impact, Breath };
enum class Sides { Both, Each, Alternating }; // Each: the dose is per side; Alternating: in total
enum class Measure { Reps, Seconds, Metres, Kcal };
enum class SectionKind { WarmUp, Power, Strength, Finisher };
enum class Format { HeavyThenLong, Opposed, HeavyThenFast, StraightHeavy, RoundTrip };
enum class RoundsMode { Low, Open, High }; // which of a group's rounds a week asks for
enum class Intent { Learn, Build, Challenge };
enum class Claim { Set, Group };       // kit given back after a set, or on leaving the group
enum class FlagLevel { Avoid, Limit }; // no demand of 1 or more; none of 3
// Of a finding. Stop: can't be run as drafted. Look: a coach should decide. Note: for information.
enum class Level { Stop, Look, Note };
enum class MassUnit { Kg, Lb };
enum class Paper { A4, Letter, A3 };

// The spellings, in the order of the enumerators.
template <class E> struct Spelling;
template <> struct Spelling<Pattern> {
    static constexpr std::array<std::string_view, 12> words{
        "squat",         "hinge", "lunge",    "horizontal-push", "vertical-push", "horizontal-pull",
        "vertical-pull", "carry", "rotation", "trunk-stability", "locomotion",    "mobility"};
};
template <> struct Spelling<Plane> {
    static constexpr std::array<std::string_view, 3> words{"sagittal", "frontal", "transverse"};
};
template <> struct Spelling<Demand> {
    static constexpr std::array<std::string_view, 6> words{"grip", "lumbar", "overhead",
                                                           "knee", "impact", "breath"};
};
template <> struct Spelling<Sides> {
    static constexpr std::array<std::string_view, 3> words{"both", "each", "alternating"};
};
template <> struct Spelling<Measure> {
    static constexpr std::array<std::string_view, 4> words{"reps", "seconds", "metres", "kcal"};
};
template <> struct Spelling<SectionKind> {
    static constexpr std::array<std::string_view, 4> words{"warm-up", "power", "strength",
                                                           "finisher"};
};
template <> struct Spelling<Format> {
    static constexpr std::array<std::string_view, 5> words{
        "heavy-then-long", "opposed", "heavy-then-fast", "straight-heavy", "round-trip"};
};
template <> struct Spelling<RoundsMode> {
    static constexpr std::array<std::string_view, 3> words{"low", "open", "high"};
};
template <> struct Spelling<Intent> {
    static constexpr std::array<std::string_view, 3> words{"learn", "build", "challenge"};
};
template <> struct Spelling<Claim> {
    static constexpr std::array<std::string_view, 2> words{"set", "group"};
};
template <> struct Spelling<FlagLevel> {
    static constexpr std::array<std::string_view, 2> words{"avoid", "limit"};
};
template <> struct Spelling<Level> {
    static constexpr std::array<std::string_view, 3> words{"stop", "look", "note"};
};
template <> struct Spelling<MassUnit> {
    static constexpr std::array<std::string_view, 2> words{"kg", "lb"};
};
template <> struct Spelling<Paper> {
    static constexpr std::array<std::string_view, 3> words{"A4", "Letter", "A3"};
};

template <class E> inline constexpr std::size_t kCount = Spelling<E>::words.size();

template <class E> [[nodiscard]] constexpr std::string_view wordOf(E e) {
    return Spelling<E>::words[static_cast<std::size_t>(e)];
}
template <class E> [[nodiscard]] constexpr std::optional<E> fromWord(std::string_view word) {
    for (std::size_t i = 0; i < kCount<E>; ++i)
        if (Spelling<E>::words[i] == word) return static_cast<E>(i);
    return std::nullopt;
}

[[nodiscard]] std::span<const std::string_view> shippedRoles();
[[nodiscard]] std::span<const std::string_view> shippedMuscles();
[[nodiscard]] std::span<const std::string_view> shippedLoads();

} // namespace bw
