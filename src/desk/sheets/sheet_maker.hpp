// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out the sheets of the draft, with what members lifted so far. Their results are read once
// and kept until the gym or the month changes.
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
    std::optional<Ledger> ledger_;
    std::uint64_t revision_ = 0;
    Gym::BlockPtr block_;
};

} // namespace bw
