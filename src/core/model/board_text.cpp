// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/board_text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace bw::board {

namespace {
constexpr std::size_t kMostFigures = 7;
constexpr std::size_t kMostDecimals = 4;

struct Token {
    enum class Kind { Number, Clock, Word, Dash, Slash } kind;
    Amount amount;    // of a number or clock
    std::string word; // of a word
};
using Tokens = std::vector<Token>;

struct Spelt {
    std::string_view from, to;
};

// Dashes, quotes and spaces of typography, as the plain characters they stand for.
constexpr std::array<Spelt, 13> kPlain{{{"–", "-"},
                                        {"—", "-"},
                                        {"−", "-"},
                                        {"‐", "-"},
                                        {"‑", "-"},
                                        {"″", "\""},
                                        {"”", "\""},
                                        {"′", "'"},
                                        {"’", "'"},
                                        {"\u00A0", " "},
                                        {"\u202F", " "},
                                        {"\u2009", " "},
                                        {"×", "x"}}};

std::string plainText(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const auto* const it = std::find_if(
            kPlain.begin(), kPlain.end(), [&](const Spelt& s) { return text.starts_with(s.from); });
        if (it != kPlain.end()) {
            out += it->to;
            text.remove_prefix(it->from.size());
            continue;
        }
        const char c = text.front();
        out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        text.remove_prefix(1);
    }
    return out;
}

bool isFigure(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return c >= 'a' && c <= 'z'; }

template <class Is> std::string_view takeWhile(std::string_view& rest, Is is) {
    const auto end = std::find_if_not(rest.begin(), rest.end(), is);
    const auto taken = rest.substr(0, static_cast<std::size_t>(end - rest.begin()));
    rest.remove_prefix(taken.size());
    return taken;
}

std::int64_t toNumber(std::string_view figures) {
    std::int64_t n = 0;
    for (const char c : figures) n = n * 10 + (c - '0');
    return n;
}

// ":30" or ":02:00" after the first figures; all but the first part have two figures below 60.
std::optional<Token> takeClock(std::string_view first, std::string_view& rest) {
    std::int64_t total = toNumber(first);
    int parts = 1;
    while (rest.starts_with(':')) {
        rest.remove_prefix(1);
        const auto part = takeWhile(rest, isFigure);
        if (part.size() != 2 || toNumber(part) > 59 || ++parts > 3) return std::nullopt;
        total = total * 60 + toNumber(part);
    }
    return Token{Token::Kind::Clock, {total, 0, Unit::Second, true}, {}};
}

// "1,000" could be one or a thousand, so it is not understood; "1,5" and "0,125" are.
bool couldBeThousands(char mark, std::string_view whole, std::string_view part) {
    return mark == ',' && part.size() == 3 && whole != "0";
}

std::optional<Token> takeNumber(std::string_view& rest) {
    const auto whole = takeWhile(rest, isFigure);
    if (whole.size() > kMostFigures) return std::nullopt;
    if (rest.starts_with(':')) return takeClock(whole, rest);
    std::string_view part;
    if (rest.starts_with('.') || rest.starts_with(',')) {
        const char mark = rest.front();
        rest.remove_prefix(1);
        part = takeWhile(rest, isFigure);
        if (part.empty() || part.size() > kMostDecimals || couldBeThousands(mark, whole, part))
            return std::nullopt;
    }
    const auto number = toNumber(std::string(whole).append(part));
    return Token{
        Token::Kind::Number, {number, static_cast<int>(part.size()), Unit::None, false}, {}};
}

std::optional<Token> takeToken(std::string_view& rest) {
    if (isFigure(rest.front())) return takeNumber(rest);
    if (isLetter(rest.front())) {
        const std::string word(takeWhile(rest, isLetter));
        if (word == "to") return Token{Token::Kind::Dash, {}, {}};
        return Token{Token::Kind::Word, {}, word};
    }
    const char c = rest.front();
    rest.remove_prefix(1);
    if (c == '-') return Token{Token::Kind::Dash, {}, {}};
    if (c == '/') return Token{Token::Kind::Slash, {}, {}};
    if (c == '"') return Token{Token::Kind::Word, {}, "s"};
    if (c == '\'') return Token{Token::Kind::Word, {}, "min"};
    return std::nullopt;
}

