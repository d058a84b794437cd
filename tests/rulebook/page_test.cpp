// SPDX-License-Identifier: GPL-3.0-or-later
// docs/rules.md is written from the rules themselves; see writing().
#include "blockwright/rules/rule.hpp"
#include "rulebook/fixture.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <fstream>
#include <sstream>

using namespace bw;
using namespace bw::test;

namespace {
constexpr const char* kHead =
    R"(# The rule book

<!-- Written from the rules by test_rulebook with BLOCKWRIGHT_WRITE=1; edit the rules, not this page. -->

Each rule measures one thing of a drafted month and holds it against a limit. What it finds has a level:
■ **stop** (can't be run as drafted), ▲ **look** (a coach should decide) or ● **note** (for information).
No number here outranks the coach, and none of them says that something is safe.

Every limit can be set for a gym: in the bundle under `gym.limits`, as `"rule.limit": 3` or
`"rule.limit": [0.6, 1.4]`. A limit that the gym has set says so as its basis. Where the literature has
a figure, it is named, the newest position stand first; where there is none, the basis is *common
practice* and claims no more.

**Penalty.** One number for a whole draft: each finding that is left adds the weight of its level, 100 for a
stop, 10 for a look, 1 for a note. A gym sets them for a rule as `rule.weight_stop`, `rule.weight_look` and
`rule.weight_note`; 0 makes a rule cost nothing. 0 is a clean draft. There are no hidden preferences:
what a proposal gains or costs is what these rules say.

**Two settings of the balance** (see [balance.md](balance.md)): `balance.window_months`, how many
calendar months the window holds, this one among them (standard 3); `balance.indirect_share`, what a
muscle that only helps counts, if all are to count alike (standard: as the Shelf tells it).
)";

std::string figure(double n) {
    std::ostringstream out;
    out << n;
    return out.str();
}
std::string valueText(const LimitSpec& l) {
    const std::string unit = l.unit.empty() ? "" : " " + l.unit;
    if (!l.standard.band) return figure(l.standard.lo) + unit;
    return figure(l.standard.lo) + " to " + figure(l.standard.hi) + unit;
}
std::string_view shapeOf(Level level) {
    return level == Level::Stop ? "■" : level == Level::Look ? "▲" : "●";
}

std::string contents() {
    std::string out = "\n| rule | what it looks at |\n| --- | --- |\n";
    for (const Rule& r : ruleBook())
        out += "| [" + std::string(r.id) + "](#" + std::string(r.id) + ") | " + r.title.english() +
               " |\n";
    return out;
}

std::string limitsOf(const Rule& rule) {
    std::string out = "| limit | standard | what it means | basis |\n| --- | --- | --- | --- |\n";
    for (const LimitSpec& l : rule.limits)
        out += "| `" + std::string(rule.id) + "." + l.name + "` | " + valueText(l) + " | " +
               l.meaning.english() + " | " + l.basis.english() + " |\n";
    return out;
}

std::string example(const Rule& rule) {
    const auto found = Fixture(rule.id, "fires").find();
    if (found.empty()) return {};
    const Finding& f = found.front();
    std::string out = "\n> " + std::string(shapeOf(f.level)) + " " + std::string(wordOf(f.level)) +
                      ": " + f.text.english() + "\n>\n";
    for (const Remedy& r : f.remedies) out += "> - try: " + r.label.english() + "\n";
    return out;
}

std::string page() {
    std::string out = kHead + contents();
    for (const Rule& rule : ruleBook())
        out += "\n## " + std::string(rule.id) + "\n\n" + rule.title.english() + "\n\n" +
               limitsOf(rule) + example(rule);
    return out;
}
} // namespace

TEST_CASE("the page about the rules says what the rules say") {
    const std::filesystem::path file = BW_SOURCE_DIR "/docs/rules.md";
    if (writing()) writeText(file, page());
    CHECK(page() == readText(file));
}
