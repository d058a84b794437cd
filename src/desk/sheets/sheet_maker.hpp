// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out the sheets of the draft, with what members lifted so far. Their results are read once
// and kept until they change, or somebody or some exercise comes into question that was not asked
// for, or the gym reckons with them otherwise.
#pragma once
#include "desk/bench/draft.hpp"
#include "sheets/sheet_layout.hpp"

#include <optional>

namespace bw {

class SheetMaker {
public:
    explicit SheetMaker(Draft& draft) : draft_(draft) {} // the draft must outlive it

    // Only while there is a block. Why() when the results could not be read.
    [[nodiscard]] Result<Layout> layOut(SheetKind kind, const SheetOptions& options,
                                        const SheetProgress& progress = {});
    // Likewise; valid until the next call.
    [[nodiscard]] Result<const Ledger*> ledger();

private:
    [[nodiscard]] Result<bool> readResults();

    Draft& draft_;
    struct Grounds { // on which results are read
        std::uint64_t results;
        Date on;
        std::vector<MemberId> members; // who are active
        std::vector<Shelf::Entry> shelf;
        std::map<std::string, LimitValue> limits;
        MassUnit unit;
        bool operator==(const Grounds&) const = default;
    };
    [[nodiscard]] Result<Grounds> grounds() const;

    std::optional<Ledger> ledger_;
    std::optional<Grounds> grounds_;    // of ledger_
    std::vector<ExerciseId> exercises_; // in ledger_, in order
};

} // namespace bw
