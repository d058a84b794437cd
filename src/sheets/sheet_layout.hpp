// SPDX-License-Identifier: GPL-3.0-or-later
// Every sheet by its kind: the same pages for preview, printer, PDF and terminal.
#pragma once
#include "blockwright/ledger/ledger.hpp"
#include "blockwright/rules/check.hpp"
#include "sheets/page.hpp"
#include "sheets/sheet_options.hpp"

#include <functional>

namespace bw {

// What a month's sheets are made of. All of it must outlive the call.
struct SheetMatter {
    const Gym& gym;
    const Block& block;
    const Ledger* ledger = nullptr;       // null: no results are known yet
    const CheckResult* verdict = nullptr; // null: nothing is said of findings
};

// Told on the calling thread while cards are laid out; false stops, and a layout without pages
// comes back.
using SheetProgress = std::function<bool(int done, int total)>;

// Needs a QGuiApplication for its fonts.
[[nodiscard]] Layout layoutSheet(SheetKind kind, const SheetMatter& matter,
                                 const SheetOptions& options, const SheetProgress& progress = {});

} // namespace bw
