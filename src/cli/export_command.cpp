// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/export_command.hpp"

#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "cli/whole_file.hpp"
#include "interchange/bundle.hpp"
#include "interchange/results_csv.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace bw::cli {

CLI::App& ExportCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("export", "A gym as one bundle, with all its months");
    source_.declare(*part);
    auto* out = part->add_option("--out", out_, "Into a file (standard: standard output)");
    out->type_name("FILE");
    part->add_flag("--csv", csv_, "The results, as a table for a spreadsheet");
    part->add_flag("--json", json_, "With --out: say the file as one JSON object")->needs(out);
    return *part;
}

std::string ExportCommand::text() const {
    auto loaded = source_.load(GymSource::Results::Take);
    if (csv_) {
        const auto month = source_.month();
        ResultsWriter table(loaded.gym);
        for (const LiftResult& r : loaded.results)
            if (!month || r.date.month() == *month) table.add(r);
        return table.take();
    }
    if (source_.month()) { // only that month
        const auto block = source_.block(loaded.gym);
        loaded.gym.blocks = {{block->month, block}};
    }
    return writeBundle(bundleOf(loaded.gym, std::move(loaded.results)));
}

Exit ExportCommand::run() {
    const std::string text = this->text();
    Interrupt::check();
    if (out_.empty()) {
        say(text);
        return Exit::Done;
    }
    writeWholeFile(out_, text);
    if (json_)
        sayJson({{"file", out_}});
    else
        say(out_ + "\n");
    return Exit::Done;
}

} // namespace bw::cli
