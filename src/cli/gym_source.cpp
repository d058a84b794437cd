// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/gym_source.hpp"

#include "cli/bundle_files.hpp"
#include "cli/ending.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"
#include "store/gym_file.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace bw::cli {

namespace {
std::vector<LiftResult> resultsOf(GymFile& file) {
    std::vector<LiftResult> results;
    Progress progress("Reading results");
    const auto read = file.eachResult([&](const LiftResult& result) {
        results.push_back(result);
        constexpr std::size_t kOften = 10'000;
        if (results.size() % kOften == 0) {
            Interrupt::check();
            progress.at(std::to_string(results.size()));
        }
        return true;
    });
    if (!read) throw Ending(Exit::BadFile, read.why().english());
    return results;
}

LoadedGym fromFile(const std::string& path, GymSource::Results results) {
    const auto file = GymFile::open(path, GymFile::Access::Read);
    if (!file) throw Ending(Exit::BadFile, file.why().english());
    auto gym = (*file)->load();
    if (!gym) throw Ending(Exit::BadFile, gym.why().english());
    LoadedGym loaded{std::move(gym).value(), {}};
    if (results == GymSource::Results::Take) loaded.results = resultsOf(**file);
    return loaded;
}
} // namespace

void GymSource::declare(CLI::App& command) {
    auto* bundle = command.add_option("--bundle", bundles_,
                                      "A bundle; several are laid over each other in order");
    bundle->type_name("FILE")->expected(1)->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    auto* gym = command.add_option("--gym", gym_, "A gym file; it is only read");
    gym->type_name("FILE.bwgym")->excludes(bundle);
    command.add_option("--month", month_, "The month (standard: the latest)")->type_name("YYYY-MM");
}

LoadedGym GymSource::load(Results results) const {
    if (!gym_.empty()) return fromFile(gym_, results);
    if (bundles_.empty())
        throw Ending(Exit::BadInput, "Name a gym: --bundle FILE, or --gym FILE.bwgym.");
    auto laid = layAlone(bundles_);
    return {std::move(laid.gym), std::move(laid.all.results)};
}

std::optional<Month> GymSource::month() const {
    if (month_.empty()) return std::nullopt;
    const auto month = Month::parse(month_);
    if (!month) throw Ending(Exit::BadInput, "--month: " + month.why().english());
    return month.value();
}

Gym::BlockPtr GymSource::block(const Gym& gym) const {
    const auto wanted = month();
    auto block = wanted ? gym.block(*wanted) : gym.latest();
    if (block) return block;
    if (!wanted) throw Ending(Exit::BadInput, "This gym has no month yet.");
    std::string there;
    for (const auto& entry : gym.blocks) there += (there.empty() ? "" : ", ") + entry.first.text();
    throw Ending(Exit::BadInput, fmt::format("This gym has no month {}. It has: {}.",
                                             wanted->text(), there.empty() ? "none" : there));
}

Week weekOf(const Block& block, int number) {
    const auto week = Week::of(number);
    if (!week || number > static_cast<int>(block.stair.size()))
        throw Ending(Exit::BadInput, fmt::format("--week {}: this month has weeks 1 to {}.", number,
                                                 block.stair.size()));
    return week.value();
}

} // namespace bw::cli
