// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are written whole or not at all, and read whole.
#pragma once
#include "blockwright/model/result.hpp"

#include <QString>

#include <functional>
#include <string>

namespace bw {

// The file that was there stays until the new one is whole. `next` gives one part after the other,
// an empty one at the end, or why there is none.
[[nodiscard]] Result<bool> writeParts(const QString& path,
                                      const std::function<Result<std::string>()>& next);
[[nodiscard]] Result<bool> writeWhole(const QString& path, const std::string& text);
// Refuses what has more than `most` bytes.
[[nodiscard]] Result<std::string> readWhole(const QString& path, std::size_t most);

} // namespace bw
