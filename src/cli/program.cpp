// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/program.hpp"

#include "cli/almanac_command.hpp"
#include "cli/backups_command.hpp"
#include "cli/balance_command.hpp"
#include "cli/check_command.hpp"
#include "cli/command.hpp"
#include "cli/export_command.hpp"
#include "cli/floor_command.hpp"
#include "cli/import_command.hpp"
#include "cli/interrupt.hpp"
#include "cli/ledger_command.hpp"
#include "cli/propose_command.hpp"
#include "cli/restore_command.hpp"
#include "cli/sheets_command.hpp"
#include "cli/stair_command.hpp"
#include "cli/terminal.hpp"
#include "cli/time_command.hpp"

#include <CLI/CLI.hpp>

#include <system_error>

namespace bw::cli {

namespace {
constexpr const char* kFooter =
    "Every command but import, backups and restore works on a gym file (--gym) or, without\n"
    "touching any, on bundles (--bundle, laid over each other in order; where none brings a\n"
    "Shelf, over the one of the program). Places are kind/group/slot: strength/1/2.\n"
    "Exit: 0 done; 1 done, a finding of level stop is present (check); 2 bad usage or input;\n"
    "3 a file could not be read or written.\n\n"
    "Examples:\n"
    "  bwright check --bundle month.bundle.json\n"
    "  bwright time --gym gym.bwgym --month 2026-09 --week 2 --json\n"
    "  bwright balance --gym gym.bwgym --json\n"
    "  bwright floor --bundle month.bundle.json --members 12 --week 2 --runs 200\n"
    "  bwright propose --bundle month.bundle.json --top 3\n"
    "  bwright almanac --gym gym.bwgym --months 12\n"
    "  bwright stair --bundle month.bundle.json\n"
    "  bwright ledger --gym gym.bwgym --json\n"
    "  bwright sheets --gym gym.bwgym --out sheets --only wall\n"
    "  bwright import --gym gym.bwgym --bundle month.bundle.json\n"
    "  bwright export --gym gym.bwgym --out copy.bundle.json\n"
    "  bwright backups --gym gym.bwgym\n"
    "  bwright restore --gym gym.bwgym --backup 1";

Exit runChosen(const std::vector<std::pair<CLI::App*, Command*>>& commands) {
    for (const auto& [part, command] : commands)
        if (part->parsed()) return command->run();
    return Exit::BadInput;
}

Exit runSafely(const std::vector<std::pair<CLI::App*, Command*>>& commands) {
    try {
        const Exit code = runChosen(commands);
        if (flushOut()) return code;
        complain("The answer could not be written to standard output.");
        return Exit::BadFile;
    } catch (const Ending& ending) {
        complain(ending.what());
        return ending.code();
    } catch (const std::system_error& dead) {
        complain(dead.what());
        return Exit::BadFile;
    }
}
} // namespace

std::vector<std::unique_ptr<Command>> allCommands() {
    std::vector<std::unique_ptr<Command>> all;
    all.push_back(std::make_unique<TimeCommand>());
    all.push_back(std::make_unique<CheckCommand>());
    all.push_back(std::make_unique<BalanceCommand>());
    all.push_back(std::make_unique<FloorCommand>());
    all.push_back(std::make_unique<ProposeCommand>());
    all.push_back(std::make_unique<AlmanacCommand>());
    all.push_back(std::make_unique<StairCommand>());
    all.push_back(std::make_unique<LedgerCommand>());
    all.push_back(std::make_unique<SheetsCommand>());
    all.push_back(std::make_unique<ImportCommand>());
    all.push_back(std::make_unique<ExportCommand>());
    all.push_back(std::make_unique<BackupsCommand>());
    all.push_back(std::make_unique<RestoreCommand>());
    return all;
}

int runProgram(int argc, char* argv[]) {
    CLI::App program("Blockwright on the command line: a month's class timed, checked and printed.",
                     "bwright");
    program.require_subcommand(1);
    program.set_version_flag("--version", "bwright " BLOCKWRIGHT_VERSION);
    program.footer(kFooter);
    const auto all = allCommands();
    std::vector<std::pair<CLI::App*, Command*>> commands;
    commands.reserve(all.size());
    for (const auto& c : all) commands.emplace_back(&c->declare(program), c.get());
    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        const bool asked = e.get_exit_code() == 0; // for help or the version
        if (!asked && program.get_subcommands().empty() && argc > 1 && argv[1][0] != '-')
            complain(std::string("bwright has no command “") + argv[1] + "”.");
        return program.exit(e) == 0 ? 0 : static_cast<int>(Exit::BadInput);
    }
    const Interrupt watching;
    return static_cast<int>(runSafely(commands));
}

} // namespace bw::cli
