// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that look at what the Shelf says of an exercise.
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
template <class Change> void changeEntry(Draft& d, std::string_view id, Change change) {
    Exercise e = *d.gym.shelf.find(ex(id));
    change(e);
    d.gym.shelf.put(e);
}
// A month before in which every exercise of the draft was done.
void addHistory(Draft& d) {
    Block before = d.block;
    before.month = month("2026-08");
    d.gym.put(before);
}
} // namespace

TEST_CASE("an exercise without an easier and a harder option is noted") {
    Draft d = cleanDraft();
    changeEntry(d, "front-squat", [](Exercise& e) { e.noEasier.clear(); });
    auto found = d.find("options");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].place == Place{kStrength, 0, 0});
    CHECK(found[0].measured == 1);
    CHECK(found[0].limit == number(2));
    CHECK(found[0].text.english() == "front-squat (C1) has no easier option on the Shelf.");
    changeEntry(d, "front-squat", [](Exercise& e) { e.noHarder.clear(); });
    found = d.find("options");
    CHECK(found.at(0).measured == 0);
    CHECK(found.at(0).remedies.size() == 2);
    d.limit("options.ways", 0);
    CHECK(d.find("options").empty());
}

TEST_CASE("an option counts only while the Shelf offers it") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) {
        e.noEasier.clear();
        e.easier = {ex("hip-hinge")};
    });
    CHECK(d.find("options").size() == 1); // not on the Shelf
    d.gym.shelf.put(careful("hip-hinge", Pattern::Hinge, "finisher"));
    CHECK(d.find("options").empty());
    changeEntry(d, "hip-hinge", [](Exercise& e) { e.retired = true; });
    CHECK(d.find("options").size() == 1);
}

TEST_CASE("only strength and finisher need options") {
    Draft d = cleanDraft();
    for (const char* id : {"leg-swing", "box-jump"})
        changeEntry(d, id, [](Exercise& e) { e.noEasier.clear(); });
    CHECK(d.find("options").empty());
}

TEST_CASE("the options rule names an exercise that would serve") {
    Draft d = cleanDraft();
    changeEntry(d, "front-squat", [](Exercise& e) {
        e.noEasier.clear();
        e.skill = 2;
    });
    const auto named = [&] { return d.find("options").at(0).remedies.at(0).label.args; };
    CHECK(named() == std::vector<std::string>{"front-squat"}); // a box jump is no strength exercise
    d.gym.shelf.put(careful("hip-hinge", Pattern::Hinge, "strength-heavy"));
    d.gym.shelf.put(careful("leg-press", Pattern::Squat, "strength-heavy"));
    CHECK(named() == std::vector<std::string>{"front-squat", "leg-press"});
    Exercise simpler = careful("box-squat", Pattern::Squat, "strength-long");
    d.gym.shelf.put(simpler);
    CHECK(named() == std::vector<std::string>{"front-squat", "leg-press"});
    simpler.harder = {ex("front-squat")}; // it names the other as its harder one: a better guess
    d.gym.shelf.put(simpler);
    CHECK(named() == std::vector<std::string>{"front-squat", "box-squat"});
}

TEST_CASE("a skilled exercise without cues is noted, without a caution it is looked at") {
    Draft d = cleanDraft();
    changeEntry(d, "ring-row",
                [](Exercise& e) { e.cues.clear(), e.cautions.clear(), e.skill = 2; });
    CHECK(d.find("cue-missing").empty());
    CHECK(d.find("caution-missing").empty());
    changeEntry(d, "ring-row", [](Exercise& e) { e.skill = 3; });
    const Finding cue = d.find("cue-missing").at(0);
    const Finding caution = d.find("caution-missing").at(0);
    CHECK(cue.level == Level::Note);
    CHECK(caution.level == Level::Look);
    CHECK(cue.place == Place{kStrength, 1, 1});
    CHECK(caution.place == Place{kStrength, 1, 1});
    CHECK(cue.measured == 0);
    CHECK(cue.limit == number(1));
    changeEntry(d, "ring-row",
                [](Exercise& e) { e.cues = {"Elbows back"}, e.cautions = {"Stop on pain"}; });
    CHECK(d.find("cue-missing").empty());
    CHECK(d.find("caution-missing").empty());
}

