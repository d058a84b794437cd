// SPDX-License-Identifier: GPL-3.0-or-later
// The same matters as in whole_costs.cpp, as far as they can be told before all slots are filled.
#include "core/propose/whole_costs.hpp"
#include "core/rules/book/large_muscles.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/substitutes.hpp"

#include <algorithm>
#include <map>

namespace bw::proposing {

namespace {
using Terms = std::vector<std::pair<int, double>>;

int indexOf(Pattern p) { return at::pattern + static_cast<int>(p); }

// What one grain is in sets, averaged over so many weeks.
double unitOf(int weeks) { return 1.0 / (2.0 * Share::kWhole * weeks); }

void add(Terms& terms, const std::vector<int>& indices, double factor) {
    for (const int i : indices) terms.emplace_back(i, factor);
}

std::vector<ScaleCase> shippedScales() {
    using enum Pattern;
    const auto of = [](Pattern a, Pattern b) { return std::vector{indexOf(a), indexOf(b)}; };
    const std::vector<int> planes{at::plane, at::plane + 1, at::plane + 2};
    std::vector<ScaleCase> out{
        {.rule = "push-pull",
         .over = of(HorizontalPush, VerticalPush),
         .under = of(HorizontalPull, VerticalPull)},
        {.rule = "knee-hip", .over = of(Squat, Lunge), .under = {indexOf(Hinge)}},
        {.rule = "horizontal-vertical",
         .over = of(HorizontalPush, HorizontalPull),
         .under = of(VerticalPush, VerticalPull),
         .saysNoOver = true,
         .saysNoUnder = true},
        {.rule = "one-sided",
         .over = {at::oneSided},
         .under = {at::sets},
         .share = true,
         .level = Level::Note}};
    for (const int plane : planes)
        out.push_back({.rule = "planes",
                       .over = {plane},
                       .under = planes,
                       .share = true,
                       .level = Level::Note});
    return out;
}

double lean(const ScaleCase& scale, const Exercise& e, bool more) {
    double over = 0, under = 0;
    for (const int i : scale.over) over += partOf(e, i);
    for (const int i : scale.under) under += partOf(e, i);
    const double other = scale.share ? under - over : under;
    return more ? over - other : other - over;
}
} // namespace

int WholeCosts::form(Terms terms, double constant) {
    forms_.push_back({std::move(terms), constant});
    return static_cast<int>(forms_.size()) - 1;
}

int WholeCosts::above(const std::vector<int>& sums, double unit) {
    Terms terms;
    add(terms, sums, -unit);
    return form(std::move(terms), 0);
}

// While slots stay open that could bring what is missing, it is only noted.
double WholeCosts::levelCost(const ScaleCase& scale, bool more) {
    const Cost cost = costOf(task_.gym.settings, scale.rule);
    const double full = scale.level == Level::Look ? cost.look : cost.note;
    bool could = false;
    for (const SlotFact& slot : task_.facts->slots) {
        const auto& targets = task_.targets;
        const bool target = std::any_of(targets.begin(), targets.end(),
                                        [&](const Target& t) { return t.place == slot.place; });
        if (!slot.slot->open() || target) continue;
        const auto found =
            substitutes(*task_.facts, slot, targets.size() + 1,
                        [&](const Exercise& e) { return lean(scale, e, more) >= 0.5; });
        if (found.size() > targets.size()) return cost.note;
        could = could || !found.empty();
    }
    if (!could) return full;
    unsure_ = unsure_ || full != cost.note;
    return std::min(full, cost.note);
}

void WholeCosts::drawScales() {
    const GymSettings& gym = task_.gym.settings;
    scales_ = shippedScales();
    for (ScaleCase& scale : scales_) {
        scale.block = limitIn(gym, scale.rule, "block");
        scale.window = limitIn(gym, scale.rule, "window");
        scale.low = levelCost(scale, true);
        scale.high = levelCost(scale, false);
        scale.note = costOf(gym, scale.rule).note;
        drawScale(scale);
    }
}

void WholeCosts::drawScale(const ScaleCase& scale) {
    const double unit = unitOf(weeks_), windowUnit = unitOf(windowWeeks_);
    const auto side = [&](double over, double under, bool window) {
        Terms terms;
        const double u = window ? windowUnit : unit;
        add(terms, scale.over, over * u);
        add(terms, scale.under, under * u);
        double constant = 0;
        if (window)
            for (const auto& [i, factor] : terms)
                constant += factor * static_cast<double>(months_[static_cast<std::size_t>(i)]);
        return form(std::move(terms), constant);
    };
    // A side that is empty may be left to another rule, and then nothing is said here.
    const bool quietOver = !scale.share && (!scale.saysNoOver || scale.block.lo <= 0);
    const bool quietUnder = !scale.share && (!scale.saysNoUnder || scale.block.hi <= 0);
    std::vector<int> over, under;
    if (quietOver) over = {above(scale.over, unit)};
    if (quietUnder) under = {above(scale.under, unit)};
    const auto all = [](int first, std::vector<int> a, const std::vector<int>& b) {
        a.insert(a.end(), b.begin(), b.end());
        a.push_back(first);
        return a;
    };
    const double least = std::min({scale.low, scale.high, scale.note});
    Matter matter;
    matter.cases.push_back({all(side(1, -scale.block.lo, false), over, {}), scale.low});
    matter.cases.push_back({all(side(-1, scale.block.hi, false), under, {}), scale.high});
    if (windowWeeks_ > weeks_) {
        matter.cases.push_back({all(side(1, -scale.window.lo, true), over, under), least});
        auto high = all(side(-1, scale.window.hi, true), over, under);
        high.push_back(side(0, -1, true)); // with nothing under the line there is no figure
        matter.cases.push_back({std::move(high), least});
    }
    matter.least = std::min(0.0, least);
    matters_.push_back(std::move(matter));
}

void WholeCosts::drawMuscles() {
    const double unit = unitOf(weeks_);
    const double few = hardOpen_ ? muscle_.note : muscle_.look;
    const int any = above({at::anyMuscle}, unit);
    for (std::size_t i = 0; i < book::kLarge.size(); ++i) {
        const auto& [one, other] = book::kLarge[i].patterns;
        const int trained = above({indexOf(one), indexOf(other)}, unit);
        const int sets = at::muscle + static_cast<int>(i);
        const int low = form({{sets, unit}}, -muscleBand_.lo);
        const int high = form({{sets, -unit}}, muscleBand_.hi);
        matters_.push_back({{{{any, trained, low}, few}, {{any, trained, high}, muscle_.note}},
                            std::min({0.0, few, muscle_.note})});
    }
}

void WholeCosts::drawCounts() {
    const auto matter = [&](int index, double factor, double constant, double cost) {
        matters_.push_back({{{{form({{index, factor}}, constant)}, cost}}, std::min(0.0, cost)});
    };
    for (int i = at::family; i < at::fresh; ++i) matter(i, 1, -familyLeast_, family_.look);
    if (task_.history->empty()) return;
    matter(at::fresh, -1, fresh_.hi, novelty_.look);
    if (!anyOpen_) matter(at::fresh, 1, -fresh_.lo, novelty_.note);
    if (!adder_.lastMains().empty()) matter(at::carried, 1, -carryLeast_, carry_.note);
}

// A time of q quarter milliseconds is q/4 to the nearest, halves up; so it is more than n from
// 4n + 2 on, and less below 4n - 2.
void WholeCosts::drawTimes() {
    const GymSettings& gym = task_.gym.settings;
    const Block& block = *task_.block;
    const double ends = static_cast<double>(ExactTime{gym.opening + gym.closing}.count());
    const double near = std::min(session_.look, session_.stop);
    Matter session{{}, std::min(0.0, near)};
    std::vector<Matter> sections(block.sections.size(), {{}, std::min(0.0, section_.look)});
    for (std::size_t m = 0; m < adder_.modes().size(); ++m) {
        Terms all;
        for (std::size_t s = 0; s < block.sections.size(); ++s) {
            all.emplace_back(adder_.timeAt(m, s), -1);
            const auto& budget = block.sections[s].budget;
            if (!budget) continue;
            const double most = 4.0 * static_cast<double>((budget->hi() + slack_).count()) + 1;
            const double least = 4.0 * static_cast<double>((budget->lo() - slack_).count()) - 2;
            const int index = adder_.timeAt(m, s);
            sections[s].cases.push_back({{form({{index, -1}}, most)}, section_.look});
            sections[s].cases.push_back({{form({{index, 1}}, -least)}, section_.look});
        }
        const auto until = [&](std::int64_t end) {
            return 4.0 * static_cast<double>(end) + 1 - ends;
        };
        session.cases.push_back({{form(all, until(classEnd_))}, session_.stop});
        session.cases.push_back({{form(all, until(nearEnd_))}, near});
    }
    matters_.push_back(std::move(session));
    for (Matter& m : sections)
        if (!m.cases.empty()) matters_.push_back(std::move(m));
}

// One matter a kit item: it is found once, however many lines say so.
void WholeCosts::drawWaits() {
    const GymSettings& gym = task_.gym.settings;
    const double members = 1000 * adder_.waits().members();
    queueLook_ = limitIn(gym, "kit-queue", "look_seconds").hi * members;
    queueStop_ = limitIn(gym, "kit-queue", "stop_seconds").hi * members;
    const double least = std::min(queue_.look, queue_.stop);
    std::map<KitId, Lines> byKit;
    const auto& lines = adder_.waits().lines();
    for (std::size_t i = 0; i < lines.size(); ++i) byKit[lines[i].kit].push_back(adder_.waitAt(i));
    for (auto& [id, kit] : byKit) {
        Matter matter{{}, std::min(0.0, least)};
        for (const int wait : kit) {
            const int taken = above({wait + 1}, 1);
            matter.cases.push_back({{taken, form({{wait, -1}}, queueStop_)}, queue_.stop});
            matter.cases.push_back({{taken, form({{wait, -1}}, queueLook_)}, least});
        }
        matters_.push_back(std::move(matter));
        queues_.push_back(std::move(kit));
    }
}

} // namespace bw::proposing
