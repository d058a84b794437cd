// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"

#include <stdexcept>

namespace bw::test {

namespace {
std::vector<Finding> only(std::vector<Finding> all, std::string_view rule) {
    std::erase_if(all, [&](const Finding& f) { return f.rule != rule; });
    return all;
}

void fillShelf(Shelf& shelf) {
    shelf.put(careful("leg-swing", Pattern::Mobility, "warm-up"));
    shelf.put(careful("dead-bug", Pattern::TrunkStability, "warm-up"));
    shelf.put(careful("box-jump", Pattern::Squat, "power"));
    shelf.put(careful("ball-throw", Pattern::Rotation, "power"));
    shelf.put(careful("front-squat", Pattern::Squat, "strength-heavy"));
    shelf.put(careful("step-up", Pattern::Lunge, "strength-long"));
    shelf.put(careful("bench-press", Pattern::HorizontalPush, "strength-heavy"));
    shelf.put(careful("ring-row", Pattern::HorizontalPull, "strength-long"));
    shelf.put(careful("swing", Pattern::Hinge, "finisher"));
    shelf.put(careful("crawl", Pattern::Locomotion, "finisher"));
}
} // namespace

Exercise careful(std::string_view id, Pattern pattern, std::string_view role) {
    Exercise e = exercise(id, pattern, 4.0, 10);
    e.roles = {RoleId::parse(role).value()};
    e.cues = {"Stand tall"};
    e.cautions = {"Stop on pain"};
    e.noEasier = e.noHarder = "Change the load instead.";
    return e;
}

Draft cleanDraft() {
    Draft d{Gym{}, block("2026-09", {})};
    fillShelf(d.gym.shelf);
    d.block.format = Format::HeavyThenLong;
    d.block.sections = {
        bw::test::section(SectionKind::WarmUp,
                          {bw::test::group(rounds(2, 2), secondsRange(0, 0),
                                           {bw::test::slot("leg-swing", reps(8, 10)),
                                            bw::test::slot("dead-bug", reps(8, 10))})}),
        bw::test::section(SectionKind::Power,
                          {bw::test::group(rounds(2, 2), secondsRange(60, 120),
                                           {bw::test::slot("box-jump", reps(3, 5)),
                                            bw::test::slot("ball-throw", reps(5, 6))})}),
        bw::test::section(SectionKind::Strength,
                          {bw::test::group(rounds(2, 3), secondsRange(60, 120),
                                           {bw::test::slot("front-squat", reps(5, 5)),
                                            bw::test::slot("step-up", reps(10, 12))}),
                           bw::test::group(rounds(2, 3), secondsRange(60, 120),
                                           {bw::test::slot("bench-press", reps(5, 5)),
                                            bw::test::slot("ring-row", reps(10, 12))})}),
        bw::test::section(SectionKind::Finisher,
                          {bw::test::group(rounds(2, 3), secondsRange(60, 90),
                                           {bw::test::slot("swing", reps(15, 15)),
                                            bw::test::slot("crawl", reps(10, 10))})}),
    };
    return d;
}

std::vector<Finding> Draft::find(std::string_view rule, int inWeek) const {
    return only(check(gym, block, week(inWeek)).findings, rule);
}
std::vector<Finding> Draft::findAll(std::string_view rule) const {
    return only(check(gym, block).findings, rule);
}

Draft Draft::after(const Remedy& remedy) const {
    if (!remedy.action) throw std::logic_error("only a coach can: " + remedy.label.english());
    Draft out = *this;
    remedy.action(out.block);
    return out;
}

const Remedy& remedy(const Finding& finding, std::string_view begins) {
    for (const Remedy& r : finding.remedies)
        if (r.label.english().starts_with(begins)) return r;
    std::string all;
    for (const Remedy& r : finding.remedies) all += "\n  " + r.label.english();
    throw std::logic_error("no remedy begins \"" + std::string(begins) + "\"; there are:" + all);
}

} // namespace bw::test