TEST_CASE("an exercise new to a gym that has a history needs cues and a caution") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) { e.cues.clear(), e.cautions.clear(); });
    CHECK(d.find("cue-missing").empty()); // in a gym's first month everything would be new
    addHistory(d);
    CHECK(d.find("cue-missing").empty()); // known from August
    CHECK(d.find("caution-missing").empty());
    Block august = *d.gym.block(month("2026-08"));
    august.sections[kFinisher].groups.clear();
    d.gym.put(august);
    CHECK(d.find("cue-missing").size() == 1);
    CHECK(d.find("caution-missing").at(0).text.english().find("is new to this gym") !=
          std::string::npos);
}

TEST_CASE("months after the draft are no history") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) { e.cues.clear(); });
    Block later = d.block;
    later.month = month("2026-10");
    later.sections.clear();
    d.gym.put(later);
    d.gym.put(d.block);
    CHECK(d.find("cue-missing").empty());
}

TEST_CASE("an exercise that stands twice is found once, with both places") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) { e.cautions.clear(), e.skill = 3; });
    d.slot(kFinisher, 0, 1) = d.slot(kFinisher, 0, 0);
    const auto found = d.find("caution-missing");
    REQUIRE(found.size() == 1);
    CHECK(found[0].place == Place{kFinisher, 0, 0});
    CHECK(found[0].also == std::vector<Place>{Place{kFinisher, 0, 1}});
}

TEST_CASE("another exercise with a caution can take the place of one without") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) { e.cautions.clear(), e.skill = 3; });
    d.gym.shelf.put(careful("band-hinge", Pattern::Hinge, "finisher"));
    const Finding f = d.find("caution-missing").at(0);
    const Draft fixed = d.after(remedy(f, "Use band-hinge instead of swing (E1)"));
    CHECK(fixed.find("caution-missing").empty());
    CHECK(fixed.slot(kFinisher, 0, 0).dose == d.slot(kFinisher, 0, 0).dose);
}

TEST_CASE("the gym says how many cues and from which skill on") {
    Draft d = cleanDraft();
    d.limit("cue-missing.fewest", 2);
    d.limit("cue-missing.skill", 1);
    const auto found = d.find("cue-missing");
    CHECK(found.size() == 10);
    CHECK(found.at(0).basis.english() == "This gym's setting.");
    CHECK(d.find("caution-missing").empty());
    d.limit("caution-missing.fewest", 2);
    d.limit("caution-missing.skill", 1);
    CHECK(d.find("caution-missing").size() == 10);
}

TEST_CASE("each family of patterns that nothing trains is looked at by itself") {
    struct Case {
        const char* about;
        std::vector<const char*> takenOut;
    };
    const auto c =
        GENERATE(values<Case>({{"squat-or-lunge", {"front-squat", "step-up", "box-jump"}},
                               {"hinge", {"swing"}},
                               {"push", {"bench-press"}},
                               {"pull", {"ring-row"}},
                               {"trunk", {"dead-bug", "ball-throw"}}}));
    Draft d = cleanDraft();
    for (std::size_t i = 0; i < c.takenOut.size(); ++i) {
        CHECK(d.find("pattern-missing").empty()); // one that is left is enough
        changeEntry(d, c.takenOut[i], [](Exercise& e) {
            e.patterns = Shares<Pattern>::of({{Pattern::Mobility, Share::whole()}}).value();
        });
    }
    const auto found = d.findAll("pattern-missing");
    REQUIRE(found.size() == 1);
    CHECK(found[0].about == c.about);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place.isSession());
    CHECK(found[0].measured == 0);
    CHECK(found[0].limit == number(1));
    CHECK(found[0].weeks == std::vector<int>{1, 2, 3, 4});
}

TEST_CASE("a quarter of an exercise trains a pattern, less does not") {
    Draft d = cleanDraft();
    const auto hinge = [&](double share) {
        changeEntry(d, "swing", [&](Exercise& e) {
            e.patterns = Shares<Pattern>::of({{Pattern::Hinge, Share::of(share).value()},
                                              {Pattern::Locomotion, Share::of(1 - share).value()}})
                             .value();
        });
    };
    hinge(0.25);
    CHECK(d.find("pattern-missing").empty());
    hinge(0.24);
    CHECK(d.find("pattern-missing").size() == 1);
    d.limit("pattern-missing.least_share", 0.2);
    CHECK(d.find("pattern-missing").empty());
}

