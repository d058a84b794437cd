// SPDX-License-Identifier: GPL-3.0-or-later
// Small gyms, drafts and folders for tests. Ids, dates and numbers are fixed.
#pragma once
#include "blockwright/model/gym.hpp"

#include <filesystem>
#include <string>
#include <string_view>

namespace bw::test {

// A folder of this test's own, with a space in its path; removed with everything in it.
class TempFolder {
public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path operator/(std::string_view name) const {
        return path_ / name;
    }

private:
    std::filesystem::path path_;
};

[[nodiscard]] std::string readText(const std::filesystem::path& file); // throws when unreadable
void writeText(const std::filesystem::path& file, std::string_view text);

[[nodiscard]] inline ExerciseId ex(std::string_view id) { return ExerciseId::parse(id).value(); }
[[nodiscard]] inline KitId kit(std::string_view id) { return KitId::parse(id).value(); }
[[nodiscard]] inline Month month(std::string_view text) { return Month::parse(text).value(); }
[[nodiscard]] inline Week week(int n) { return Week::of(n).value(); }
[[nodiscard]] inline Dose reps(int lo, int hi) { return Dose::reps(lo, hi).value(); }
[[nodiscard]] inline Dose secondsDose(int lo, int hi) {
    return Dose::of(Measure::Seconds, lo * 1000, hi * 1000).value();
}
[[nodiscard]] inline Range<Millis> secondsRange(int lo, int hi) {
    return Range<Millis>::of(Millis{lo * 1000}, Millis{hi * 1000}).value();
}
[[nodiscard]] inline Range<int> rounds(int lo, int hi) { return Range<int>::of(lo, hi).value(); }

// A reps exercise of one pattern, sagittal, both sides, skill 1, without kit, cues or cautions.
[[nodiscard]] Exercise exercise(std::string_view id, Pattern pattern, double secondsPerRep = 3.0,
                                int setupSeconds = 0);
[[nodiscard]] Slot slot(std::string_view exerciseId, Dose dose);
[[nodiscard]] Group group(Range<int> rounds, Range<Millis> rest, std::vector<Slot> slots);
[[nodiscard]] Section section(SectionKind kind, std::vector<Group> groups);
[[nodiscard]] Block block(std::string_view month, std::vector<Section> sections);

} // namespace bw::test
