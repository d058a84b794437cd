// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_marks.hpp"

#include "desk/frame/words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Kind = AlmanacLine::Kind;

constexpr std::string_view kRules[] = {"staleness", "novelty", "push-pull", "knee-hip"};

bool namesExercise(const Finding& finding, const AlmanacLine& line, const Block& block) {
    const auto here = [&](Place place) {
        const Slot* slot = slotAt(block, place);
        return slot && slot->exercise && slot->exercise == line.exercise;
    };
    return here(finding.place) || std::any_of(finding.also.begin(), finding.also.end(), here);
}

bool speaksOf(const Finding& finding, const AlmanacLine& line, const Block& block) {
    switch (line.kind) {
    case Kind::Exercise: return line.exercise && namesExercise(finding, line, block);
    case Kind::Format:
        return finding.rule == "staleness" && finding.about == "format" && block.format &&
               line.name == formatName(*block.format);
    case Kind::Figures: return finding.rule == "novelty";
    case Kind::Ratio: return finding.rule == line.rule;
    case Kind::Heading: return false;
    }
    return false;
}
} // namespace

void markLines(std::vector<AlmanacLine>& lines, const Block& block,
               const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
        if (std::find(std::begin(kRules), std::end(kRules), finding.rule) == std::end(kRules))
            continue;
        for (AlmanacLine& line : lines)
            if (speaksOf(finding, line, block) && (!line.mark || finding.level < line.mark->level))
                line.mark = AlmanacMark{finding.level, say(finding.text)};
    }
}

} // namespace bw
