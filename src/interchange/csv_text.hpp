// SPDX-License-Identifier: GPL-3.0-or-later
// Comma-separated values as RFC 4180 has them: fields with a comma, quote or line end are quoted, a
// quote inside is doubled, records end in CRLF. Reading also takes LF, semicolons or tabs between
// fields, and a byte order mark.
//
// Text that a spreadsheet would take for a formula (it begins with = + - @ TAB CR LF or NUL: OWASP,
// CSV injection; CVE-2021-41270) is written with an apostrophe before it, and so is text that
// begins with an apostrophe; reading takes one away again. Numbers are written as they are.
#pragma once
#include "blockwright/model/result.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bw {

struct CsvRecord {
    std::size_t line = 1; // of the file, where it begins
    std::vector<std::string> fields;
};

// Why() names the line of a quote that is out of place or never closed. Empty lines are no records.
[[nodiscard]] Result<std::vector<CsvRecord>> parseCsv(std::string_view text, char separator);
// What stands most often between the words of the first line: comma, semicolon or tab.
[[nodiscard]] char separatorOf(std::string_view text);

class CsvWriter {
public:
    CsvWriter& text(std::string_view value);
    CsvWriter& number(std::string_view digits);
    void endRecord();
    [[nodiscard]] std::string take() { return std::exchange(out_, {}); }

private:
    void begin();
    std::string out_;
    bool first_ = true;
};

// What text() wrote, as it was before.
[[nodiscard]] std::string_view withoutGuard(std::string_view field);

} // namespace bw
