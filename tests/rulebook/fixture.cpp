// SPDX-License-Identifier: GPL-3.0-or-later
#include "rulebook/fixture.hpp"

#include "interchange/read_bundle.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <stdexcept>

namespace bw::test {

namespace {
constexpr std::array<std::string_view, 3> kOfTheFloor{"kit-queue", "overrun-chance", "third-round"};

Gym shippedGym() {
    Gym gym;
    layOver(gym, shippedShelf());
    gym.settings = {};
    gym.kit.clear(); // a gym that tells no kit owns everything
    return gym;
}

std::optional<FloorStudy> studyFor(std::string_view rule, const Gym& gym, const Block& draft) {
    if (std::find(kOfTheFloor.begin(), kOfTheFloor.end(), rule) == kOfTheFloor.end())
        return std::nullopt;
    FloorOptions options;
    options.runs = 200;
    return studyFloor(gym, draft, options).value();
}
} // namespace

std::filesystem::path fixtureFolder() { return BW_SOURCE_DIR "/tests/rules-fixtures"; }
std::filesystem::path fixtureFile(std::string_view rule, std::string_view what) {
    return fixtureFolder() / (std::string(rule) + '.' + std::string(what));
}

bool writing() {
    const char* set = std::getenv("BLOCKWRIGHT_WRITE");
    return set && *set != '\0';
}

Fixture::Fixture(std::string_view rule, std::string_view what) : rule_(rule), gym_(shippedGym()) {
    const auto file = fixtureFile(rule, std::string(what) + ".bundle.json");
    const auto reading = readBundle(readText(file), &gym_);
    for (const auto& fault : reading.errors)
        throw std::runtime_error(file.string() + " " + fault.pointer + ": " + fault.text.english());
    layOver(gym_, *reading.bundle);
}

std::vector<Finding> Fixture::find(const Block& draft) const {
    const auto study = studyFor(rule_, gym_, draft);
    auto found = check(gym_, draft, {}, study ? &*study : nullptr).findings;
    std::erase_if(found, [&](const Finding& f) { return f.rule != rule_; });
    return found;
}

} // namespace bw::test
