// SPDX-License-Identifier: GPL-3.0-or-later
// A table for a terminal: columns as wide as their widest cell, two blanks between.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace bw::cli {

class Table {
public:
    enum class Align { Left, Right };
    explicit Table(std::vector<Align> columns) : columns_(std::move(columns)) {}

    void add(std::vector<std::string> cells); // missing ones at the end are empty
    [[nodiscard]] std::string text() const;

private:
    std::vector<Align> columns_;
    std::vector<std::vector<std::string>> rows_;
};

// Places that well-formed UTF-8 text of the Latin script takes on a terminal.
[[nodiscard]] std::size_t widthOf(std::string_view text);
// Broken at blanks to lines of at most `width`, each but the first begun with `indent` blanks.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t width, std::size_t indent);

} // namespace bw::cli
