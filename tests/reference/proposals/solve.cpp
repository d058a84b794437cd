// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/proposals/tables.hpp"
#include "support/fixtures.hpp"

#include <cstdlib>
#include <sstream>

namespace bw::test {

namespace {
// A choice is numbered through all seats, from 1.
ExerciseId chosen(const Seating& seating, std::size_t seat, std::size_t number) {
    for (std::size_t s = 0; s < seat; ++s) number -= seating.fits[s].size();
    return seating.fits[seat].at(number - 1);
}

// The last answer that was printed is the best.
Solved readSolved(const Seating& seating, const std::string& text) {
    Solved out;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line == "==========") out.proved = true;
        if (line.empty() || std::string_view("-=").find(line[0]) != std::string_view::npos)
            continue;
        std::istringstream numbers(line);
        double halves = 0;
        numbers >> halves;
        out = {true, false, halves / 2, {}};
        for (std::size_t s = 0; s < seating.places.size(); ++s) {
            std::size_t number = 0;
            numbers >> number;
            out.exercises.push_back(chosen(seating, s, number));
        }
    }
    return out;
}
} // namespace

bool hasMiniZinc() {
    return std::system("command -v fzn-gecode > /dev/null && "
                       "minizinc --solvers 2> /dev/null | grep -q org.gecode.gecode") == 0;
}

std::optional<Solved> solve(const std::filesystem::path& folder, const std::string& name,
                            const Seating& seating, const std::string& data, int mostSeconds) {
    writeText(folder / (name + ".json"), data);
    const std::string command = "cd '" + folder.string() +
                                "' && minizinc --solver gecode --time-limit " +
                                std::to_string(1000 * mostSeconds) +
                                " '" BW_SOURCE_DIR "/tests/reference/proposals/model.mzn' " + name +
                                ".json > " + name + ".txt 2> " + name + ".err";
    if (std::system(command.c_str()) != 0) return std::nullopt;
    const std::string text = readText(folder / (name + ".txt"));
    if (text.find("=====ERROR") != std::string::npos) return std::nullopt;
    return readSolved(seating, text);
}

} // namespace bw::test
