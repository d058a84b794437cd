// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a bundle, one reader each. A part that can't be whole gives nothing, or what could
// be read of it; the faults say which, and then no bundle comes of it.
#pragma once
#include "interchange/bundle.hpp"
#include "interchange/fields.hpp"
#include "interchange/references.hpp"

namespace bw {

struct Reading : Reader {
    Reading(const json::Tree& t, Faults& f) : Reader{t, f}, refs(*this) {}
    Reading(const Reading&) = delete;
    Reading& operator=(const Reading&) = delete;
    References refs;
};

// Keys of "gym" that are not there keep the value of `settings`.
void readGym(Reading& r, json::Node n, Bundle& into, const GymSettings& settings);
[[nodiscard]] std::optional<KitItem> readKit(Reading& r, json::Node n);
[[nodiscard]] std::optional<Exercise> readExercise(Reading& r, json::Node n);
[[nodiscard]] std::optional<LimitValue> readLimit(Reading& r, json::Node n);
[[nodiscard]] std::optional<Block> readBlock(Reading& r, json::Node n);
[[nodiscard]] std::optional<Acceptance> readAcceptance(Reading& r, json::Node n);
[[nodiscard]] Section readSection(Reading& r, json::Node n);
[[nodiscard]] std::optional<Slot> readSlot(Reading& r, json::Node n);
[[nodiscard]] std::optional<Member> readMember(Reading& r, json::Node n);
[[nodiscard]] std::optional<LiftResult> readResult(Reading& r, json::Node n);

// One id out of a list, or role, muscle, way of loading.
[[nodiscard]] std::vector<ExerciseId> readNeighbours(Reading& r, json::Node n);
[[nodiscard]] std::optional<RoleId> readRole(Reading& r, json::Node n);

// The items of a list, without those that could not be read.
template <class T, class F> [[nodiscard]] std::vector<T> readList(Reading& r, json::Node n, F one,
                                                                  std::size_t most = SIZE_MAX) {
    std::vector<T> out;
    eachChild(
        r, n, json::Kind::Array,
        [&](json::Node item) {
            if (std::optional<T> value = one(r, item)) out.push_back(std::move(*value));
        },
        most);
    return out;
}

} // namespace bw
