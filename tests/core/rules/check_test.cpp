// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

#include <set>

using namespace bw;
using namespace bw::test;

namespace {
const Rule& rule(std::string_view id) {
    for (const Rule& r : ruleBook())
        if (r.id == id) return r;
    throw std::logic_error("no such rule");
}
void withRounds(Draft& d, std::vector<RoundsMode> weeks) {
    d.block.stair.clear();
    for (const RoundsMode mode : weeks) d.block.stair.push_back({mode, Rir{}, Intent::Build, {}});
}
ExactTime planned(const Draft& d, int w) {
    return timeSession(d.gym.settings, d.gym.shelf, d.block, week(w)).total.planned;
}
} // namespace

TEST_CASE(
    "over the weeks a finding becomes one: worst level, its first week's figures, all weeks") {
    Draft d = cleanDraft();
    withRounds(d, {RoundsMode::Low, RoundsMode::Open, RoundsMode::High, RoundsMode::High});
    // Low rounds fit, open rounds are tight, high rounds run over.
    d.gym.settings.classMinutes = 60;
    d.section(kStrength).talk += Millis{3'590'000} - roundHalvesUp(planned(d, 2));
    REQUIRE(planned(d, 1) < Millis{3'420'000});
    REQUIRE(planned(d, 3) > Millis{3'600'000});
    const auto found = d.findAll("session-length");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Stop);
    CHECK(found[0].measured == seconds(planned(d, 3)));
    CHECK(found[0].limit == number(3600));
    CHECK(found[0].weeks == std::vector<int>{2, 3, 4});
    CHECK(d.find("session-length", 1).empty());
    CHECK(d.find("session-length", 2).at(0).level == Level::Look);
    CHECK(d.find("session-length", 3).at(0).weeks == std::vector<int>{3});
}

TEST_CASE("a month has the weeks of its stair") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(0, 0);
    withRounds(d, {RoundsMode::Open, RoundsMode::Open, RoundsMode::Low, RoundsMode::Low,
                   RoundsMode::High, RoundsMode::High});
    CHECK(d.findAll("power-rest").at(0).weeks == std::vector<int>{1, 2, 3, 4, 5, 6});
    withRounds(d, {RoundsMode::Open});
    CHECK(d.findAll("power-rest").at(0).weeks == std::vector<int>{1});
}

TEST_CASE("findings stand by level, then place, then rule of the book") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(0, 0);        // look at the power group
    d.slot(kPower, 0, 0).dose = reps(20, 20);         // stop at a power slot
    d.section(kFinisher).budget = secondsRange(0, 1); // look at the finisher
    d.gym.settings.classMinutes = 5;                  // stop at the session
    d.slot(kStrength, 0, 1).dose = reps(2, 2);        // looks at the first superset
    d.section(kStrength).groups.pop_back();           // looks at the session
    const auto found = check(d.gym, d.block).findings;
    std::vector<std::string> rules;
    for (const Finding& f : found) rules.push_back(f.rule);
    CHECK(rules == std::vector<std::string>{"session-length", "power-dose", "pattern-missing",
                                            "pattern-missing", "power-rest", "superset-work",
                                            "heavy-first", "section-length"});
    for (std::size_t i = 1; i < found.size(); ++i) {
        CHECK(found[i - 1].level <= found[i].level);
        if (found[i - 1].level == found[i].level) CHECK(found[i - 1].place <= found[i].place);
    }
}

TEST_CASE("the same draft gives the same findings") {
    Draft d = cleanDraft();
    d.section(kStrength).groups.pop_back();
    d.slot(kFinisher, 0, 0) = Slot{};
    const auto once = check(d.gym, d.block);
    const auto again = check(d.gym, d.block);
    REQUIRE(once.findings.size() == again.findings.size());
    for (std::size_t i = 0; i < once.findings.size(); ++i) {
        CHECK(once.findings[i].text == again.findings[i].text);
        REQUIRE(once.findings[i].remedies.size() == again.findings[i].remedies.size());
        for (std::size_t r = 0; r < once.findings[i].remedies.size(); ++r)
            CHECK(once.findings[i].remedies[r].label == again.findings[i].remedies[r].label);
    }
}

TEST_CASE("the penalty adds a weight a finding, however many weeks it has") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(0, 0);
    d.slot(kPower, 0, 0).dose = reps(20, 20);
    const CheckResult result = check(d.gym, d.block);
    CHECK(result.count(Level::Stop) == 1);
    CHECK(result.count(Level::Look) == 1);
    CHECK(result.count(Level::Note) == 0);
    CHECK(result.penalty == rule("power-dose").weights.stop + rule("power-rest").weights.look);
    CHECK(check(d.gym, d.block, week(1)).penalty == result.penalty);
    d.limit("power-rest.weight_look", 2.5);
    d.limit("power-dose.weight_stop", 0);
    CHECK(check(d.gym, d.block).penalty == 2.5);
}

