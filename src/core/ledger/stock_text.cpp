// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/stock_text.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "core/model/board_text.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace bw {

namespace {
using board::quoted;

bool figure(char c) { return c >= '0' && c <= '9'; }

Message notStock(std::string_view typed) {
    return {"“%1” is not understood: write each load and how many there are, such as 8x2, 12x4, "
            "16.",
            {quoted(typed)}};
}

// Reads "8kgx2", without blanks, from its front to its end.
class PieceReader {
public:
    explicit PieceReader(std::string_view text) : left_(text) {}

    template <class N> std::optional<N> number() {
        N value{};
        const char* last = left_.data() + left_.size();
        const auto [at, error] = std::from_chars(left_.data(), last, value);
        if (error != std::errc{} || left_.empty() || !figure(left_.front())) return std::nullopt;
        left_.remove_prefix(static_cast<std::size_t>(at - left_.data()));
        return value;
    }
    bool word(std::string_view word) {
        if (!left_.starts_with(word)) return false;
        left_.remove_prefix(word.size());
        return true;
    }
    std::optional<MassUnit> unit() {
        if (word("kg")) return MassUnit::Kg;
        if (word("lbs") || word("lb")) return MassUnit::Lb;
        return std::nullopt;
    }
    [[nodiscard]] bool ended() const { return left_.empty(); }

private:
    std::string_view left_;
};

struct Piece {
    Mass load;
    int count = 1;
};

Result<Piece> readPiece(std::string_view typed, MassUnit usual) {
    std::string text(typed);
    std::erase(text, ' ');
    PieceReader reader(text);
    const auto number = reader.number<double>();
    if (!number || !std::isfinite(*number)) return notStock(typed);
    const MassUnit unit = reader.unit().value_or(usual);
    const bool counted = reader.word("x");
    const auto count = counted ? reader.number<int>() : std::optional(1);
    if (!count || !reader.ended()) return notStock(typed);
    const auto load = unit == MassUnit::Kg ? Mass::fromKg(*number) : Mass::fromLb(*number);
    if (!load || *load == Mass{} || *count < 1 || *count > kMostPieces)
        return Message{"“%1” is out of range: a load is above 0 and at most 2000 kg, and there are "
                       "1 to 1000 of it.",
                       {quoted(typed)}};
    return Piece{*load, *count};
}

// "2,5": two and a half, or a two and a five?
bool couldBeDecimal(std::string_view text, std::size_t comma) {
    return comma > 0 && figure(text[comma - 1]) && comma + 1 < text.size() &&
           figure(text[comma + 1]);
}

Result<std::vector<std::string>> piecesIn(const std::string& text) {
    std::vector<std::string> pieces(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string& piece = pieces.back();
        if (text[i] != ',') {
            piece += text[i];
            continue;
        }
        if (couldBeDecimal(text, i) && piece.find('x') == std::string::npos)
            return Message{"“%1” could be one load or two: write 2.5 for two and a half, and a "
                           "blank behind the comma between two loads.",
                           {quoted(piece + text.substr(i, 2))}};
        pieces.emplace_back();
    }
    std::erase_if(pieces, [](const std::string& piece) {
        return piece.find_first_not_of(' ') == std::string::npos;
    });
    return pieces;
}
} // namespace

Result<LoadStock> parseStock(std::string_view typed, MassUnit usual) {
    std::string plain = board::plainSigns(typed);
    std::replace(plain.begin(), plain.end(), ';', ',');
    const auto pieces = piecesIn(plain);
    if (!pieces) return pieces.why();
    LoadStock stock;
    for (const std::string& one : *pieces) {
        const auto piece = readPiece(one, usual);
        if (!piece) return piece.why();
        stock[piece->load] += piece->count;
        if (piecesOf(stock) > kMostPieces) return Message{"These are more than 1000 in all.", {}};
    }
    return stock;
}

std::string stockText(const LoadStock& stock, MassUnit unit) {
    std::string text;
    for (const auto& [load, count] : stock) {
        if (!text.empty()) text += ", ";
        text += massNumber(load, unit);
        if (count != 1) text += "×" + std::to_string(count);
    }
    return text;
}

int piecesOf(const LoadStock& stock) {
    int sum = 0;
    for (const auto& [load, count] : stock) sum += count;
    return sum;
}

} // namespace bw
