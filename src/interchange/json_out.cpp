// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/json_out.hpp"

#include "interchange/json_parse.hpp"

#include <charconv>
#include <stdexcept>

namespace bw::json {

namespace {
constexpr std::size_t kColumns = 100, kColumnsOfScalars = 160;
} // namespace

std::string decimalText(std::int64_t grains, std::int64_t perUnit) {
    std::string out = std::to_string(grains / perUnit);
    auto rest = grains % perUnit;
    if (rest != 0) out += '.';
    while (rest != 0) {
        perUnit /= 10;
        out += static_cast<char>('0' + rest / perUnit);
        rest %= perUnit;
    }
    return out;
}

Out Out::text(std::string_view value) { return Out(quoted(value)); }

Out Out::decimal(std::int64_t grains, std::int64_t perUnit) {
    return Out(decimalText(grains, perUnit));
}

Out Out::number(double value) {
    char buffer[32];
    return Out(std::string(buffer, std::to_chars(buffer, buffer + sizeof buffer, value).ptr));
}

Out& Out::add(std::string_view key, Out value) {
    auto name = quoted(key);
    inner_ += name.size() + 2 + value.width();
    deep_ = deep_ || !value.scalar();
    items_.emplace_back(std::move(name), std::move(value));
    return *this;
}

Out& Out::push(Out value) {
    inner_ += value.width();
    deep_ = deep_ || !value.scalar();
    items_.emplace_back(std::string{}, std::move(value));
    return *this;
}

Out& Out::addAll(std::string_view object) {
    if (object.empty()) return *this;
    const auto parsed = parse(object);
    if (parsed.fault || !parsed.tree.is(kRoot, Kind::Object))
        throw std::logic_error("extras are no JSON object: " + std::string(object));
    addMissing(parsed.tree, kRoot);
    return *this;
}

void Out::addMissing(const Tree& tree, Node object) {
    const auto known = items_.size();
    for (Node n = tree.first(object); n != kNone; n = tree.next(n)) {
        const auto name = quoted(tree.key(n));
        std::size_t i = 0;
        while (i < known && items_[i].first != name) ++i;
        if (i == known) {
            add(tree.key(n), Out(tree.compact(n)));
        } else if (items_[i].second.kind_ == Kind::Object && tree.is(n, Kind::Object)) {
            inner_ -= items_[i].second.width();
            items_[i].second.addMissing(tree, n);
            inner_ += items_[i].second.width();
        }
    }
}

std::size_t Out::width() const {
    if (scalar()) return scalar_.size();
    return inner_ + 2 + (items_.empty() ? 0 : 2 * (items_.size() - 1));
}

std::string Out::print() const {
    std::string out;
    broken(out, 0);
    return out + '\n';
}

void Out::flat(std::string& out) const {
    if (scalar()) {
        out += scalar_;
        return;
    }
    out += kind_ == Kind::Object ? '{' : '[';
    for (const auto& [key, value] : items_) {
        if (&key != &items_.front().first) out += ", ";
        if (kind_ == Kind::Object) out += key + ": ";
        value.flat(out);
    }
    out += kind_ == Kind::Object ? '}' : ']';
}

void Out::broken(std::string& out, std::size_t indent) const {
    if (items_.empty()) return flat(out);
    const std::string margin(indent + 2, ' ');
    out += kind_ == Kind::Object ? "{\n" : "[\n";
    for (const auto& [key, value] : items_) {
        if (&key != &items_.front().first) out += ",\n";
        out += margin;
        if (kind_ == Kind::Object) out += key + ": ";
        const auto most = value.deep_ ? kColumns : kColumnsOfScalars;
        if (margin.size() + key.size() + 3 + value.width() <= most)
            value.flat(out);
        else
            value.broken(out, indent + 2);
    }
    out += '\n' + std::string(indent, ' ') + (kind_ == Kind::Object ? '}' : ']');
}

} // namespace bw::json
