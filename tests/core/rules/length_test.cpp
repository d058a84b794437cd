// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
// The clean draft with so much talk that week 2 is planned at exactly this long.
Draft lasting(Millis planned) {
    Draft d = cleanDraft();
    const auto now =
        roundHalvesUp(timeSession(d.gym.settings, d.gym.shelf, d.block, week(2)).total.planned);
    d.section(kStrength).talk = planned - now;
    return d;
}
Millis sectionPlanned(const Draft& d, int section) {
    const auto time = timeSession(d.gym.settings, d.gym.shelf, d.block, week(2));
    return roundHalvesUp(time.sections.at(static_cast<std::size_t>(section)).total.planned);
}
Range<Millis> millis(Millis lo, Millis hi) { return Range<Millis>::of(lo, hi).value(); }
} // namespace

TEST_CASE("the clean draft is clean") {
    const CheckResult result = check(cleanDraft().gym, cleanDraft().block);
    for (const Finding& f : result.findings) FAIL_CHECK(f.rule << ": " << f.text.english());
    CHECK(result.penalty == 0);
}

TEST_CASE("a session planned longer than the class is stopped") {
    const auto found = lasting(Millis{3'600'001}).find("session-length");
    REQUIRE(found.size() == 1);
    const Finding& f = found[0];
    CHECK(f.level == Level::Stop);
    CHECK(f.place.isSession());
    CHECK(f.measured == Approx(3600.001));
    CHECK(f.limit == number(3600));
    CHECK(f.unit == "s");
    CHECK(f.basis.english() == "This gym's setting.");
    CHECK(f.weeks == std::vector<int>{2});
}

TEST_CASE("a session over 95 % of the class is looked at, and at 95 % it is not") {
    const auto full = lasting(Millis{3'600'000}).find("session-length");
    REQUIRE(full.size() == 1);
    CHECK(full[0].level == Level::Look);
    CHECK(full[0].measured == 3600);
    CHECK(full[0].limit == number(3420));
    CHECK(lasting(Millis{3'420'001}).find("session-length").size() == 1);
    CHECK(lasting(Millis{3'420'000}).find("session-length").empty());
}

TEST_CASE("the gym says how full a class may be") {
    Draft d = lasting(Millis{3'420'001});
    d.limit("session-length.look_share", 0.96);
    CHECK(d.find("session-length").empty());
    d.limit("session-length.look_share", 0.9);
    CHECK(d.find("session-length")[0].limit == number(3240));
}

TEST_CASE("what makes a session shorter saves what it says") {
    const Draft d = lasting(Millis{3'900'000});
    const Finding f = d.find("session-length").at(0);
    REQUIRE(f.remedies.size() == 3);
    CHECK(f.text.english() ==
          "The session is planned at 1:05:00 and the class has 1:00:00: it runs 5:00 over.");
    // The finisher: 60 + 40 s of work and 20 s of set-up a round; 2.5 rounds become 2.
    const Draft cut = d.after(remedy(f, "Cut the rounds of group E from 2–3 to 2: saves 1:38"));
    CHECK(cut.group(kFinisher).rounds == rounds(2, 2));
    CHECK(cut.find("session-length").at(0).measured == Approx(3900 - 60 - 37.5));
    // Half of 60 s: power once; each strength group 1.5 rests and once between; the finisher 1.5
    // x 15.
    const Draft rests = d.after(remedy(f, "Keep every rest at its short end: saves 2:53"));
    CHECK(rests.find("session-length").at(0).measured == Approx(3900 - 30 - 4 * 30 - 22.5));
    CHECK(d.after(remedy(f, "Explain the strength section before")).find("session-length").empty());
}

TEST_CASE("in a week of low rounds a round is taken off the low end") {
    Draft d = cleanDraft();
    d.gym.settings.classMinutes = 20;
    const Finding f = d.find("session-length", 1).at(0);
    const Draft cut = d.after(remedy(f, "Cut the rounds"));
    CHECK(cut.group(kFinisher).rounds == rounds(1, 3));
    CHECK(cut.find("session-length", 1).at(0).measured < f.measured);
}

TEST_CASE("a section outside its budget is looked at, on the budget's edge it is not") {
    Draft d = cleanDraft();
    const Millis planned = sectionPlanned(d, kStrength);
    d.section(kStrength).budget = millis(planned, planned);
    CHECK(d.find("section-length").empty());
    d.section(kStrength).budget = millis(Millis{0}, planned - Millis{1});
    const Finding over = d.find("section-length").at(0);
    CHECK(over.level == Level::Look);
    CHECK(over.place == Place{kStrength});
    CHECK(over.measured == Approx(static_cast<double>(planned.count()) / 1000));
    CHECK(over.limit == band(0, static_cast<double>((planned - Millis{1}).count()) / 1000));
    CHECK(over.unit == "s");
    d.section(kStrength).budget = millis(planned + Millis{1}, planned * 2);
    CHECK(d.find("section-length").size() == 1);
    d.section(kStrength).budget.reset();
    CHECK(d.find("section-length").empty());
}

TEST_CASE("what brings a section back into its budget does so") {
    Draft d = cleanDraft();
    const Millis planned = sectionPlanned(d, kStrength);
    d.section(kStrength).talk = Millis{60'000};
    d.section(kStrength).budget = millis(Millis{0}, planned);
    const Finding over = d.find("section-length").at(0);
    CHECK(d.after(remedy(over, "Explain the strength section")).find("section-length").empty());
    CHECK(d.after(remedy(over, "Cut the rounds of group C")).find("section-length").empty());
    CHECK(d.after(remedy(over, "Keep every rest of this section")).find("section-length").empty());
    CHECK(
        d.after(remedy(over, "Give the strength section a budget")).find("section-length").empty());

    d.section(kStrength).budget = millis(planned + Millis{90'000}, planned * 2);
    const Finding under = d.find("section-length").at(0);
    const Draft more =
        d.after(remedy(under, "Set the rounds of group C to 2–4 instead of 2–3: adds 1:27"));
    CHECK(more.find("section-length").empty());
    CHECK(d.after(remedy(under, "Give the strength section a budget"))
              .find("section-length")
              .empty());
}

TEST_CASE("a short section says that its open slots take no time yet") {
    Draft d = cleanDraft();
    d.section(kFinisher).budget = secondsRange(600, 900);
    d.slot(kFinisher, 0, 1) = Slot{};
    const Finding f = d.find("section-length").at(0);
    CHECK(f.text.english().find("its open slots take no time yet") != std::string::npos);
}

TEST_CASE("the gym may leave its budgets some slack") {
    Draft d = cleanDraft();
    const Millis planned = sectionPlanned(d, kStrength);
    d.section(kStrength).budget = millis(Millis{0}, planned - Millis{30'000});
    d.limit("section-length.slack_seconds", 30);
    CHECK(d.find("section-length").empty());
    d.limit("section-length.slack_seconds", 29);
    CHECK(d.find("section-length").size() == 1);
}
