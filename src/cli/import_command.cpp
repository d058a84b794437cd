// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/import_command.hpp"

#include "cli/backup_text.hpp"
#include "cli/bundle_files.hpp"
#include "cli/csv_import.hpp"
#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "edit/gym_verbs.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <filesystem>

namespace bw::cli {

CLI::App& ImportCommand::declare(CLI::App& program) {
    auto* part =
        program.add_subcommand("import", "Bundles or results into a gym file, all or nothing");
    part->add_option("--gym", gym_, "The gym file; for bundles made when it does not exist")
        ->type_name("FILE.bwgym")
        ->required();
    auto* bundle = part->add_option("--bundle", bundles_,
                                    "A bundle; several are laid over each other in order");
    bundle->type_name("FILE")->expected(1)->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    auto* csv = part->add_option("--csv", csv_, "A table of results, one set a row");
    csv->type_name("FILE")->excludes(bundle);
    part->add_flag("--dry-run", dry_, "Only say what the table would change")->needs(csv);
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
    backUpFirst(gym_);
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
    if (!csv_.empty()) return importCsv({gym_, csv_, dry_, json_});
    if (bundles_.empty())
        throw Ending(Exit::BadInput, "Name what to bring in: --bundle FILE, or --csv FILE.");
    std::error_code ignored;
    tell(std::filesystem::exists(gym_, ignored) ? intoOld() : intoNew());
    return Exit::Done;
}

} // namespace bw::cli
