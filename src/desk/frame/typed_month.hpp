// SPDX-License-Identifier: GPL-3.0-or-later
// Months among the words of a filter.
#pragma once
#include "blockwright/model/calendar.hpp"

#include <QStringList>

#include <optional>

namespace bw {

// Takes the month off the front of the words; nothing is taken when there is none. "2026-07", or
// the beginning of a month's name and perhaps a year: without one it is the last such month up to
// `latest`.
[[nodiscard]] std::optional<Month> takeMonth(QStringList& words, Month latest);

} // namespace bw
