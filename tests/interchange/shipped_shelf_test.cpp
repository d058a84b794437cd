// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <map>
#include <set>

using namespace bw;
using namespace bw::test;

TEST_CASE("the shipped shelf is read without a note and holds every file of resources/shelf") {
    std::size_t exercises = 0, kit = 0;
    for (const auto& path : projectBundles()) {
        if (path.parent_path().filename() != "shelf") continue;
        const auto file = Json::parse(readText(path));
        exercises += file.value("shelf", Json::array()).size();
        kit += file.value(Json::json_pointer("/gym/kit"), Json::array()).size();
        CHECK(readBundle(readText(path), &shelfGym()).notes.empty());
    }
    CHECK(exercises > 200);
    CHECK(shippedShelf().shelf.size() == exercises); // so no id is in two files
    CHECK(shippedShelf().kit.size() == kit);
    CHECK_FALSE(shippedShelf().settings);
}

TEST_CASE("the shipped shelf names only kit that it knows and owns none of it") {
    std::set<std::string> known, needed;
    for (const auto& item : shippedShelf().kit) {
        CHECK(item.units == 0);
        known.insert(item.id.text());
    }
    for (const auto& e : shippedShelf().shelf)
        for (const auto& alternative : e.needs)
            for (const auto& need : alternative) needed.insert(need.kit.text());
    CHECK(std::includes(known.begin(), known.end(), needed.begin(), needed.end()));
}

TEST_CASE("easier and harder of the shipped shelf are each other's inverse") {
    std::map<std::string, std::set<std::string>> harder;
    for (const auto& e : shippedShelf().shelf)
        for (const auto& up : e.harder) harder[e.id.text()].insert(up.text());
    std::size_t steps = 0;
    for (const auto& e : shippedShelf().shelf)
        for (const auto& down : e.easier) {
            INFO(e.id.text() << " and " << down.text());
            CHECK(harder[down.text()].count(e.id.text()) == 1);
            ++steps;
        }
    std::size_t ups = 0;
    for (const auto& [id, set] : harder) ups += set.size();
    CHECK(steps == ups);
    CHECK(steps > 100);
}
