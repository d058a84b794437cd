// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/floor_play.hpp"

#include "cli/interrupt.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <thread>

namespace bw::cli {

namespace {
std::string_view wordOf(FloorStage stage) {
    switch (stage) {
    case FloorStage::Classes: return "classes";
    case FloorStage::BestStart: return "best start";
    case FloorStage::Buys: return "what buys the most";
    case FloorStage::Changes: return "changes";
    }
    return "";
}
} // namespace

int coresHere() {
    const auto cores = static_cast<int>(std::thread::hardware_concurrency());
    return std::clamp(cores, 1, FloorOptions::kMostThreads);
}

FloorProgress telling(Progress& line) {
    return [&line](FloorStage stage, int done, int total) {
        Interrupt::check();
        line.at(fmt::format("{}: {} of {}", wordOf(stage), done, total));
    };
}

} // namespace bw::cli
