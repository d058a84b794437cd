// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/csv_columns.hpp"

#include <algorithm>

namespace bw {

namespace {
using enum ResultsColumn;

struct Known {
    std::string_view word;
    ResultsColumn column;
};
// The first of each is what the export writes.
constexpr std::array kKnown{Known{"member", Member},
                            Known{"member_id", Member},
                            Known{"name", Name},
                            Known{"member_name", Name},
                            Known{"date", Date},
                            Known{"day", Date},
                            Known{"exercise", Exercise},
                            Known{"exercise_id", Exercise},
                            Known{"lift", Exercise},
                            Known{"exercise_name", ExerciseName},
                            Known{"set", Set},
                            Known{"set_no", Set},
                            Known{"reps", Reps},
                            Known{"repetitions", Reps},
                            Known{"rir", Rir},
                            Known{"in_reserve", Rir},
                            Known{"reps_in_reserve", Rir},
                            Known{"repetitions_in_reserve", Rir},
                            Known{"rpe", Rpe},
                            Known{"load_kg", LoadKg},
                            Known{"weight_kg", LoadKg},
                            Known{"kg", LoadKg},
                            Known{"load_lb", LoadLb},
                            Known{"weight_lb", LoadLb},
                            Known{"lb", LoadLb},
                            Known{"load", Load},
                            Known{"weight", Load}};

bool letterOrDigit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
           (static_cast<unsigned char>(c) & 0x80U);
}
} // namespace

std::string columnWord(std::string_view head) {
    std::string out;
    for (char c : head) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        if (letterOrDigit(c))
            out += c;
        else if (!out.empty() && out.back() != '_')
            out += '_';
    }
    if (out.ends_with('_')) out.pop_back();
    return out;
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view kBlanks = " \t";
    const auto from = text.find_first_not_of(kBlanks);
    if (from == std::string_view::npos) return {};
    return text.substr(from, text.find_last_not_of(kBlanks) - from + 1);
}

CsvColumns::CsvColumns(const std::vector<std::string>& head) : head_(head) {
    for (std::size_t i = 0; i < head_.size(); ++i) {
        const auto it = std::find_if(kKnown.begin(), kKnown.end(), [&](const Known& k) {
            return k.word == columnWord(withoutGuard(head_[i]));
        });
        if (it != kKnown.end() && !has(it->column))
            at_[index(it->column)] = i;
        else
            unknown_.push_back(head_[i]);
    }
}

std::string CsvColumns::word(ResultsColumn c) const { return has(c) ? head_[*at_[index(c)]] : ""; }

std::string_view CsvColumns::field(const CsvRecord& record, ResultsColumn c) const {
    if (!has(c) || *at_[index(c)] >= record.fields.size()) return {};
    return trimmed(withoutGuard(record.fields[*at_[index(c)]]));
}

} // namespace bw
