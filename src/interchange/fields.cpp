// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/fields.hpp"

#include <algorithm>

namespace bw {

using json::kNone;
using json::Node;

Fields::Fields(Reader& reader, Node object)
    : reader_(reader),
      object_(reader.expect(object, json::Kind::Object, "an object { }") ? object : kNone) {}

Node Fields::take(std::string_view key) {
    if (!there()) return kNone;
    const auto& tree = reader_.tree;
    for (Node n = tree.first(object_); n != kNone; n = tree.next(n)) {
        if (tree.key(n) != key) continue;
        taken_.push_back(n);
        return n;
    }
    return kNone;
}

Node Fields::need(std::string_view key) {
    const Node n = take(key);
    if (n == kNone && there())
        reader_.error(object_, {"“%1” is missing here.", {std::string(key)}});
    return n;
}

std::string Fields::restJson() {
    std::string out;
    if (!there()) return out;
    const auto& tree = reader_.tree;
    for (Node n = tree.first(object_); n != kNone; n = tree.next(n)) {
        if (std::find(taken_.begin(), taken_.end(), n) != taken_.end()) continue;
        if (!out.empty()) out += ',';
        out += json::quoted(tree.key(n)) + ':' + tree.compact(n);
        reader_.faults.note(n,
                            {"“%1” is not a key this version knows; it is kept, and written again "
                             "on export.",
                             {std::string(tree.key(n))}});
    }
    return out;
}

Extras Fields::rest(std::initializer_list<Fields*> parts) {
    std::string all = restJson();
    for (Fields* part : parts) {
        const auto inner = part->restJson();
        if (inner.empty()) continue;
        if (!all.empty()) all += ',';
        all += json::quoted(reader_.tree.key(part->object_)) + ":{" + inner + '}';
    }
    return all.empty() ? Extras{} : Extras{'{' + all + '}'};
}

} // namespace bw
