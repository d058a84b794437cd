// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"

namespace bw {

const std::vector<Rule>& ruleBook() {
    static const std::vector<Rule> rules{
        book::sessionLength(), book::sectionLength(), book::supersetWork(),
        book::powerRest(),     book::strengthRest(),  book::powerDose(),
        book::powerFirst(),    book::heavyFirst(),    book::patternMissing(),
        book::options(),       book::cueMissing(),    book::cautionMissing(),
        book::kitShort(),      book::kitQueue(),      book::overrunChance(),
        book::thirdRound(),
    };
    return rules;
}

} // namespace bw
