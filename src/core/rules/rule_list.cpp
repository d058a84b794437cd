// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"

namespace bw {

const std::vector<Rule>& ruleBook() {
#define BW_MAKE(rule) book::rule(),
    static const std::vector<Rule> rules{BW_RULE_BOOK(BW_MAKE)};
#undef BW_MAKE
    return rules;
}

} // namespace bw
