// SPDX-License-Identifier: GPL-3.0-or-later
// Gyms to store: drawn ones that use every feature of the model, and the comparison of two.
#pragma once
#include "blockwright/model/gym.hpp"
#include "store/gym_file.hpp"

#include <cstdint>
#include <filesystem>
#include <random>
#include <string>
#include <vector>

namespace bw::test {

// The same numbers on every machine for the same seed.
class Draw {
public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    std::int64_t number(std::int64_t lo, std::int64_t hi); // both included
    bool chance(int percent) { return number(1, 100) <= percent; }
    std::string
    text(int most); // any bytes a coach or a bundle may bring, NUL and quotes among them
    std::string idText();
    template <class E> E word() { return static_cast<E>(number(0, std::int64_t{kCount<E>} - 1)); }

private:
    std::mt19937_64 engine_;
};

struct Size {
    int kit = 6, exercises = 12, months = 3, members = 5;
};
[[nodiscard]] Gym drawGym(Draw& draw, const Size& size = {});
[[nodiscard]] Exercise drawExercise(Draw& draw, const std::string& id);
[[nodiscard]] Block drawBlock(Draw& draw, Month month);
[[nodiscard]] Member drawMember(Draw& draw, const std::string& id);
[[nodiscard]] KitItem drawKit(Draw& draw, const std::string& id);
[[nodiscard]] GymSettings drawSettings(Draw& draw);
[[nodiscard]] LiftResult drawResult(Draw& draw, const MemberId& member);

// What puts all of a gym into an empty file.
[[nodiscard]] std::vector<Change> changesFor(const Gym& gym);
// Empty when the two are equal, lists in the same order; else names the first part that differs.
[[nodiscard]] std::string difference(const Gym& a, const Gym& b);

[[nodiscard]] inline MemberId memberId(std::string_view id) { return MemberId::parse(id).value(); }
[[nodiscard]] inline Date date(std::string_view text) { return Date::parse(text).value(); }
// Of a file that must open, load and take changes.
[[nodiscard]] std::unique_ptr<GymFile> made(const std::filesystem::path& path);
[[nodiscard]] std::unique_ptr<GymFile> opened(const std::filesystem::path& path,
                                              GymFile::Access access = GymFile::Access::Write);
[[nodiscard]] Gym loaded(const std::filesystem::path& path);
[[nodiscard]] std::vector<LiftResult> allResults(GymFile& file);
void put(GymFile& file, const std::vector<Change>& changes);

} // namespace bw::test
