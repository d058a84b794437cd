// SPDX-License-Identifier: GPL-3.0-or-later
// Bundles for these tests: the example of docs/bundle.md is the good one, faults are put into it.
#pragma once
#include "interchange/bundle.hpp"

#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace bw::test {

using Json = nlohmann::ordered_json;

[[nodiscard]] const std::string& docExample(); // the text
[[nodiscard]] Json example();                  // the same, to be changed

// All bundles in the project's own folders: the shelf and the demonstration.
[[nodiscard]] std::vector<std::filesystem::path> projectBundles();

// The example with one change, as faults.json has it: "put" a value at a pointer or, without one,
// take away what is there; "repeat" puts a text so many times over.
[[nodiscard]] Json withChange(const Json& change);
[[nodiscard]] Json faultTable();

[[nodiscard]] std::vector<std::string> pointersOf(const std::vector<BundleFault>& faults);
[[nodiscard]] std::vector<std::string> errorsIn(std::string_view json); // their pointers
// "pointer: sentence" a line, to be shown when a check fails.
[[nodiscard]] std::string listed(const std::vector<BundleFault>& faults);

// Throws with the faults when there are any.
[[nodiscard]] Bundle readGood(std::string_view json, const Gym* over = nullptr);
// The shipped shelf: its files refer to each other.
[[nodiscard]] const Gym& shelfGym();
[[nodiscard]] bool same(const Bundle& a, const Bundle& b);

// For each bundle what the schema says: "yes" or why not. None when Python or its jsonschema module
// is not there; the caller then says that it could not check.
[[nodiscard]] std::optional<std::vector<std::string>>
schemaVerdicts(const std::vector<std::string>& bundles);

} // namespace bw::test
