// SPDX-License-Identifier: GPL-3.0-or-later
// How one exercise divides over a closed word list (patterns, planes). Parts add up to the whole.
//   Shares<Pattern>::of({{Pattern::Squat, 0.9}, {Pattern::TrunkStability, 0.1}})
#pragma once
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <array>
#include <utility>
#include <vector>

namespace bw {

template <class E> class Shares {
public:
    static constexpr std::int64_t kSlack =
        1'000'000; // the sum may be off by a thousandth (3 x 0.333)

    Shares() = default; // nothing said: every part 0
    static Result<Shares> of(const std::vector<std::pair<E, Share>>& parts) {
        Shares s;
        std::int64_t sum = 0;
        for (const auto& [e, share] : parts) {
            s.parts_[static_cast<std::size_t>(e)] = share;
            sum += share.billionths();
        }
        if (sum < Share::kWhole - kSlack || sum > Share::kWhole + kSlack)
            return Message{"The shares must add up to 1.", {}};
        return s;
    }

    [[nodiscard]] Share operator[](E e) const { return parts_[static_cast<std::size_t>(e)]; }
    [[nodiscard]] bool has(E e) const { return (*this)[e].billionths() > 0; }
    [[nodiscard]] bool none() const { return *this == Shares{}; }
    [[nodiscard]] E largest() const { // the first of equals
        std::size_t best = 0;
        for (std::size_t i = 1; i < kCount<E>; ++i)
            if (parts_[i] > parts_[best]) best = i;
        return static_cast<E>(best);
    }
    bool operator==(const Shares&) const = default;

private:
    std::array<Share, kCount<E>> parts_{};
};

} // namespace bw
