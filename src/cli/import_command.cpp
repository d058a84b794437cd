// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/import_command.hpp"

#include "cli/bundle_files.hpp"
#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "edit/gym_verbs.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <filesystem>

namespace bw::cli {

CLI::App& ImportCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("import", "Bundles into a gym file, all or nothing");
    part->add_option("--gym", gym_, "The gym file; made when it does not exist")
        ->type_name("FILE.bwgym")
        ->required();
    part->add_option("--bundle", bundles_, "A bundle; several are laid over each other in order")
        ->type_name("FILE")
        ->required()
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    part->add_flag("--json", json_, "One JSON object: what was brought in");
    return *part;
}

Bundle ImportCommand::intoNew() const {
    const auto laid = layOverGround(bundles_, shippedGround());
    Interrupt::check();
    const Progress progress("Writing " + gym_);
    const auto made = createGym(gym_, &laid.all);
    if (!made) throw Ending(Exit::BadFile, made.why().english());
    return laid.all;
}

Bundle ImportCommand::intoOld() const {
    auto file = GymFile::open(gym_);
    if (!file) throw Ending(Exit::BadFile, file.why().english());
    if (!(*file)->writable())
        throw Ending(Exit::BadFile, fmt::format("{} is being written by {}. Nothing was changed; "
                                                "close it there, then try again.",
                                                gym_, (*file)->writer()));
    auto open = OpenGym::over(std::move(file).value());
    if (!open) throw Ending(Exit::BadFile, open.why().english());
    const auto laid = layOverGround(bundles_, (*open)->gym());
    Interrupt::check();
    const Progress progress("Writing " + gym_);
    const auto done = importBundle(**open, laid.all);
    if (!done) throw Ending(Exit::BadFile, done.why().english());
    return laid.all;
}

void ImportCommand::tell(const Bundle& brought) const {
    if (json_)
        return sayJson({{"gym", gym_},
                        {"kit", brought.kit.size()},
                        {"exercises", brought.shelf.size()},
                        {"months", brought.blocks.size()},
                        {"members", brought.members.size()},
                        {"results", brought.results.size()}});
    say(fmt::format(
        "{}: {} kit items, {} exercises, {} months, {} members and {} results brought in.\n", gym_,
        brought.kit.size(), brought.shelf.size(), brought.blocks.size(), brought.members.size(),
        brought.results.size()));
}

Exit ImportCommand::run() {
    std::error_code ignored;
    tell(std::filesystem::exists(gym_, ignored) ? intoOld() : intoNew());
    return Exit::Done;
}

} // namespace bw::cli
