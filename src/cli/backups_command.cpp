// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/backups_command.hpp"

#include "cli/backup_text.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace bw::cli {

namespace {
template <class T> T orEnd(Result<T> result) {
    if (!result) throw Ending(Exit::BadFile, result.why().english());
    return std::move(result).value();
}

std::vector<Backup> backupsWith(const std::string& gym, const std::string& member) {
    if (member.empty()) return orEnd(listBackups(gym));
    const auto id = MemberId::parse(member);
    if (!id) throw Ending(Exit::BadInput, "--member: " + id.why().english());
    std::vector<Backup> out;
    for (auto& one : orEnd(backupsHolding(gym, *id))) out.push_back(std::move(one.backup));
    return out;
}

std::vector<SeenBackup> lookInto(std::vector<Backup> backups) {
    std::vector<SeenBackup> out;
    Progress progress("Reading backups");
    for (Backup& backup : backups) {
        Interrupt::check();
        progress.at(std::to_string(backup.number));
        auto in = lookIntoBackup(backup.file);
        out.push_back({std::move(backup), std::move(in)});
    }
    return out;
}

std::string answerText(const std::string& folder, const std::string& member,
                       const std::vector<SeenBackup>& list) {
    if (list.empty())
        return member.empty() ? fmt::format("There is no backup in {}.\n", folder)
                              : fmt::format("No backup in {} holds {}.\n", folder, member);
    return folder + "\n\n" + backupTable(list);
}
} // namespace

CLI::App& BackupsCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("backups", "The backups of a gym file, the last first");
    part->add_option("--gym", gym_, "The gym file; it need not be there any more")
        ->type_name("FILE.bwgym")
        ->required();
    part->add_option("--member", member_, "Only those that hold this member, or can't be read")
        ->type_name("ID");
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

Exit BackupsCommand::run() {
    const std::string folder = backupFolder(gym_).string();
    const auto list = lookInto(backupsWith(gym_, member_));
    if (!json_) {
        say(answerText(folder, member_, list));
        return Exit::Done;
    }
    Json rows = Json::array();
    for (const SeenBackup& seen : list) rows.push_back(backupJson(seen));
    sayJson({{"gym", gym_}, {"folder", folder}, {"backups", std::move(rows)}});
    return Exit::Done;
}

} // namespace bw::cli