std::optional<Tokens> tokensOf(std::string_view text) {
    const std::string plain = plainText(text);
    std::string_view rest = plain;
    Tokens out;
    for (;;) {
        takeWhile(rest, [](char c) { return c == ' ' || c == '\t'; });
        if (rest.empty()) return out;
        auto token = takeToken(rest);
        if (!token) return std::nullopt;
        out.push_back(std::move(*token));
    }
}

constexpr std::array<std::pair<std::string_view, Unit>, 41> kUnits{{{"rep", Unit::Rep},
                                                                    {"reps", Unit::Rep},
                                                                    {"repetition", Unit::Rep},
                                                                    {"repetitions", Unit::Rep},
                                                                    {"s", Unit::Second},
                                                                    {"sec", Unit::Second},
                                                                    {"secs", Unit::Second},
                                                                    {"second", Unit::Second},
                                                                    {"seconds", Unit::Second},
                                                                    {"min", Unit::Minute},
                                                                    {"mins", Unit::Minute},
                                                                    {"minute", Unit::Minute},
                                                                    {"minutes", Unit::Minute},
                                                                    {"h", Unit::Hour},
                                                                    {"hr", Unit::Hour},
                                                                    {"hrs", Unit::Hour},
                                                                    {"hour", Unit::Hour},
                                                                    {"hours", Unit::Hour},
                                                                    {"m", Unit::Metre},
                                                                    {"metre", Unit::Metre},
                                                                    {"metres", Unit::Metre},
                                                                    {"meter", Unit::Metre},
                                                                    {"meters", Unit::Metre},
                                                                    {"km", Unit::Kilometre},
                                                                    {"kilometre", Unit::Kilometre},
                                                                    {"kilometres", Unit::Kilometre},
                                                                    {"kilometer", Unit::Kilometre},
                                                                    {"kilometers", Unit::Kilometre},
                                                                    {"cal", Unit::Kcal},
                                                                    {"cals", Unit::Kcal},
                                                                    {"kcal", Unit::Kcal},
                                                                    {"kcals", Unit::Kcal},
                                                                    {"calorie", Unit::Kcal},
                                                                    {"calories", Unit::Kcal},
                                                                    {"round", Unit::Round},
                                                                    {"rounds", Unit::Round},
                                                                    {"set", Unit::Round},
                                                                    {"sets", Unit::Round},
                                                                    {"x", Unit::Round},
                                                                    {"rir", Unit::Rir},
                                                                    {"rpe", Unit::Rpe}}};

Unit unitOf(std::string_view word) {
    const auto* const it =
        std::find_if(kUnits.begin(), kUnits.end(), [&](const auto& u) { return u.first == word; });
    return it == kUnits.end() ? Unit::None : it->second;
}

// Walks over the tokens; every take leaves the place alone when it finds nothing.
class Reader {
public:
    explicit Reader(const Tokens& tokens) : tokens_(tokens) {}

    std::optional<Span> span() {
        const Unit before = effortWord();
        auto lo = amount();
        if (!lo) return std::nullopt;
        auto hi = lo;
        if (take(Token::Kind::Dash)) hi = amount();
        if (!hi) return std::nullopt;
        Span out{*lo, *hi, sides()};
        if (before != Unit::None && !shareUnit(out, before)) return std::nullopt;
        if (at_ != tokens_.size() || !shareUnit(out, Unit::None)) return std::nullopt;
        return out;
    }

private:
    [[nodiscard]] const Token* next() const {
        return at_ < tokens_.size() ? &tokens_[at_] : nullptr;
    }
    bool take(Token::Kind kind) {
        const bool there = next() && next()->kind == kind;
        at_ += there ? 1 : 0;
        return there;
    }
    bool takeWord(std::string_view word) {
        const bool there = next() && next()->kind == Token::Kind::Word && next()->word == word;
        at_ += there ? 1 : 0;
        return there;
    }
    Unit takeUnit() {
        const Unit unit =
            next() && next()->kind == Token::Kind::Word ? unitOf(next()->word) : Unit::None;
        at_ += unit == Unit::None ? 0 : 1;
        return unit;
    }
    Unit effortWord() {
        return takeWord("rir") ? Unit::Rir : takeWord("rpe") ? Unit::Rpe : Unit::None;
    }