TEST_CASE("two missing families are two findings, also over all weeks") {
    Draft d = cleanDraft();
    d.section(kStrength).groups.pop_back();
    const auto found = d.findAll("pattern-missing");
    REQUIRE(found.size() == 2);
    CHECK(found[0].about == "push");
    CHECK(found[1].about == "pull");
}

TEST_CASE("an open slot trains nothing but could take what is missing") {
    Draft d = cleanDraft();
    Slot& open = d.slot(kFinisher, 0, 0);
    open = Slot{};
    d.gym.shelf.put(careful("hip-hinge", Pattern::Hinge, "warm-up"));
    d.gym.shelf.put(careful("deadlift", Pattern::Hinge, "finisher"));
    Finding f = d.find("pattern-missing").at(0);
    CHECK(f.about == "hinge");
    CHECK(f.also == std::vector<Place>{Place{kFinisher, 0, 0}});
    CHECK(f.text.english() == "Nothing in this session trains a hinge; the open slot E1 could.");
    CHECK(f.remedies.size() == 2); // swing and deadlift; hip-hinge is no finisher
    const Draft filled = d.after(remedy(f, "Put swing into the open slot E1"));
    CHECK(filled.find("pattern-missing").empty());
    CHECK(filled.slot(kFinisher, 0, 0).dose == reps(10, 12));

    open.patterns = {Pattern::Squat, Pattern::Hinge};
    CHECK(d.find("pattern-missing").at(0).also.size() == 1);
    open.patterns = {Pattern::Squat};
    f = d.find("pattern-missing").at(0);
    CHECK(f.also.empty());
    CHECK(f.text.english() == "Nothing in this session trains a hinge.");
}

TEST_CASE("without an open slot, what can be spared makes room") {
    Draft d = cleanDraft();
    changeEntry(d, "swing", [](Exercise& e) {
        e.patterns = Shares<Pattern>::of({{Pattern::Locomotion, Share::whole()}}).value();
    });
    d.gym.shelf.put(careful("good-morning", Pattern::Hinge, "finisher"));
    const Finding f = d.find("pattern-missing").at(0);
    CHECK(d.after(remedy(f, "Use good-morning instead of crawl (E2)"))
              .find("pattern-missing")
              .empty());
    d.slot(kFinisher, 0, 1).locked = true;
    CHECK_NOTHROW(
        remedy(d.find("pattern-missing").at(0), "Use good-morning instead of swing (E1)"));
    d.slot(kFinisher, 0, 0).main = true;
    CHECK(d.find("pattern-missing").at(0).remedies.empty());
}

TEST_CASE("what makes room leaves no other family untrained") {
    Draft d = cleanDraft();
    d.section(kFinisher).groups.clear();
    // Row and press are the only pull and push; squat and step-up stand in for each other.
    d.gym.shelf.put(careful("deadlift", Pattern::Hinge, "strength-long"));
    const Finding f = d.find("pattern-missing").at(0);
    REQUIRE(f.remedies.size() == 1);
    CHECK(f.remedies[0].label.english() == "Use deadlift instead of step-up (C2)");
    CHECK(d.after(f.remedies[0]).find("pattern-missing").empty());
}

TEST_CASE("only what the gym owns the kit for is offered") {
    Draft d = cleanDraft();
    d.slot(kFinisher, 0, 0) = Slot{};
    changeEntry(d, "swing", [](Exercise& e) { e.needs = {{KitNeed{kit("kettlebell"), 2, {}}}}; });
    CHECK(d.find("pattern-missing").at(0).remedies.size() == 1); // no kit told: owns everything
    KitItem bells{kit("kettlebell"), "Kettlebell", 1, Claim::Group, {}, {}, {}, {}};
    d.gym.put(bells);
    const auto remedies = d.find("pattern-missing").at(0).remedies;
    for (const Remedy& r : remedies) CHECK(r.label.english().find("swing") == std::string::npos);
    bells.units = 2;
    d.gym.put(bells);
    CHECK(d.find("pattern-missing").at(0).remedies.size() == 1);
}
