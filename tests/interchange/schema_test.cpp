// SPDX-License-Identifier: GPL-3.0-or-later
// The published schema and the reader are held together: what the schema refuses the reader
// refuses, and both accept every bundle of the project.
#include "bundle_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>
#include <set>

using namespace bw;
using namespace bw::test;

namespace {
constexpr auto kUnchecked = "not checked: this machine has no Python 3 with the jsonschema module "
                            "(Debian: python3-jsonschema)";

// Verdicts, or a warning and none.
std::vector<std::string> verdictsOrWarning(const std::vector<std::string>& bundles) {
    const auto verdicts = schemaVerdicts(bundles);
    if (!verdicts) {
        WARN(kUnchecked);
        return {};
    }
    REQUIRE(verdicts->size() == bundles.size());
    return *verdicts;
}

void namesOf(const Json& schema, std::set<std::string>& names) {
    if (schema.is_object() && schema.contains("properties") && schema["properties"].is_object())
        for (const auto& [name, value] : schema["properties"].items()) names.insert(name);
    if (schema.is_structured())
        for (const auto& part : schema) namesOf(part, names);
}

// A value of any kind, often one at the edge of what is allowed.
Json oddValue(std::mt19937& draw) {
    static const std::vector<Json> values{nullptr,
                                          true,
                                          0,
                                          -1,
                                          1,
                                          2,
                                          3,
                                          0.5,
                                          1e9,
                                          1e300,
                                          -0.0,
                                          1001,
                                          7201,
                                          "",
                                          "x",
                                          "-",
                                          "goblet-squat",
                                          "2026-13",
                                          "reps",
                                          "warm-up",
                                          std::string(201, 'n'),
                                          Json::array(),
                                          Json::array({1, 2}),
                                          Json::array({2, 1}),
                                          Json::array({1, 2, 3}),
                                          Json::object(),
                                          Json{{"squat", 1}},
                                          Json{{"8", 4}}};
    return values[draw() % values.size()];
}

std::string withOddValue(std::mt19937& draw) {
    static const Json flat = example().flatten();
    auto at =
        Json::json_pointer(std::next(flat.begin(), static_cast<int>(draw() % flat.size())).key());
    for (auto up = draw() % 3; up > 0 && !at.parent_pointer().empty(); --up)
        at = at.parent_pointer();
    Json bundle = example();
    bundle[at] = oddValue(draw);
    return bundle.dump();
}
} // namespace

TEST_CASE("schema and reader accept every bundle that comes with the project") {
    std::vector<std::string> bundles{docExample()};
    for (const auto& path : projectBundles()) bundles.push_back(readText(path));
    bundles.push_back(writeBundle(shippedShelf()));
    bundles.push_back(writeBundle(readGood(docExample())));
    REQUIRE(bundles.size() > 4);
    for (const auto& bundle : bundles) {
        const auto reading = readBundle(bundle, &shelfGym());
        INFO(listed(reading.errors));
        CHECK(reading.bundle);
    }
    for (const auto& verdict : verdictsOrWarning(bundles)) CHECK(verdict == "yes");
}

TEST_CASE("the schema refuses the faults that a schema can see") {
    std::vector<std::string> bundles;
    const auto table = faultTable();
    for (const auto& fault : table) bundles.push_back(withChange(fault).dump());
    const auto verdicts = verdictsOrWarning(bundles);
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        INFO(table[i]["about"] << ": " << verdicts[i]);
        CHECK((verdicts[i] != "yes") == table[i]["schema"].get<bool>());
    }
}

TEST_CASE("what the schema refuses the reader refuses, whatever stands in whatever place") {
    std::mt19937 draw(20'260'901);
    std::vector<std::string> bundles;
    for (int i = 0; i < 600; ++i) bundles.push_back(withOddValue(draw));
    const auto verdicts = verdictsOrWarning(bundles);
    int refused = 0;
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        if (verdicts[i] == "yes") continue;
        ++refused;
        INFO(verdicts[i] << "\n" << bundles[i]);
        CHECK_FALSE(readBundle(bundles[i]).bundle);
    }
    if (!verdicts.empty()) CHECK(refused > 300);
}

TEST_CASE("the page about the bundle names every key of the schema") {
    const std::string project = BW_SOURCE_DIR;
    const auto page = readText(project + "/docs/bundle.md");
    std::set<std::string> names;
    namesOf(Json::parse(readText(project + "/docs/bundle.schema.json")), names);
    CHECK(names.size() > 70);
    for (const auto& name : names) {
        INFO(name);
        CHECK(page.find("`" + name + "`") != page.npos);
    }
}
