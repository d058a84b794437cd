// SPDX-License-Identifier: GPL-3.0-or-later
// A laid-out sheet as a PDF file: fonts embedded, text to be searched and copied. It is written
// beside its place and moved there when whole, so that a full disk leaves what was there before.
#pragma once
#include "blockwright/model/result.hpp"
#include "sheets/page.hpp"

namespace bw {

// Needs a QGuiApplication. The sentence of a failure says what was kept.
[[nodiscard]] Result<bool> writePdf(const QString& path, const Layout& layout);

} // namespace bw
