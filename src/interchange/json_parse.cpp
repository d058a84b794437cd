// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/json_parse.hpp"

#include "interchange/utf8.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

namespace bw::json {

namespace {
constexpr double kExact = 9'007'199'254'740'992.0; // 2^53: whole numbers below fit a double
constexpr std::string_view kByteMark = "\xEF\xBB\xBF";

struct Spot {
    std::string line, column; // from 1; columns in characters
};
Spot spotOf(std::string_view text, std::size_t index) {
    const auto before = text.substr(0, std::min(index, text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const auto start = before.rfind('\n');
    const auto rest = start == before.npos ? before : before.substr(start + 1);
    return {std::to_string(lines + 1), std::to_string(codePoints(rest) + 1)};
}
} // namespace

// Hears the parser of nlohmann_json and builds the tree; stops it at the first thing that is no
// JSON and at nesting too deep.
class TreeBuilder final : public nlohmann::json_sax<nlohmann::json> {
public:
    TreeBuilder(std::string_view text, int deepest, Parsed& to)
        : text_(text), deepest_(deepest), to_(to), tree_(to.tree) {}

    bool null() override { return add(Kind::Null), true; }
    bool boolean(bool b) override { return add(b ? Kind::True : Kind::False), true; }
    bool number_integer(number_integer_t n) override { return addWhole(n); }
    bool number_unsigned(number_unsigned_t n) override { return addWhole(n); }
    bool number_float(number_float_t x, const string_t& written) override {
        const Node n = add(Kind::Number);
        tree_.entries_[n].number = x;
        keep(n, written);
        return true;
    }
    bool string(string_t& value) override { return keep(add(Kind::Text), value), true; }
    bool binary(binary_t&) override { return false; } // never in JSON text
    bool start_object(std::size_t) override { return open(Kind::Object); }
    bool start_array(std::size_t) override { return open(Kind::Array); }
    bool end_array() override { return close(); }
    bool end_object() override {
        findTwice(open_.back().node);
        return close();
    }
    bool key(string_t& value) override {
        key_ = static_cast<std::uint32_t>(tree_.pool_.size());
        keySize_ = static_cast<std::uint32_t>(value.size());
        keyGiven_ = true;
        tree_.pool_ += value;
        return true;
    }
    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::detail::exception& why) override;

private:
    struct Open {
        Node node, last;
    };
    Node add(Kind kind);
    template <class T> bool addWhole(T n) {
        const Node node = add(Kind::Number);
        const auto x = static_cast<double>(n);
        tree_.entries_[node].number = x;
        if (std::abs(x) >= kExact) keep(node, std::to_string(n));
        return true;
    }
    void keep(Node n, std::string_view text);
    bool open(Kind kind);
    bool close() { return open_.pop_back(), keyGiven_ = false, true; }
    void findTwice(Node object);
    [[nodiscard]] std::string herePointer() const;

    std::string_view text_;
    int deepest_;
    Parsed& to_;
    Tree& tree_;
    std::vector<Open> open_;
    std::vector<std::pair<std::string_view, Node>> keys_; // of findTwice, kept for its memory
    std::uint32_t key_ = 0, keySize_ = 0;
    bool keyGiven_ = false; // a key was read, its value was not
};

Node TreeBuilder::add(Kind kind) {
    const auto n = static_cast<Node>(tree_.entries_.size());
    auto& e = tree_.entries_.emplace_back();
    e.kind = kind;
    if (open_.empty()) return n;
    Open& around = open_.back();
    auto& parent = tree_.entries_[around.node];
    e.parent = around.node;
    e.key = parent.kind == Kind::Object ? key_ : parent.size;
    e.keySize = keySize_;
    (around.last == kNone ? parent.at : tree_.entries_[around.last].next) = n;
    around.last = n;
    ++parent.size;
    keyGiven_ = false;
    return n;
}

void TreeBuilder::keep(Node n, std::string_view text) {
    auto& e = tree_.entries_[n];
    e.at = static_cast<std::uint32_t>(tree_.pool_.size());
    e.size = static_cast<std::uint32_t>(text.size());
    tree_.pool_ += text;
}

bool TreeBuilder::open(Kind kind) {
    const Node n = add(kind);
    if (static_cast<int>(open_.size()) < deepest_) {
        open_.push_back({n, kNone});
        return true;
    }
    to_.fault = BundleFault{
        tree_.pointer(n),
        {"Objects and lists stand in each other more than %1 deep.", {std::to_string(deepest_)}}};
    return false;
}

// Sorts by key, then by place: every key but the first of equals is reported.
void TreeBuilder::findTwice(Node object) {
    if (tree_.count(object) < 2) return;
    keys_.clear();
    for (Node n = tree_.first(object); n != kNone; n = tree_.next(n))
        keys_.emplace_back(tree_.key(n), n);
    std::sort(keys_.begin(), keys_.end());
    for (std::size_t i = 1; i < keys_.size(); ++i)
        if (keys_[i].first == keys_[i - 1].first) to_.twice.push_back(keys_[i].second);
}

// Where the value that could not be read would have stood.
std::string TreeBuilder::herePointer() const {
    if (open_.empty()) return {};
    const Node around = open_.back().node;
    const auto pointer = tree_.pointer(around);
    if (tree_.is(around, Kind::Array)) return pointer + "/" + std::to_string(tree_.count(around));
    if (!keyGiven_) return pointer;
    return pointer + "/" + pointerPart(std::string_view(tree_.pool_).substr(key_, keySize_));
}

bool TreeBuilder::parse_error(std::size_t position, const std::string& token,
                              const nlohmann::detail::exception& why) {
    constexpr int kNumberOverflow = 406; // nlohmann_json's manual, "Exceptions"
    const auto index = position > 0 ? position - 1 : 0;
    const auto spot = spotOf(text_, index);
    Message text{"This is not JSON from line %1, column %2 on, near “%3”: a comma, a bracket or a "
                 "quotation mark is missing or too many.",
                 {spot.line, spot.column, shown(token, 40)}};
    if (why.id == kNumberOverflow)
        text = {"The number “%3” in line %1, column %2 is too large for any use.", text.args};
    else if (index >= text_.size())
        text = {
            "The text ends in line %1, column %2, before it is complete: part of it may be lost.",
            {spot.line, spot.column}};
    to_.fault = BundleFault{herePointer(), std::move(text)};
    return false;
}

namespace {
Message at(std::string_view text, std::size_t index, std::string source) {
    const auto spot = spotOf(text, index);
    return {std::move(source), {spot.line, spot.column}};
}

std::optional<BundleFault> unreadable(std::string_view text) {
    if (text.find_first_not_of(" \t\r\n") == text.npos)
        return BundleFault{"", {"The bundle is empty (line 1, column 1).", {}}};
    const auto zero = text.find('\0'); // nlohmann_json takes it for the end of the text
    if (zero != text.npos)
        return BundleFault{"", at(text, zero,
                                  "There is a zero byte in line %1, column %2. The file is "
                                  "damaged, or not saved as UTF-8.")};
    if (const auto bad = firstNotUtf8(text))
        return BundleFault{"", at(text, *bad,
                                  "A character in line %1, column %2 is not UTF-8. Save the "
                                  "file as UTF-8 and try again.")};
    return std::nullopt;
}
} // namespace

Parsed parse(std::string_view text, int deepest) {
    Parsed out;
    out.byteMark = text.starts_with(kByteMark);
    if (out.byteMark) text.remove_prefix(kByteMark.size());
    out.fault = unreadable(text);
    if (out.fault) return out;
    TreeBuilder builder(text, deepest, out);
    nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
    return out;
}

} // namespace bw::json
