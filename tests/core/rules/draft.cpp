// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"

#include <stdexcept>

namespace bw::test {

namespace {
std::vector<Finding> only(std::vector<Finding> all, std::string_view rule) {
    std::erase_if(all, [&](const Finding& f) { return f.rule != rule; });
    return all;
}

// A fifth of an exercise goes to the side, too little to count as training it.
Exercise leaning(std::string_view id, Pattern pattern, Pattern side, std::string_view role) {
    Exercise e = careful(id, pattern, role);
    const auto share = [](int tenths) {
        return Share::fromBillionths(tenths * 100'000'000).value();
    };
    e.patterns = Shares<Pattern>::of({{pattern, share(8)}, {side, share(2)}}).value();
    e.planes = Shares<Plane>::of({{Plane::Sagittal, share(8)},
                                  {Plane::Frontal, share(1)},
                                  {Plane::Transverse, share(1)}})
                   .value();
    return e;
}

void fillShelf(Shelf& shelf) {
    shelf.put(leaning("leg-swing", Pattern::Mobility, Pattern::Hinge, "warm-up"));
    shelf.put(careful("dead-bug", Pattern::TrunkStability, "warm-up"));
    shelf.put(leaning("box-jump", Pattern::Squat, Pattern::Hinge, "power"));
    shelf.put(careful("ball-throw", Pattern::Rotation, "power"));
    shelf.put(leaning("front-squat", Pattern::Squat, Pattern::Hinge, "strength-heavy"));
    Exercise stepUp = leaning("step-up", Pattern::Lunge, Pattern::Hinge, "strength-long");
    stepUp.sides = Sides::Alternating;
    shelf.put(stepUp);
    shelf.put(
        leaning("bench-press", Pattern::HorizontalPush, Pattern::VerticalPush, "strength-heavy"));
    shelf.put(leaning("ring-row", Pattern::HorizontalPull, Pattern::VerticalPull, "strength-long"));
    shelf.put(careful("swing", Pattern::Hinge, "finisher"));
    shelf.put(leaning("crawl", Pattern::Locomotion, Pattern::Hinge, "finisher"));
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
    d.limit("pairing.related_share", 0); // a press is paired with a row, to be short
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
