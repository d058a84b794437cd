// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/restore_command.hpp"

#include "cli/backup_text.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <algorithm>

namespace bw::cli {

namespace {
bool isNumber(const std::string& text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// By its number, by its name in the folder, or any file.
std::filesystem::path backupMeant(const std::string& gym, const std::string& asked) {
    const auto list = listBackups(gym);
    if (!list) throw Ending(Exit::BadFile, list.why().english());
    std::string numbers;
    for (const Backup& b : *list) {
        if (asked == std::to_string(b.number) || asked == b.file.filename()) return b.file;
        numbers += (numbers.empty() ? "" : ", ") + std::to_string(b.number);
    }
    if (!isNumber(asked)) return asked;
    throw Ending(Exit::BadInput, fmt::format("{} has no backup {}. It has: {}.", gym, asked,
                                             numbers.empty() ? "none" : numbers));
}
} // namespace

CLI::App& RestoreCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand(
        "restore", "A backup in place of the gym file; what was there is kept as a backup");
    part->add_option("--gym", gym_, "The gym file; it need not be there any more")
        ->type_name("FILE.bwgym")
        ->required();
    part->add_option("--backup", backup_, "Its number or name, or any other gym file")
        ->type_name("NO.|FILE")
        ->required();
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

Exit RestoreCommand::run() {
    const auto backup = backupMeant(gym_, backup_);
    const auto in = lookIntoBackup(backup);
    if (!in) throw Ending(Exit::BadFile, in.why().english());
    Interrupt::check();
    const auto done = restoreBackup(gym_, backup, wallTime());
    if (!done) throw Ending(Exit::BadFile, done.why().english());
    if (!in->asMade)
        complain(fmt::format("{} reads well, but it is not byte for byte what was made: somebody "
                             "changed it, or the disk did. Look the gym through.",
                             backup.string()));
    if (json_)
        sayJson({{"gym", gym_},
                 {"restored", backup.string()},
                 {"before", done->before ? Json(done->before->string()) : Json()}});
    else
        say(fmt::format(
            "{} holds what {} holds.{}\n", gym_, backup.string(),
            done->before ? " What was there before is in " + done->before->string() + "." : ""));
    return Exit::Done;
}

} // namespace bw::cli
