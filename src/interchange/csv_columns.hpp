// SPDX-License-Identifier: GPL-3.0-or-later
// Which column of a table of results holds what, by the words of its first line.
#pragma once
#include "interchange/csv_text.hpp"

#include <array>
#include <optional>

namespace bw {

enum class ResultsColumn {
    Member,
    Name,
    Date,
    Exercise,
    ExerciseName,
    Set,
    Reps,
    Rir,
    Rpe,
    LoadKg,
    LoadLb,
    Load // in the unit of the gym
};
inline constexpr std::size_t kResultsColumns = 12;

class CsvColumns {
public:
    // Of two columns with the same meaning the first counts.
    explicit CsvColumns(const std::vector<std::string>& head);

    [[nodiscard]] bool has(ResultsColumn c) const { return at_[index(c)].has_value(); }
    // The word of the first line; empty without such a column.
    [[nodiscard]] std::string word(ResultsColumn c) const;
    // Without blanks around it and without guard; empty where the record is too short.
    [[nodiscard]] std::string_view field(const CsvRecord& record, ResultsColumn c) const;
    [[nodiscard]] const std::vector<std::string>& unknown() const { return unknown_; }

private:
    static std::size_t index(ResultsColumn c) { return static_cast<std::size_t>(c); }
    std::vector<std::string> head_;
    std::array<std::optional<std::size_t>, kResultsColumns> at_;
    std::vector<std::string> unknown_;
};

// Lower case, everything but letters and digits as one "_": "Weight (kg)" is "weight_kg".
[[nodiscard]] std::string columnWord(std::string_view head);
[[nodiscard]] std::string_view trimmed(std::string_view text);

} // namespace bw
