// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/results_csv.hpp"

#include "interchange/bundle.hpp"
#include "interchange/json_out.hpp"
#include "interchange/results_row.hpp"
#include "interchange/utf8.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace bw {

namespace {
using Key = std::tuple<MemberId, Date, ExerciseId, int>;
Key keyOf(const LiftResult& r) { return {r.member, r.date, r.exercise, r.set}; }

bool sameFigures(const LiftResult& a, const LiftResult& b) {
    return a.reps == b.reps && a.rir == b.rir && a.load == b.load;
}

ResultsReading refused(std::size_t line, Message why) {
    ResultsReading out;
    out.faults.push_back({line, {}, std::move(why)});
    return out;
}

std::string missingColumns(const CsvColumns& columns) {
    using enum ResultsColumn;
    std::string out;
    const auto need = [&](bool there, std::string_view word) {
        if (!there) out += (out.empty() ? "" : ", ") + std::string(word);
    };
    need(columns.has(Member) || columns.has(Name), "member");
    need(columns.has(Date), "date");
    need(columns.has(Exercise) || columns.has(ExerciseName), "exercise");
    need(columns.has(Reps), "reps");
    return out;
}

// Only separators: what spreadsheets leave at the end of a table.
bool blank(const CsvRecord& record) {
    return std::all_of(record.fields.begin(), record.fields.end(),
                       [](const std::string& field) { return trimmed(field).empty(); });
}

// Rows one after the other: sets without a number get the next one of their day, and no set is
// taken twice.
class Reader {
public:
    Reader(const CsvColumns& columns, const Gym& gym, ResultsReading& into)
        : columns_(columns), names_(gym), unit_(gym.settings.massUnit), into_(into) {}

    void row(const CsvRecord& record) {
        if (blank(record)) return;
        ++into_.rows;
        faults_.clear();
        if (auto result = readResultsRow(record, columns_, names_, unit_, faults_))
            add(record.line, std::move(*result));
        if (faults_.empty()) return;
        ++into_.faultyRows;
        for (CsvFault& f : faults_)
            if (into_.faults.size() < kMostFaults) into_.faults.push_back(std::move(f));
    }

private:
    struct Taken {
        std::size_t line, at;
    };
    void add(std::size_t line, LiftResult result) {
        int& highest = sets_[{result.member, result.date, result.exercise}];
        if (result.set == 0) result.set = highest + 1;
        constexpr int kMostSets = 100;
        if (result.set > kMostSets) {
            faults_.push_back({line, {}, {"More than 100 sets of an exercise on one day.", {}}});
            return;
        }
        highest = std::max(highest, result.set);
        const auto [it, fresh] = taken_.emplace(keyOf(result), Taken{line, into_.results.size()});
        if (fresh)
            into_.results.push_back(std::move(result));
        else if (sameFigures(into_.results[it->second.at], result))
            ++into_.twice;
        else
            faults_.push_back({line,
                               {},
                               {"Line %1 says the same set with other figures.",
                                {std::to_string(it->second.line)}}});
    }

    const CsvColumns& columns_;
    NameBook names_;
    MassUnit unit_;
    ResultsReading& into_;
    std::vector<CsvFault> faults_;
    std::map<Key, Taken> taken_;
    std::map<std::tuple<MemberId, Date, ExerciseId>, int> sets_;
};
} // namespace

ResultsReading readResultsCsv(std::string_view text, const Gym& gym,
                              const std::vector<std::string>* head) {
    if (text.size() > kMostCsvBytes)
        return refused(1, {"The table has more than 64 MiB: bring it in in parts.", {}});
    if (const auto bad = firstNotUtf8(text))
        return refused(
            1 + static_cast<std::size_t>(std::count(
                    text.begin(), text.begin() + static_cast<std::ptrdiff_t>(*bad), '\n')),
            {"This is not UTF-8 text: save the table as CSV in UTF-8.", {}});
    const auto records = parseCsv(text, separatorOf(text));
    if (!records) return refused(1, records.why());
    if (records->empty()) return refused(1, {"The table is empty.", {}});
    const CsvColumns columns(head ? *head : records->front().fields);
    if (const auto missing = missingColumns(columns); !missing.empty())
        return refused(records->front().line,
                       {"The first line must name the columns; missing: %1.", {missing}});
    ResultsReading out;
    out.leftOut = columns.unknown();
    Reader reader(columns, gym, out);
    for (std::size_t i = 1; i < records->size(); ++i) reader.row((*records)[i]);
    return out;
}

ResultsChange compare(std::vector<LiftResult> read, std::span<const LiftResult> stored) {
    std::map<Key, const LiftResult*> known;
    for (const LiftResult& r : stored) known.emplace(keyOf(r), &r);
    ResultsChange out;
    for (LiftResult& r : read) {
        const auto it = known.find(keyOf(r));
        if (it == known.end()) {
            out.fresh.push_back(std::move(r));
        } else if (sameFigures(*it->second, r)) {
            ++out.same;
        } else {
            r.extras = it->second->extras;
            out.changed.push_back(std::move(r));
        }
    }
    return out;
}

struct ResultsWriter::Inside {
    explicit Inside(const Gym& g) : gym(g) {
        for (const bw::Member& m : g.members) names.emplace(m.id, m.name);
    }
    const Gym& gym;
    std::unordered_map<MemberId, std::string_view> names;
    CsvWriter csv;
};

ResultsWriter::ResultsWriter(const Gym& gym) : inside_(std::make_unique<Inside>(gym)) {
    for (const char* head :
         {"member", "name", "date", "exercise", "exercise_name", "set", "reps", "rir", "load_kg"})
        inside_->csv.text(head);
    inside_->csv.endRecord();
}
ResultsWriter::~ResultsWriter() = default;

void ResultsWriter::add(const LiftResult& r) {
    const auto name = inside_->names.find(r.member);
    const bw::Exercise* exercise = inside_->gym.shelf.find(r.exercise);
    constexpr std::int64_t kTenths = 10;
    inside_->csv.text(r.member.text())
        .text(name == inside_->names.end() ? "" : name->second)
        .text(r.date.text())
        .text(r.exercise.text())
        .text(exercise ? exercise->name : "")
        .number(std::to_string(r.set))
        .number(std::to_string(r.reps))
        .number(r.rir ? json::decimalText(r.rir->tenths(), kTenths) : "")
        .number(r.load ? json::decimalText(r.load->micrograms(), Mass::kMicrogramsPerKg) : "")
        .endRecord();
}

std::string ResultsWriter::take() { return inside_->csv.take(); }

} // namespace bw
