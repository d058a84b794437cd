// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/table.hpp"

#include <algorithm>

namespace bw::cli {

namespace {
std::string padded(const std::string& cell, std::size_t width, Table::Align align) {
    const std::string blanks(width - widthOf(cell), ' ');
    return align == Table::Align::Left ? cell + blanks : blanks + cell;
}
} // namespace

std::size_t widthOf(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

std::string wrapped(std::string_view text, std::size_t width, std::size_t indent) {
    std::string out;
    std::size_t used = 0;
    while (!text.empty()) {
        const auto end = std::min(text.find(' '), text.size());
        const auto word = text.substr(0, end);
        const auto wide = widthOf(word);
        if (used > 0 && used + 1 + wide > width) {
            out += '\n' + std::string(indent, ' ');
            used = 0;
        } else if (used > 0) {
            out += ' ';
            ++used;
        }
        out += word;
        used += wide;
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

void Table::add(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    rows_.push_back(std::move(cells));
}

std::string Table::text() const {
    std::vector<std::size_t> widths(columns_.size());
    for (const auto& row : rows_)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], widthOf(row[i]));
    std::string out;
    for (const auto& row : rows_) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i)
            line += (i ? "  " : "") + padded(row[i], widths[i], columns_[i]);
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + '\n';
    }
    return out;
}

} // namespace bw::cli
