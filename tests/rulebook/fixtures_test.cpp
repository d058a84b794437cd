// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/rule.hpp"
#include "rulebook/fixture.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <set>

using namespace bw;
using namespace bw::test;
using Json = nlohmann::ordered_json;

namespace {
double rounded(double n) { return std::round(n * 1e6) / 1e6; }

Json findingJson(const Block& block, const Finding& f) {
    Json tries = Json::array();
    for (const Remedy& r : f.remedies) tries.push_back(r.label.english());
    return {{"level", wordOf(f.level)},
            {"place", placeText(block, f.place)},
            {"weeks", f.weeks},
            {"measured", rounded(f.measured)},
            {"limit", f.limit.band ? Json{rounded(f.limit.lo), rounded(f.limit.hi)}
                                   : Json(rounded(f.limit.lo))},
            {"unit", f.unit},
            {"text", f.text.english()},
            {"try", std::move(tries)}};
}

Json findingsJson(const Fixture& fixture) {
    Json out = Json::array();
    for (const Finding& f : fixture.find()) out.push_back(findingJson(fixture.block(), f));
    return out;
}

double beyond(const Finding& f) {
    return std::max({0.0, f.limit.lo - f.measured, f.measured - f.limit.hi});
}
bool sameMatter(const Finding& a, const Finding& b) {
    return a.place == b.place && a.about == b.about;
}

// Nothing is found of the matter any more, or less: of a lower level, or nearer to the limit.
bool eases(const std::vector<Finding>& before, const Finding& f,
           const std::vector<Finding>& after) {
    if (after.size() < before.size()) return true;
    for (const Finding& left : after)
        if (sameMatter(left, f))
            return left.level > f.level || beyond(left) < beyond(f) ||
                   left.also.size() < f.also.size();
    return true;
}
} // namespace

TEST_CASE("each rule has a bundle that fires it, with what is found, and a near miss") {
    for (const Rule& rule : ruleBook()) {
        INFO(rule.id);
        const Fixture fires(rule.id, "fires");
        const auto file = fixtureFile(rule.id, "findings.json");
        const std::string found = findingsJson(fires).dump(1, ' ') + "\n";
        if (writing()) writeText(file, found);
        CHECK(found == readText(file));
        CHECK_FALSE(fires.find().empty());
        for (const Finding& f : Fixture(rule.id, "near").find()) FAIL_CHECK(f.text.english());
    }
}

TEST_CASE("there is no fixture of a rule that is not in the book") {
    std::set<std::string> wanted;
    for (const Rule& rule : ruleBook())
        for (const char* what : {".fires.bundle.json", ".near.bundle.json", ".findings.json"})
            wanted.insert(std::string(rule.id) + what);
    std::set<std::string> there;
    for (const auto& file : std::filesystem::directory_iterator(fixtureFolder()))
        there.insert(file.path().filename().string());
    CHECK(there == wanted);
}

TEST_CASE("what the program offers to do removes a finding or lowers it") {
    int done = 0;
    for (const Rule& rule : ruleBook()) {
        const Fixture fires(rule.id, "fires");
        const auto before = fires.find();
        for (const Finding& f : before)
            for (const Remedy& remedy : f.remedies) {
                if (!remedy.action) continue;
                INFO(rule.id << ": " << f.text.english() << " -> " << remedy.label.english());
                Block draft = fires.block();
                remedy.action(draft);
                CHECK_FALSE(draft == fires.block());
                CHECK(eases(before, f, fires.find(draft)));
                ++done;
            }
    }
    CHECK(done > 40);
}

TEST_CASE("of every rule the program can do something by itself, but for what only people write") {
    const std::set<std::string_view> people{"options", "cue-missing"};
    const std::set<std::string_view> searched{"kit-queue",
                                              "overrun-chance"}; // in the floor's tests
    for (const Rule& rule : ruleBook()) {
        if (people.contains(rule.id) || searched.contains(rule.id)) continue;
        INFO(rule.id);
        int actions = 0;
        for (const Finding& f : Fixture(rule.id, "fires").find())
            for (const Remedy& r : f.remedies) actions += r.action ? 1 : 0;
        CHECK(actions > 0);
    }
}

TEST_CASE("each finding says what to try, and its sentence is whole") {
    for (const Rule& rule : ruleBook())
        for (const Finding& f : Fixture(rule.id, "fires").find()) {
            INFO(rule.id << ": " << f.text.english());
            if (rule.id != "kit-queue" && rule.id != "overrun-chance") // told by a search
                CHECK_FALSE(f.remedies.empty());
            for (char gap = '1'; gap <= '9'; ++gap)
                CHECK(f.text.english().find(std::string{'%', gap}) == std::string::npos);
            CHECK(f.text.english().ends_with('.'));
            CHECK_FALSE(f.basis.english().empty());
            for (const Remedy& r : f.remedies) CHECK_FALSE(r.label.english().ends_with('.'));
        }
}
