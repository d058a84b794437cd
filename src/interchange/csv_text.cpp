// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/csv_text.hpp"

#include <algorithm>
#include <array>

namespace bw {

namespace {
constexpr std::string_view kGuarded{"=+-@\t\r\n\0'", 9};
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

bool guarded(std::string_view text) {
    return !text.empty() && kGuarded.find(text.front()) != std::string_view::npos;
}

Message strayQuote(std::size_t line) {
    return {"Line %1: a quote stands where none may stand. Within quotes write it twice.",
            {std::to_string(line)}};
}

class Parser {
public:
    Parser(std::string_view text, char separator) : text_(text), separator_(separator) {
        if (text_.starts_with(kByteOrderMark)) at_ = kByteOrderMark.size();
    }

    Result<std::vector<CsvRecord>> all() {
        std::vector<CsvRecord> out;
        while (at_ < text_.size()) {
            CsvRecord record{line_, {}};
            do {
                std::string field;
                if (!read(field)) return strayQuote(line_);
                record.fields.push_back(std::move(field));
            } while (another());
            const bool empty = record.fields.size() == 1 && record.fields.front().empty();
            if (!empty) out.push_back(std::move(record));
        }
        return out;
    }

private:
    [[nodiscard]] bool ended() const {
        return at_ == text_.size() || text_[at_] == separator_ || text_[at_] == '\n' ||
               text_[at_] == '\r';
    }
    bool read(std::string& field) {
        if (at_ < text_.size() && text_[at_] == '"') return readQuoted(field);
        const std::size_t from = at_;
        while (!ended()) {
            if (text_[at_] == '"') return false;
            ++at_;
        }
        field = text_.substr(from, at_ - from);
        return true;
    }
    bool readQuoted(std::string& field) {
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] == '\n') ++line_;
            if (text_[at_] != '"') {
                field += text_[at_];
                continue;
            }
            ++at_;
            if (at_ == text_.size() || text_[at_] != '"') return ended();
            field += '"';
        }
        return false;
    }
    // Passes the separator, or the end of the record.
    bool another() {
        if (at_ == text_.size()) return false;
        const char end = text_[at_++];
        if (end == separator_) return true;
        if (end == '\r' && at_ < text_.size() && text_[at_] == '\n') ++at_;
        ++line_;
        return false;
    }

    std::string_view text_;
    char separator_;
    std::size_t at_ = 0, line_ = 1;
};
} // namespace

Result<std::vector<CsvRecord>> parseCsv(std::string_view text, char separator) {
    return Parser(text, separator).all();
}

char separatorOf(std::string_view text) {
    const auto line = text.substr(0, text.find_first_of("\r\n"));
    constexpr std::array kSeparators{',', ';', '\t'};
    return *std::max_element(kSeparators.begin(), kSeparators.end(), [&](char a, char b) {
        return std::count(line.begin(), line.end(), a) < std::count(line.begin(), line.end(), b);
    });
}

void CsvWriter::begin() {
    if (!first_) out_ += ',';
    first_ = false;
}

CsvWriter& CsvWriter::number(std::string_view digits) {
    begin();
    out_ += digits;
    return *this;
}

CsvWriter& CsvWriter::text(std::string_view value) {
    begin();
    const bool quoted = value.find_first_of(",\"\r\n") != std::string_view::npos;
    if (quoted) out_ += '"';
    if (guarded(value)) out_ += '\'';
    for (const char c : value) {
        if (c == '"') out_ += '"';
        out_ += c;
    }
    if (quoted) out_ += '"';
    return *this;
}

void CsvWriter::endRecord() {
    out_ += "\r\n";
    first_ = true;
}

std::string_view withoutGuard(std::string_view field) {
    if (field.starts_with('\'') && guarded(field.substr(1))) field.remove_prefix(1);
    return field;
}

} // namespace bw
