// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/fixtures.hpp"

#include <atomic>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <unistd.h>

namespace bw::test {

TempFolder::TempFolder() {
    static std::atomic<int> count{0};
    path_ = std::filesystem::temp_directory_path() /
            ("bw test " + std::to_string(::getpid()) + "-" + std::to_string(++count));
    std::filesystem::create_directories(path_);
}
TempFolder::~TempFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

std::string readText(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) throw std::runtime_error("cannot read " + file.string());
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}
void writeText(const std::filesystem::path& file, std::string_view text) {
    std::ofstream out(file, std::ios::binary);
    out.write(text.data(), static_cast<std::streamsize>(text.size()));
    if (!out) throw std::runtime_error("cannot write " + file.string());
}

Exercise exercise(std::string_view id, Pattern pattern, double secondsPerRep, int setupSeconds) {
    Exercise e =
        blankExercise(ex(id), std::string(id),
                      Pace::of(Measure::Reps, {Rate::of(secondsPerRep).value(), {}, {}}).value());
    e.patterns = Shares<Pattern>::of({{pattern, Share::whole()}}).value();
    e.planes = Shares<Plane>::of({{Plane::Sagittal, Share::whole()}}).value();
    e.setup = Millis{setupSeconds * 1000};
    return e;
}

Slot slot(std::string_view exerciseId, Dose dose) {
    Slot s;
    s.exercise = ex(exerciseId);
    s.dose = dose;
    return s;
}
Group group(Range<int> rounds, Range<Millis> rest, std::vector<Slot> slots) {
    Group g;
    g.rounds = rounds;
    g.rest = rest;
    g.slots = std::move(slots);
    return g;
}
Section section(SectionKind kind, std::vector<Group> groups) {
    Section s;
    s.kind = kind;
    s.groups = std::move(groups);
    return s;
}
Block block(std::string_view monthText, std::vector<Section> sections) {
    Block b{.month = month(monthText),
            .title = {},
            .format = {},
            .visitsPerWeek = 3,
            .sections = std::move(sections),
            .stair = defaultStair(),
            .extras = {}};
    return b;
}

} // namespace bw::test
