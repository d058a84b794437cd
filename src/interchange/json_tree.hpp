// SPDX-License-Identifier: GPL-3.0-or-later
// A JSON text as a flat tree. Nodes are numbered in the order of the file, so sorting faults by
// node sorts them as they stand there; each knows its parent, so a pointer is made only when it is
// asked for. A value takes 32 bytes and its text: the largest file allowed, all one-figure numbers,
// takes 600 MB.
#pragma once
#include <cstdint>
#include <deque>
#include <string>
#include <string_view>

namespace bw::json {

enum class Kind : std::uint8_t { Null, False, True, Number, Text, Array, Object };

using Node = std::uint32_t;
inline constexpr Node kNone = UINT32_MAX;
inline constexpr Node kRoot = 0;

class Tree {
public:
    [[nodiscard]] Kind kind(Node n) const { return entries_[n].kind; }
    [[nodiscard]] bool is(Node n, Kind k) const { return kind(n) == k; }
    [[nodiscard]] double number(Node n) const { return entries_[n].number; } // of a Number
    [[nodiscard]] std::string_view text(Node n) const;                       // of a Text
    [[nodiscard]] std::string_view key(Node n) const; // of a member of an object; else empty

    [[nodiscard]] Node parent(Node n) const { return entries_[n].parent; } // kNone above the root
    [[nodiscard]] Node first(Node n) const; // of an Array or Object; kNone when it is empty
    [[nodiscard]] Node next(Node n) const { return entries_[n].next; } // kNone after the last
    [[nodiscard]] std::size_t count(Node n) const;                     // of an Array or Object

    // RFC 6901, "" for the root.
    [[nodiscard]] std::string pointer(Node n) const;
    // As JSON without blanks; numbers as they were written.
    [[nodiscard]] std::string compact(Node n) const;

private:
    friend class TreeBuilder;
    struct Entry {
        Node parent = kNone, next = kNone;
        std::uint32_t key = 0; // where in the pool; in an array: the index
        std::uint32_t keySize = 0;
        std::uint32_t at =
            kNone; // the text, or the number as written, in the pool; the first child
        std::uint32_t size : 29 = 0; // bytes of the text; children
        Kind kind : 3 = Kind::Null;
        double number = 0;
    };
    void compactTo(std::string& out, Node n) const;
    void compactChildren(std::string& out, Node n) const;

    std::deque<Entry> entries_;
    std::string pool_;
};

// "~" and "/" in one part of a pointer, as RFC 6901 writes them.
[[nodiscard]] std::string pointerPart(std::string_view key);
// With quotation marks; what JSON must escape is escaped, all else stays as it is.
[[nodiscard]] std::string quoted(std::string_view text);

} // namespace bw::json
