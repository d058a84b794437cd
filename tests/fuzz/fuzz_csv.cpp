// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a table of results, read for a gym of two members and two exercises; and the rows
// without fault are exported so that they are read again as they were.
#include "interchange/csv_text.hpp"
#include "interchange/results_csv.hpp"
#include "interchange/utf8.hpp"
#include "law.hpp"
#include "support/fixtures.hpp"

namespace bw::fuzz {

namespace {
Gym boathouse() {
    Gym gym;
    gym.put(Member{MemberId::parse("m-001").value(), "Wren Tidewater", {}, true, {}});
    gym.put(Member{MemberId::parse("m-002").value(), "Sorrel Vane", {}, true, {}});
    gym.shelf.put(test::exercise("goblet-squat", Pattern::Squat));
    gym.shelf.put(test::exercise("floor-press", Pattern::HorizontalPush));
    return gym;
}

void sayable(const ResultsReading& reading) {
    law(reading.faults.size() <= 200, "no more faults than are promised");
    law(reading.results.size() + reading.twice + reading.faultyRows <= reading.rows,
        "each row is counted once");
    for (const CsvFault& fault : reading.faults)
        law(!firstNotUtf8(fault.text.english()), "a fault is text that can be shown");
}
} // namespace

void readAny(std::string_view text) {
    static const Gym gym = boathouse();
    for (const char separator : {',', ';', '\t'}) (void)parseCsv(text, separator);
    const ResultsReading reading = readResultsCsv(text, gym);
    sayable(reading);
    if (reading.results.empty()) return;

    ResultsWriter writer(gym);
    for (const LiftResult& result : reading.results) writer.add(result);
    const ResultsReading again = readResultsCsv(writer.take(), gym);
    law(again.faults.empty() && again.twice == 0, "what was exported is read without fault");
    law(again.results == reading.results, "what was exported is read as it was");
    law(compare(again.results, reading.results).same == again.results.size(),
        "reading the same table again changes nothing");
}

} // namespace bw::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    bw::fuzz::readAny(bw::fuzz::textOf(data, size));
    return 0;
}
