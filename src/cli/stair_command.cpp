// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/stair_command.hpp"

#include "cli/gym_results.hpp"
#include "cli/stair_report.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>

namespace bw::cli {

CLI::App& StairCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("stair", "What each slot asks week by week");
    source_.declare(*part);
    auto* member = part->add_option("--member", member_, "The loads of one member");
    member->type_name("ID");
    part->add_option("--on", on_, "As it stood on a day (standard: of the newest result)")
        ->type_name("YYYY-MM-DD")
        ->needs(member);
    part->add_flag("--json", json_, "One JSON object, loads in kg");
    return *part;
}

Exit StairCommand::run() {
    const auto answer = [&](const Gym& gym, const Block& block, const MemberStair* member) {
        if (json_)
            sayJson(stairJson(gym, block, member));
        else
            say(stairText(gym, block, member));
        return Exit::Done;
    };
    if (member_.empty()) {
        const Gym gym = source_.load().gym;
        return answer(gym, *source_.block(gym), nullptr);
    }
    const GymResults results(source_);
    const auto block = source_.block(results.gym());
    const Member& member = results.member(member_);
    Ledger ledger(results.gym(), results.day(on_));
    std::vector<LiftResult> thisMonth;
    results.each({{member.id}, {}, ledger.earliest()}, [&](const LiftResult& r) {
        ledger.add(r);
        if (r.date.month() == block->month && r.date <= ledger.on()) thisMonth.push_back(r);
    });
    const MemberStair stair{member, ledger, MonthTargets(results.gym(), *block).of(ledger, member),
                            memberLoads(results.gym(), *block, thisMonth)};
    return answer(results.gym(), *block, &stair);
}

} // namespace bw::cli
