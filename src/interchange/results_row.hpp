// SPDX-License-Identifier: GPL-3.0-or-later
// One row of a table of results.
#pragma once
#include "interchange/csv_columns.hpp"
#include "interchange/results_csv.hpp"

#include <unordered_map>

namespace bw {

// Members and exercises by id, else by name, capitals aside.
class NameBook {
public:
    explicit NameBook(const Gym& gym);
    [[nodiscard]] Result<MemberId> member(std::string_view idOrName) const;
    [[nodiscard]] Result<ExerciseId> exercise(std::string_view idOrName) const;

private:
    template <class I> struct Index {
        std::unordered_map<std::string, I> ids;
        std::unordered_map<std::string, std::vector<I>> names;
        void add(const I& id, std::string_view name);
        [[nodiscard]] Result<I> find(std::string_view word, Message none) const;
    };
    Index<MemberId> members_;
    Index<ExerciseId> exercises_;
};

// The row's result, its set 0 where none is written; else none, and what is wrong is added to the
// faults.
[[nodiscard]] std::optional<LiftResult> readResultsRow(const CsvRecord& record,
                                                       const CsvColumns& columns,
                                                       const NameBook& names, MassUnit unit,
                                                       std::vector<CsvFault>& faults);

} // namespace bw
