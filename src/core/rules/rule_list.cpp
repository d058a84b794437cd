// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"

namespace bw {

const std::vector<Rule>& ruleBook() {
    static const std::vector<Rule> rules{
        book::sessionLength(), book::sectionLength(),      book::supersetWork(),
        book::powerRest(),     book::strengthRest(),       book::powerDose(),
        book::powerFirst(),    book::heavyFirst(),         book::pairing(),
        book::overlap(),       book::patternMissing(),     book::pushPull(),
        book::kneeHip(),       book::horizontalVertical(), book::oneSided(),
        book::planes(),        book::muscleDose(),         book::kitShort(),
        book::kitQueue(),      book::overrunChance(),      book::thirdRound(),
        book::novelty(),       book::staleness(),          book::carryOver(),
        book::stairJump(),     book::stairShape(),         book::options(),
        book::memberFlag(),    book::cueMissing(),         book::cautionMissing(),
        book::finisherDose(),
    };
    return rules;
}

} // namespace bw
