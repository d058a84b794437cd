// SPDX-License-Identifier: GPL-3.0-or-later
// Tempo of one repetition in seconds: lowering, pause, lifting, pause, in this order (the order in
// Wilk, Zajac, Tufano, Sports Med 2021;51:1629-1650). X means as fast as possible and counts one
// second.
//   Tempo::parse("31X0")->seconds() == 5
#pragma once
#include "blockwright/model/result.hpp"

#include <array>
#include <string>
#include <string_view>

namespace bw {

class Tempo {
public:
    // Four of 0 to 9 or X; a repetition that takes no time at all (0000) is refused.
    static Result<Tempo> parse(std::string_view text);

    [[nodiscard]] int seconds() const; // 1 to 36
    [[nodiscard]] std::string text() const { return {figures_.begin(), figures_.end()}; }
    bool operator==(const Tempo&) const = default;

private:
    explicit Tempo(std::array<char, 4> f) : figures_(f) {}
    std::array<char, 4> figures_;
};

} // namespace bw