TEST_CASE("limits that no rule knows are named") {
    GymSettings gym;
    gym.limits = {{"session-length.look_share", {}},
                  {"session-length.weight_look", {}},
                  {"session-length.looks_share", {}},
                  {"no-such-rule.seconds", {}},
                  {"power-rest", {}},
                  {"ledger.drift", {}},
                  {"ledger.drifts", {}},
                  {"", {}}};
    CHECK(unknownLimits(gym) == std::vector<std::string>{"", "ledger.drifts",
                                                         "no-such-rule.seconds", "power-rest",
                                                         "session-length.looks_share"});
}

TEST_CASE("every rule says what it measures, by what limits and on what basis") {
    std::set<std::string_view> ids;
    for (const Rule& r : ruleBook()) {
        INFO(r.id);
        CHECK(ids.insert(r.id).second);
        CHECK(isIdText(r.id));
        CHECK(r.title.english().ends_with('.'));
        CHECK(r.judge != nullptr);
        CHECK_FALSE(r.limits.empty());
        for (const LimitSpec& limit : r.limits) {
            INFO(limit.name);
            CHECK_FALSE(limit.basis.english().empty());
            CHECK(limit.meaning.english().ends_with('.'));
            CHECK(limit.standard.lo <= limit.standard.hi);
            CHECK((limit.standard.band || limit.standard.lo == limit.standard.hi));
            CHECK_FALSE(limit.name.starts_with("weight_"));
        }
        CHECK(r.weights.stop > r.weights.look);
        CHECK(r.weights.look > r.weights.note);
        CHECK(r.weights.note > 0);
    }
}

TEST_CASE("an empty draft and one of unknown exercises can be checked") {
    Draft d = cleanDraft();
    d.gym.shelf = Shelf{};
    CHECK(d.findAll("pattern-missing").size() == 5);
    d.block.sections.clear();
    d.block.stair.clear();
    d.block.stair = {StairStep{}};
    CHECK(d.findAll("pattern-missing").size() == 5);
    CHECK(d.findAll("session-length").empty());
}

TEST_CASE("what a remedy names may have gone by the time it is carried out") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(0, 0);
    d.gym.settings.classMinutes = 5;
    d.slot(kStrength, 0, 1).dose = reps(2, 2);
    d.section(kFinisher).budget = secondsRange(0, 1);
    const auto found = check(d.gym, d.block).findings;
    Block empty = d.block;
    empty.sections.clear();
    int carriedOut = 0;
    for (const Finding& f : found)
        for (const Remedy& r : f.remedies) {
            Block copy = empty;
            if (!r.action) continue;
            r.action(copy);
            CHECK(copy == empty);
            ++carriedOut;
        }
    CHECK(carriedOut > 5);
}

TEST_CASE("the history is the months before, newest first") {
    Gym gym;
    for (const char* m : {"2026-06", "2026-08", "2026-09", "2026-10"}) {
        Block b = block(m, {section(SectionKind::Strength,
                                    {group(rounds(1, 1), secondsRange(0, 0),
                                           {slot(std::string("x-") + m, reps(5, 5)), Slot{}})})});
        gym.put(b);
    }
    const History history(gym, month("2026-09"));
    REQUIRE(history.blocks().size() == 2);
    CHECK(history.blocks()[0]->month == month("2026-08"));
    CHECK(history.blocks()[1]->month == month("2026-06"));
    CHECK(history.knows(ex("x-2026-06")));
    CHECK_FALSE(history.knows(ex("x-2026-09")));
    CHECK_FALSE(history.knows(ex("x-2026-10")));
    CHECK(History(gym, month("2026-06")).empty());
    CHECK(History(gym, month("2027-01")).blocks().size() == 4);
}

TEST_CASE("the facts know every slot in the order of the session") {
    Draft d = cleanDraft();
    d.slot(kPower, 0, 1) = Slot{};
    const History history(d.gym, d.block.month);
    const Facts facts = Facts::of(d.gym, d.block, history, week(1));
    REQUIRE(facts.slots.size() == 10);
    for (std::size_t i = 1; i < facts.slots.size(); ++i)
        CHECK(facts.slots[i - 1].place < facts.slots[i].place);
    for (const SlotFact& s : facts.slots) {
        CHECK(s.slot == slotAt(d.block, s.place));
        CHECK(s.group == groupAt(d.block, s.place));
        CHECK(s.section == sectionAt(d.block, s.place));
        CHECK((s.exercise == nullptr) == s.slot->open());
    }
    CHECK(facts.slots[3].work.middle == Millis{0});
    CHECK(facts.slots[4].work.middle == Millis{20'000}); // 5 reps at 4 s
    CHECK(facts.time.openSlots == 1);
}