    std::optional<Amount> amount() {
        if (!next()) return std::nullopt;
        Amount a = next()->amount;
        if (take(Token::Kind::Clock)) {
            const auto after = at_;
            if (takeUnit() != Unit::Minute) at_ = after; // "1:30 min" says it twice
            return a;
        }
        if (!take(Token::Kind::Number)) return std::nullopt;
        a.unit = takeUnit();
        if (a.unit == Unit::Minute && a.decimals == 0) addSeconds(a);
        return a;
    }

    // "1 min 30 s", "1'30"".
    void addSeconds(Amount& minutes) {
        const auto start = at_;
        const Token* token = next();
        if (take(Token::Kind::Number) && takeUnit() == Unit::Second &&
            token->amount.decimals == 0 && token->amount.number < 60)
            minutes = {minutes.number * 60 + token->amount.number, 0, Unit::Second, false};
        else
            at_ = start;
    }

    // "/side", "per leg", "a side", "each arm", "each".
    bool sides() {
        const auto start = at_;
        const bool each = takeWord("each");
        const bool lead = each || take(Token::Kind::Slash) || takeWord("per") || takeWord("a");
        const bool part = lead && (takeWord("side") || takeWord("leg") || takeWord("arm"));
        if (part || each) return true;
        at_ = start;
        return false;
    }

    // Gives both amounts a unit if one has it (or `given`); false when two units have nothing in
    // common.
    static bool shareUnit(Span& span, Unit given) {
        for (Amount* a : {&span.lo, &span.hi}) {
            const Amount& other = a == &span.lo ? span.hi : span.lo;
            const Unit unit = given != Unit::None ? given : other.unit;
            if (a->unit == Unit::None && other.clock) return false; // "1:30-2": two of what?
            if (a->unit == Unit::None) a->unit = unit;
            if (given != Unit::None && a->unit != given) return false;
        }
        return true;
    }

    const Tokens& tokens_;
    std::size_t at_ = 0;
};
} // namespace

std::optional<std::int64_t> Amount::grains(std::int64_t perUnit) const {
    std::int64_t whole = 1;
    for (int i = 0; i < decimals; ++i) whole *= 10;
    const std::int64_t scaled = number * perUnit;
    return scaled % whole == 0 ? std::optional(scaled / whole) : std::nullopt;
}

std::optional<Span> readSpan(std::string_view text) {
    const auto tokens = tokensOf(text);
    return tokens ? Reader(*tokens).span() : std::nullopt;
}

std::string plainWords(std::string_view text) {
    std::string out;
    for (const char c : plainText(text)) {
        const bool gap = c == ' ' || c == '\t';
        if (!gap || (!out.empty() && out.back() != ' ')) out += gap ? ' ' : c;
    }
    if (out.ends_with(' ')) out.pop_back();
    return out;
}

std::string quoted(std::string_view text) {
    constexpr std::size_t kMost = 40;
    std::size_t characters = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool startsOne = (static_cast<unsigned char>(text[i]) & 0xC0u) != 0x80u;
        if (startsOne && ++characters > kMost) return std::string(text.substr(0, i)) + "…";
    }
    return std::string(text);
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string plainSigns(std::string_view text) {
    std::string out;
    constexpr std::pair<std::string_view, char> kSigns[] = {
        {"×", 'x'}, {"*", 'x'}, {"\t", ' '}, {"\u202f", ' '}, {"\u00a0", ' '}};
    while (!text.empty()) {
        const auto* const sign =
            std::find_if(std::begin(kSigns), std::end(kSigns),
                         [&](const auto& s) { return text.starts_with(s.first); });
        if (sign != std::end(kSigns)) {
            out += sign->second;
            text.remove_prefix(sign->first.size());
            continue;
        }
        const char c = text.front();
        out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        text.remove_prefix(1);
    }
    return out;
}

} // namespace bw::board
