// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/ledger_command.hpp"

#include "cli/gym_results.hpp"
#include "cli/ledger_report.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>

namespace bw::cli {

namespace {
std::vector<const Member*> membersOf(const GymResults& results, const std::string& asked) {
    if (!asked.empty()) return {&results.member(asked)};
    std::vector<const Member*> out;
    for (const Member& m : results.gym().members)
        if (m.active) out.push_back(&m);
    return out;
}

std::optional<ExerciseId> exerciseOf(const std::string& asked) {
    if (asked.empty()) return std::nullopt;
    auto id = ExerciseId::parse(asked);
    if (!id) throw Ending(Exit::BadInput, "--exercise: " + id.why().english());
    return std::move(id).value();
}

// What a ratio passes on is asked for as well.
std::vector<ExerciseId> withKin(const ExerciseId& id, const LedgerRules& rules) {
    std::vector<ExerciseId> out{id};
    for (const auto& entry : rules.ratios) {
        const auto& [first, second] = entry.first;
        if (first == id) out.push_back(second);
        if (second == id) out.push_back(first);
    }
    return out;
}

LedgerLine lineOf(const Gym& gym, const Ledger& ledger, const Member& member,
                  const ExerciseId& id) {
    LedgerLine line{id, ledger.estimate(member.id, id), ledger.last(member.id, id), {}, {}};
    if (const Exercise* e = gym.shelf.find(id)) line.next = nextTime(gym, ledger, member, *e);
    return line;
}
} // namespace

CLI::App& LedgerCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("ledger", "How strong members are, and what to take next");
    source_.declare(*part);
    part->add_option("--member", member_, "One member (standard: all active ones)")
        ->type_name("ID");
    part->add_option("--exercise", exercise_, "One exercise; with --member, day by day")
        ->type_name("ID");
    part->add_option("--on", on_, "As it stood on a day (standard: of the newest result)")
        ->type_name("YYYY-MM-DD");
    part->add_flag("--json", json_, "One JSON object, loads in kg");
    return *part;
}

LedgerReport LedgerCommand::report(const GymResults& results) const {
    const Gym& gym = results.gym();
    const auto exercise = exerciseOf(exercise_);
    Ledger ledger(gym, results.day(on_));
    LedgerReport out{gym, ledger.on(), ledger.rules(), !member_.empty(), exercise.has_value(), {}};
    const auto members = membersOf(results, member_);
    const bool daily = out.oneMember && out.oneExercise;
    ResultQuery query;
    if (out.oneMember) query.members = {members.front()->id};
    if (exercise) query.exercises = withKin(*exercise, ledger.rules());
    if (!daily) query.from = ledger.earliest();
    std::vector<LiftResult> series;
    results.each(query, [&](const LiftResult& r) {
        ledger.add(r);
        if (daily && r.exercise == *exercise && r.date <= ledger.on()) series.push_back(r);
    });
    for (const Member* m : members) {
        LedgerMember one{m, {}};
        for (const ExerciseId& id : exercise ? std::vector{*exercise} : ledger.exercisesOf(m->id)) {
            LedgerLine line = lineOf(gym, ledger, *m, id);
            if (line.estimate || line.last) one.lines.push_back(std::move(line));
        }
        if (daily && !one.lines.empty()) one.lines.front().days = overTime(gym, series);
        out.members.push_back(std::move(one));
    }
    return out;
}

Exit LedgerCommand::run() {
    const GymResults results(source_);
    const LedgerReport answer = report(results);
    if (json_)
        sayJson(ledgerJson(answer));
    else
        say(ledgerText(answer));
    return Exit::Done;
}

} // namespace bw::cli
