// SPDX-License-Identifier: GPL-3.0-or-later
// Results as a table for a spreadsheet, out and in: one set a row.
//   member,name,date,exercise,exercise_name,set,reps,rir,load_kg
// Reading finds the columns by the words of the first line, in any order and case (docs/csv.md has
// the list); members and exercises by id or by name; columns that it does not know are left out. It
// says what is wrong row by row, and stores nothing itself.
#pragma once
#include "blockwright/model/gym.hpp"

#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace bw {

struct CsvFault {
    std::size_t line = 1;
    std::string column; // the word of the first line; empty: the whole row
    Message text;
};

struct ResultsReading {
    std::vector<LiftResult> results; // of the rows without fault, in order
    std::vector<CsvFault> faults;    // the first kMostFaults
    std::size_t faultyRows = 0, rows = 0;
    std::size_t twice = 0;            // rows that say the same set again; left out
    std::vector<std::string> leftOut; // columns that are not known
};

inline constexpr std::size_t kMostCsvBytes = 64u << 20;

// `head`: words to read in place of those of the first line, one a column; "": leave it out.
[[nodiscard]] ResultsReading readResultsCsv(std::string_view text, const Gym& gym,
                                            const std::vector<std::string>* head = nullptr);

// What reading would change beside results that are stored already.
struct ResultsChange {
    std::vector<LiftResult> fresh;   // not stored yet
    std::vector<LiftResult> changed; // stored with other figures, which these replace
    std::size_t same = 0;            // stored as they are
};
// `stored` may be in any order; extras of a stored set stay with it.
[[nodiscard]] ResultsChange compare(std::vector<LiftResult> read,
                                    std::span<const LiftResult> stored);

// Text of the export, one result after the other.
class ResultsWriter {
public:
    explicit ResultsWriter(const Gym& gym);
    ~ResultsWriter();
    void add(const LiftResult& result);
    [[nodiscard]] std::string take(); // what was written since the last take

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace bw
