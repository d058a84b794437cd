// SPDX-License-Identifier: GPL-3.0-or-later
// What a bundle said and this version does not know: the unread keys of one object, as the text of
// a JSON object, kept to be written again on export. Empty when there were none. The engine never
// looks in.
#pragma once
#include <string>

namespace bw {

struct Extras {
    std::string json;
    bool operator==(const Extras&) const = default;
};

} // namespace bw
