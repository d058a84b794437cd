// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/tempo.hpp"

namespace bw {

Result<Tempo> Tempo::parse(std::string_view text) {
    const Message bad{"“%1” is not a tempo: write four figures such as 31X0 (lowering, pause, "
                      "lifting, pause; X is as fast as possible).",
                      {std::string(text.substr(0, 40))}};
    if (text.size() != 4) return bad;
    std::array<char, 4> figures{};
    for (std::size_t i = 0; i < 4; ++i) {
        const char c = text[i] == 'x' ? 'X' : text[i];
        if (c != 'X' && (c < '0' || c > '9')) return bad;
        figures[i] = c;
    }
    Tempo tempo(figures);
    if (tempo.seconds() == 0) return bad;
    return tempo;
}

int Tempo::seconds() const {
    int sum = 0;
    for (const char c : figures_) sum += c == 'X' ? 1 : c - '0';
    return sum;
}

} // namespace bw
