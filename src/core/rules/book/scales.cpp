// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/scales.hpp"

#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <cmath>

namespace bw::book {

namespace {
struct Missed {
    bool low;
    double measured;
    double end; // of the band
};
std::optional<Missed> missed(std::optional<double> value, const LimitValue& band) {
    if (!value || holds(band, *value)) return std::nullopt;
    const bool low = *value < band.lo;
    return Missed{low, *value, low ? band.lo : band.hi};
}

std::vector<Remedy> remediesFor(const Facts& facts, const Leaning& leaning,
                                const ScaleWords& words) {
    auto out = straighten(facts, leaning);
    if (out.empty()) out.push_back(advice({leaning.more ? words.more : words.fewer, {}}));
    return out;
}

// An open slot may still bring what is missing; till then it is only noted.
Level levelOf(const Facts& facts, const Leaning& leaning) {
    return openSlotCould(facts, leaning) ? Level::Note : leaning.scale.level;
}

// One side of a ratio is empty, so there is no figure: what is there, and how little of the other
// the band would still allow.
bool judgeEmpty(const Facts& facts, Verdict& verdict, const Scale& scale, const ScaleWords& words,
                std::string_view about) {
    const Ratio now = scale.of(facts.balance().block);
    const bool noUnder = now.under <= 0 && now.over > 0;
    const bool noOver = !scale.share && now.over <= 0 && now.under > 0;
    if (!noUnder && !noOver) return false;
    const char* sentence = noUnder ? words.nothingUnder : words.nothingOver;
    const LimitValue band = verdict.limit("block");
    const double least = noUnder ? now.over / band.hi : now.under * band.lo;
    if (!sentence || least <= 0) return true;
    const Leaning leaning{scale, now, 1, band, noOver};
    Finding& f = verdict.add(levelOf(facts, leaning), {}, 0, "block", {sentence, {}});
    f.remedies = remediesFor(facts, leaning, words);
    f.limit = {least, least, false};
    f.unit = "sets";
    f.about = about;
    return true;
}

bool judgeBlock(const Facts& facts, Verdict& verdict, const Scale& scale, const ScaleWords& words,
                std::string_view about) {
    const Ratio now = scale.of(facts.balance().block);
    const LimitValue band = verdict.limit("block");
    const auto miss = missed(now.value(), band);
    if (!miss) return false;
    const Leaning leaning{scale, now, 1, band, miss->low};
    const char* sentence = miss->low ? words.low : words.high;
    if (scale.share && now.over <= 0 && words.nothingOver) sentence = words.nothingOver;
    Finding& f = verdict.add(
        levelOf(facts, leaning), {}, miss->measured, "block",
        {sentence, {scaleText(miss->measured, scale.share), scaleText(miss->end, scale.share)}});
    f.remedies = remediesFor(facts, leaning, words);
    f.about = about;
    return true;
}

void judgeWindow(const Facts& facts, Verdict& verdict, const Scale& scale, const ScaleWords& words,
                 std::string_view about) {
    const Balances& balance = facts.balance();
    if (balance.window.weeks <= balance.block.weeks) return;
    const Ratio now = scale.of(balance.window);
    const LimitValue band = verdict.limit("window");
    const auto miss = missed(now.value(), band);
    if (!miss) return;
    const double part = static_cast<double>(balance.block.weeks) / balance.window.weeks;
    Finding& f =
        verdict.add(Level::Note, {}, miss->measured, "window",
                    {miss->low ? words.windowLow : words.windowHigh,
                     {scaleText(miss->measured, scale.share), scaleText(miss->end, scale.share),
                      std::to_string(windowOf(facts.gym, facts.block).size())}});
    f.remedies = remediesFor(facts, {scale, now, part, band, miss->low}, words);
    f.about = about.empty() ? "window" : std::string(about) + " window";
}
} // namespace

std::string scaleText(double value, bool share) {
    if (share) return numberText(100 * value) + " %";
    const auto hundredths = std::llround(value * 100);
    std::string text = std::to_string(hundredths / 100);
    const auto rest = hundredths % 100;
    if (rest != 0) text += (rest < 10 ? ".0" : ".") + std::to_string(rest);
    if (rest != 0 && rest % 10 == 0) text.pop_back();
    return text;
}

void judgeScale(const Facts& facts, Verdict& verdict, const Scale& scale, const ScaleWords& words,
                std::string_view about) {
    if (judgeEmpty(facts, verdict, scale, words, about)) return;
    if (judgeBlock(facts, verdict, scale, words, about)) return;
    judgeWindow(facts, verdict, scale, words, about);
}

} // namespace bw::book
