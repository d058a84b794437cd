// SPDX-License-Identifier: GPL-3.0-or-later
// How far away a letter can be read. At visual acuity 1.0 (6/6) the smallest letter that is still
// recognised stands 5 minutes of arc high, with strokes of 1 minute (ISO 8596, after Snellen): at
// distance d its height is d * tan(5'), 4.4 mm at 3 m. Reading with ease takes about three times
// that (common practice, no source).
#pragma once

namespace bw {

inline constexpr double kBareReading = 1.3; // times the threshold: the least that a wall may ask
inline constexpr double kEasyReading = 3.0;

[[nodiscard]] double thresholdHeight(double metres); // millimetres
// Metres from which capitals of this height (mm) stand `times` the threshold.
[[nodiscard]] double readableFrom(double capHeight, double times);

} // namespace bw
