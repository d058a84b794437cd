// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <nlohmann/json.hpp>

namespace bw::cli {

using Json = nlohmann::ordered_json;

[[nodiscard]] Json number(double value); // whole numbers without a fraction
void sayJson(const Json& object);        // the one object of the answer, on standard output

} // namespace bw::cli
