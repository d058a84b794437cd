// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/effort.hpp"

#include <cmath>

namespace bw {

Result<Rir> Rir::fromTenths(int tenths) {
    if (tenths < 0 || tenths > 100)
        return Message{"Repetitions in reserve must be from 0 to 10.", {}};
    return Rir(tenths);
}

Result<Rir> Rir::of(double reps) {
    if (!(reps > -1 && reps < 1000)) return fromTenths(-1);
    return fromTenths(static_cast<int>(std::lround(reps * 10)));
}

} // namespace bw
