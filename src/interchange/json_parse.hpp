// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "interchange/bundle.hpp"
#include "interchange/json_tree.hpp"

#include <optional>
#include <vector>

namespace bw::json {

struct Parsed {
    Tree tree;                        // whole only without a fault
    std::optional<BundleFault> fault; // why reading stopped; says line and column
    std::vector<Node> twice;          // members whose key stood in the same object before
    bool byteMark = false;            // the text began with a byte order mark, which was dropped
};

// RFC 8259 JSON in UTF-8, one value, nothing after it, at most `deepest` arrays and objects in
// each other. Needs no more stack for deep nesting than for flat text.
[[nodiscard]] Parsed parse(std::string_view text, int deepest = kDeepestBundle);

} // namespace bw::json
