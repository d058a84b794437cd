// SPDX-License-Identifier: GPL-3.0-or-later
// How much is drawn in a test. The thread sanitizer looks at how threads meet and is ten times
// slower, so it gets a fifth.
#pragma once

namespace bw::test {

#if defined(__SANITIZE_THREAD__)
constexpr int kDrawShare = 5;
#else
constexpr int kDrawShare = 1;
#endif
constexpr int draws(int all) { return all / kDrawShare; }

} // namespace bw::test
