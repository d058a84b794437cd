// SPDX-License-Identifier: GPL-3.0-or-later
// JSON being made, for people to read: keys in the order they were added, a value on one line when
// it fits into 100 columns, else its parts one a line with an indent of two spaces.
#pragma once
#include "interchange/json_tree.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bw::json {

class Out {
public:
    static Out text(std::string_view value);
    static Out boolean(bool value) { return Out(value ? "true" : "false"); }
    static Out null() { return Out("null"); }
    static Out whole(std::int64_t value) { return Out(std::to_string(value)); }
    // grains / perUnit exactly, perUnit a power of ten: 2500 / 1000 -> 2.5, 60000 / 1000 -> 60.
    static Out decimal(std::int64_t grains, std::int64_t perUnit);
    static Out number(double value); // the shortest that reads back the same; finite
    static Out array() { return Out(Kind::Array); }
    static Out object() { return Out(Kind::Object); }

    // To an object that does not have the key yet.
    Out& add(std::string_view key, Out value);
    Out& push(Out value); // to an array
    // To an object: the keys of this JSON object; empty text adds none. A key that is there already
    // keeps its value; when both values are objects, what is missing in the first is added. Values
    // are written as compact JSON. Throws std::logic_error when the text is no JSON object.
    Out& addAll(std::string_view object);

    [[nodiscard]] bool empty() const { return items_.empty(); } // of an array or object
    [[nodiscard]] std::string print() const;                    // ends with a newline

private:
    explicit Out(std::string scalar) : scalar_(std::move(scalar)) {}
    explicit Out(Kind kind) : kind_(kind) {}
    void addMissing(const Tree& tree, Node object);
    [[nodiscard]] bool scalar() const { return kind_ != Kind::Array && kind_ != Kind::Object; }
    [[nodiscard]] std::size_t width() const; // in bytes, on one line
    void flat(std::string& out) const;
    void broken(std::string& out, std::size_t indent) const;

    Kind kind_ = Kind::Text; // Array, Object, or any other: a scalar as it is printed
    std::string scalar_;
    std::vector<std::pair<std::string, Out>> items_; // quoted keys; empty ones in an array
    bool deep_ = false;                              // an item is an array or object
    std::size_t inner_ = 0;                          // width of the items
};

[[nodiscard]] std::string decimalText(std::int64_t grains, std::int64_t perUnit);

} // namespace bw::json
