// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/finding_verbs.hpp"

#include "blockwright/rules/check.hpp"
#include "edit/memory_file.hpp"
#include "edit/month_verbs.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
const Month kMonth = month("2026-09");

struct Bench {
    Bench() {
        Gym gym;
        gym.settings.classMinutes = 5; // the session runs over
        gym.settings.limits["of-another-version.x"] = {1, 1, false};
        gym.shelf.put(exercise("squat", Pattern::Squat));
        gym.shelf.put(exercise("press", Pattern::HorizontalPush));
        gym.put(block("2026-09",
                      {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                             {slot("squat", reps(5, 5)),
                                                              slot("press", reps(10, 12))})})}));
        auto owned = std::make_unique<MemoryFile>(gym);
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
    }
    [[nodiscard]] const Block& now() const { return *open->gym().block(kMonth); }
    [[nodiscard]] CheckResult verdict() const { return check(open->gym(), now()); }
    [[nodiscard]] Finding stop() const {
        for (const Finding& f : verdict().findings)
            if (f.rule == "session-length") return f;
        throw std::logic_error("the session does not run over");
    }
    Did accept(std::string_view reason) { return acceptFinding(*open, kMonth, stop(), reason); }

    MemoryFile* file;
    std::unique_ptr<OpenGym> open;
};

void doUndoRedo(Bench& b, const std::function<Did(OpenGym&)>& verb) {
    const Gym before = b.open->gym();
    const Did did = verb(*b.open);
    REQUIRE(did);
    REQUIRE(*did);
    const Gym after = b.open->gym();
    CHECK_FALSE(sameMonths(before, after));
    CHECK(sameMonths(b.file->stored, after));
    REQUIRE(*b.open->undo());
    CHECK(sameMonths(before, b.file->stored));
    CHECK(sameMonths(before, b.open->gym()));
    REQUIRE(*b.open->redo());
    CHECK(sameMonths(after, b.file->stored));
    CHECK(sameMonths(after, b.open->gym()));
}
} // namespace

TEST_CASE("accepting, taking back, moving a limit and resetting can be done, undone, done again") {
    Bench b;
    const Finding stop = b.stop();
    doUndoRedo(b, [&](auto& g) { return acceptFinding(g, kMonth, stop, "Open day."); });
    doUndoRedo(b, [&](auto& g) { return takeBack(g, kMonth, stop); });
    doUndoRedo(b, [&](auto& g) {
        return setLimit(g, "session-length.look_share", LimitValue{0.5, 0.5, false});
    });
    doUndoRedo(b, [&](auto& g) { return resetLimits(g); });
}

TEST_CASE("an accepted finding is kept with its reason, without the blanks around it") {
    Bench b;
    const Finding stop = b.stop();
    const double penalty = b.verdict().penalty;
    REQUIRE(*b.accept("  Open day: doors close late. "));
    REQUIRE(b.verdict().accepted.size() == 1);
    CHECK(b.verdict().accepted[0].reason == "Open day: doors close late.");
    CHECK(b.verdict().penalty < penalty);
    CHECK(b.now().accepted[0].rule == "session-length");
    CHECK(b.now().accepted[0].measured.value() == Approx(stop.measured));
}

TEST_CASE("a finding is accepted once: a new reason takes the place of the old one") {
    Bench b;
    const Finding stop = b.stop();
    REQUIRE(*acceptFinding(*b.open, kMonth, stop, "Open day."));
    REQUIRE(*acceptFinding(*b.open, kMonth, stop, "Doors close late."));
    REQUIRE(b.now().accepted.size() == 1);
    CHECK(b.now().accepted[0].reason == "Doors close late.");
    CHECK_FALSE(*acceptFinding(*b.open, kMonth, stop, "Doors close late."));
}

TEST_CASE("without a reason, or with one too long, nothing is kept") {
    Bench b;
    const std::string reason =
        GENERATE(std::string(), std::string(" \t\n"), std::string(201, 'x'), std::string("a\nb"));
    CHECK_FALSE(b.accept(reason));
    CHECK(b.now().accepted.empty());
    CHECK(b.open->undoText() == nullptr);
    CHECK(*b.accept("“" + std::string(198, 'x') + "”")); // 200 characters, 204 bytes
}

TEST_CASE("the oldest acceptance goes when a month has two hundred") {
    Bench b;
    Finding f = b.stop();
    for (int n = 0; n < 201; ++n) {
        f.about = std::to_string(n);
        REQUIRE(*acceptFinding(*b.open, kMonth, f, "why"));
    }
    CHECK(b.now().accepted.size() == 200);
    CHECK(b.now().accepted.front().about == "1");
    CHECK(b.now().accepted.back().about == "200");
}

TEST_CASE("what was accepted in a month is not accepted in its copy") {
    Bench b;
    REQUIRE(*b.accept("Open day."));
    REQUIRE(*copyMonth(*b.open, kMonth, month("2026-10")));
    CHECK(b.open->gym().block(month("2026-10"))->accepted.empty());
    CHECK(b.now().accepted.size() == 1);
}

TEST_CASE("a limit put back is the rule book's, and so are all; a key no rule knows stays") {
    Bench b;
    const auto limit = [&](const std::string& key) -> std::optional<LimitValue> {
        const auto& limits = b.open->gym().settings.limits;
        const auto it = limits.find(key);
        return it == limits.end() ? std::nullopt : std::optional(it->second);
    };
    const std::string share = "session-length.look_share", weight = "session-length.weight_stop";
    REQUIRE(*setLimit(*b.open, share, LimitValue{0.5, 0.5, false}));
    REQUIRE(*setLimit(*b.open, weight, LimitValue{50, 50, false}));
    CHECK(limit(share) == LimitValue{0.5, 0.5, false});
    CHECK_FALSE(*setLimit(*b.open, share, LimitValue{0.5, 0.5, false}));
    REQUIRE(*setLimit(*b.open, share, std::nullopt));
    CHECK_FALSE(limit(share));
    REQUIRE(*resetLimits(*b.open));
    CHECK_FALSE(limit(weight));
    CHECK(limit("of-another-version.x"));
    CHECK_FALSE(*resetLimits(*b.open));
}
