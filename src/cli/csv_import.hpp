// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/ending.hpp"

#include <string>

namespace bw::cli {

struct CsvImport {
    std::string gym, csv;
    bool dry = false; // only say what would change
    bool json = false;
};

// A table of results into a gym file. With a fault nothing is stored and the answer is BadInput.
// Throws Ending.
[[nodiscard]] Exit importCsv(const CsvImport& asked);

} // namespace bw::cli
