// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/merge_extras.hpp"

#include "interchange/json_parse.hpp"

#include <stdexcept>
#include <unordered_map>

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;
using json::Tree;

namespace {
Tree treeOf(const Extras& extras) {
    auto parsed = json::parse(extras.json);
    if (parsed.fault || !parsed.tree.is(json::kRoot, Kind::Object))
        throw std::logic_error("extras are no JSON object: " + extras.json);
    return std::move(parsed.tree);
}

std::unordered_map<std::string_view, Node> byKey(const Tree& tree, Node object) {
    std::unordered_map<std::string_view, Node> out;
    for (Node n = tree.first(object); n != kNone; n = tree.next(n)) out.emplace(tree.key(n), n);
    return out;
}

void addMember(std::string& out, std::string_view key, const std::string& value) {
    if (out.size() > 1) out += ',';
    out += json::quoted(key) + ':' + value;
}

std::string merged(const Tree& a, Node beneath, const Tree& b, Node above) {
    if (!a.is(beneath, Kind::Object) || !b.is(above, Kind::Object)) return b.compact(above);
    const auto inAbove = byKey(b, above), inBeneath = byKey(a, beneath);
    std::string out = "{";
    for (Node n = a.first(beneath); n != kNone; n = a.next(n)) {
        const auto other = inAbove.find(a.key(n));
        addMember(out, a.key(n),
                  other == inAbove.end() ? a.compact(n) : merged(a, n, b, other->second));
    }
    for (Node n = b.first(above); n != kNone; n = b.next(n))
        if (!inBeneath.contains(b.key(n))) addMember(out, b.key(n), b.compact(n));
    return out + '}';
}
} // namespace

Extras mergedExtras(const Extras& beneath, const Extras& above) {
    if (beneath.json.empty()) return above;
    if (above.json.empty()) return beneath;
    const Tree a = treeOf(beneath), b = treeOf(above);
    return {merged(a, json::kRoot, b, json::kRoot)};
}

} // namespace bw
