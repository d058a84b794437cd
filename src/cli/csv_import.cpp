// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/csv_import.hpp"

#include "cli/backup_text.hpp"
#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/terminal.hpp"
#include "cli/whole_file.hpp"
#include "edit/result_verbs.hpp"
#include "interchange/bundle.hpp"

#include <fmt/core.h>

namespace bw::cli {

namespace {
template <class T> T orEnd(Result<T> result) {
    if (!result) throw Ending(Exit::BadFile, result.why().english());
    return std::move(result).value();
}

Json answerJson(const ResultsReading& read, const ResultsChange& change, bool stored) {
    Json faults = Json::array();
    for (const CsvFault& f : read.faults)
        faults.push_back({{"line", f.line}, {"column", f.column}, {"text", f.text.english()}});
    return {{"rows", read.rows},
            {"new", change.fresh.size()},
            {"changed", change.changed.size()},
            {"there_already", change.same},
            {"twice", read.twice},
            {"faulty_rows", read.faultyRows},
            {"faults", std::move(faults)},
            {"left_out", read.leftOut},
            {"stored", stored}};
}

void complainOf(const ResultsReading& read) {
    for (const CsvFault& f : read.faults)
        complain(f.column.empty()
                     ? fmt::format("line {}: {}", f.line, f.text.english())
                     : fmt::format("line {}, {}: {}", f.line, f.column, f.text.english()));
    if (read.rows > 0)
        complain(fmt::format("{} of {} rows have faults. Nothing was stored.", read.faultyRows,
                             read.rows));
}

std::string answerText(const CsvImport& asked, const ResultsReading& read,
                       const ResultsChange& change) {
    std::string text = fmt::format("{}: {} new results{}, {} changed, {} there already", asked.gym,
                                   change.fresh.size(), asked.dry ? " to bring in" : " brought in",
                                   change.changed.size(), change.same);
    if (read.twice > 0) text += fmt::format(", {} said twice", read.twice);
    text += ".\n";
    if (read.leftOut.empty()) return text;
    text += "Columns left out:";
    for (const std::string& column : read.leftOut) text += " " + column;
    return text + "\n";
}
} // namespace

Exit importCsv(const CsvImport& asked) {
    const std::string table = readWholeFile(asked.csv, kMostCsvBytes);
    auto file =
        orEnd(GymFile::open(asked.gym, asked.dry ? GymFile::Access::Read : GymFile::Access::Write));
    if (!asked.dry && !file->writable())
        throw Ending(Exit::BadFile, fmt::format("{} is being written by {}. Nothing was changed; "
                                                "close it there, then try again.",
                                                asked.gym, file->writer()));
    const auto open = orEnd(OpenGym::over(std::move(file)));
    ResultsReading read = readResultsCsv(table, open->gym());
    Interrupt::check();
    const bool good = read.faults.empty();
    ResultsChange change = orEnd(changeBy(open->file(), std::move(read.results)));
    const bool store = good && !asked.dry;
    if (store) {
        if (!change.fresh.empty() || !change.changed.empty()) backUpFirst(asked.gym);
        (void)orEnd(importResults(*open, change));
    }
    if (asked.json)
        sayJson(answerJson(read, change, store));
    else if (good)
        say(answerText(asked, read, change));
    if (!good) complainOf(read);
    return good ? Exit::Done : Exit::BadInput;
}

} // namespace bw::cli
