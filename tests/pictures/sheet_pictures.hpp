// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace bw::test {

// The first page of each of the demonstration month's sheets as a picture, without the day of
// printing. False when one could not be written.
[[nodiscard]] bool drawSheets(const QString& folder);

} // namespace bw::test
