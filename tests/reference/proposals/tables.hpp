// SPDX-License-Identifier: GPL-3.0-or-later
// The data of model.mzn for a draft. Costs come from the whole check, sums from balance and times;
// nothing here is taken from the program's search for proposals.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace bw::test {

// The gym without the weights of what the model leaves out; a flag costs the same at each level.
[[nodiscard]] Gym comparable(Gym gym);

struct Seating { // of a draft's open slots
    std::vector<Place> places;
    std::vector<std::vector<ExerciseId>> fits;
};
[[nodiscard]] Seating seatingOf(const Gym& gym, const Block& draft);

// JSON. The gym must be comparable, and every place must have something that fits.
[[nodiscard]] std::string dataOf(const Gym& gym, const Block& draft, const Seating& seating);

struct Solved {
    bool solvable = false, proved = false;
    double penalty = 0;
    std::vector<ExerciseId> exercises; // by place
};
[[nodiscard]] bool hasMiniZinc();
// None: the program failed. Files `name`.json and `name`.txt stay in the folder.
[[nodiscard]] std::optional<Solved> solve(const std::filesystem::path& folder,
                                          const std::string& name, const Seating& seating,
                                          const std::string& data, int mostSeconds);

} // namespace bw::test
