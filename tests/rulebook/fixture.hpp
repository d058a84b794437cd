// SPDX-License-Identifier: GPL-3.0-or-later
// The bundles of tests/rules-fixtures: for each rule one that must fire it and a near miss that
// must not. They are laid over the Shelf that comes with the program.
#pragma once
#include "blockwright/floor/study.hpp"
#include "blockwright/rules/check.hpp"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace bw::test {

[[nodiscard]] std::filesystem::path fixtureFolder();
[[nodiscard]] std::filesystem::path fixtureFile(std::string_view rule, std::string_view what);

// BLOCKWRIGHT_WRITE=1 in the environment: what the tests would compare is written instead.
[[nodiscard]] bool writing();

class Fixture {
public:
    // `what` is "fires" or "near". Throws when the bundle is not there or has faults.
    Fixture(std::string_view rule, std::string_view what);

    [[nodiscard]] const std::string& rule() const { return rule_; }
    [[nodiscard]] const Gym& gym() const { return gym_; }
    [[nodiscard]] const Block& block() const { return *gym_.latest(); }
    // What the rule finds of a draft; of the fixture's own when none is given.
    [[nodiscard]] std::vector<Finding> find() const { return find(block()); }
    [[nodiscard]] std::vector<Finding> find(const Block& draft) const;

private:
    std::string rule_;
    Gym gym_;
};

} // namespace bw::test
