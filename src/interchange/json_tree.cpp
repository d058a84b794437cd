// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/json_tree.hpp"

namespace bw::json {

namespace {
constexpr char kHex[] = "0123456789abcdef";

void escapeTo(std::string& out, char c) {
    switch (c) {
    case '"': out += "\\\""; return;
    case '\\': out += "\\\\"; return;
    case '\n': out += "\\n"; return;
    case '\r': out += "\\r"; return;
    case '\t': out += "\\t"; return;
    default: break;
    }
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x20) {
        out += c;
        return;
    }
    out += "\\u00";
    out += kHex[byte >> 4];
    out += kHex[byte & 15];
}
} // namespace

std::string quoted(std::string_view text) {
    std::string out = "\"";
    out.reserve(text.size() + 2);
    for (const char c : text) escapeTo(out, c);
    out += '"';
    return out;
}

std::string pointerPart(std::string_view key) {
    std::string out;
    for (const char c : key) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

std::string_view Tree::text(Node n) const {
    const Entry& e = entries_[n];
    return std::string_view(pool_).substr(e.at, e.size);
}

std::string_view Tree::key(Node n) const {
    const Entry& e = entries_[n];
    if (e.parent == kNone || !is(e.parent, Kind::Object)) return {};
    return std::string_view(pool_).substr(e.key, e.keySize);
}

Node Tree::first(Node n) const { return count(n) > 0 ? entries_[n].at : kNone; }

std::size_t Tree::count(Node n) const {
    return is(n, Kind::Array) || is(n, Kind::Object) ? entries_[n].size : 0;
}

std::string Tree::pointer(Node n) const {
    std::string out;
    for (; parent(n) != kNone; n = parent(n)) {
        const bool member = is(parent(n), Kind::Object);
        out.insert(0, "/" + (member ? pointerPart(key(n)) : std::to_string(entries_[n].key)));
    }
    return out;
}

std::string Tree::compact(Node n) const {
    std::string out;
    compactTo(out, n);
    return out;
}

void Tree::compactTo(std::string& out, Node n) const {
    switch (kind(n)) {
    case Kind::Null: out += "null"; return;
    case Kind::False: out += "false"; return;
    case Kind::True: out += "true"; return;
    case Kind::Text: out += quoted(text(n)); return;
    case Kind::Number:
        // Whole numbers that a double holds exactly are not kept as written.
        out += entries_[n].at == kNone ? std::to_string(static_cast<std::int64_t>(number(n)))
                                       : std::string(text(n));
        return;
    case Kind::Array:
    case Kind::Object: compactChildren(out, n); return;
    }
}

void Tree::compactChildren(std::string& out, Node n) const {
    const bool object = is(n, Kind::Object);
    out += object ? '{' : '[';
    for (Node child = first(n); child != kNone; child = next(child)) {
        if (child != first(n)) out += ',';
        if (object) out += quoted(key(child)) + ':';
        compactTo(out, child);
    }
    out += object ? '}' : ']';
}

} // namespace bw::json
