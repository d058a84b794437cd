// SPDX-License-Identifier: GPL-3.0-or-later
// A laid-out sheet on a printer.
#pragma once
#include "blockwright/model/result.hpp"
#include "sheets/page.hpp"

#include <functional>

class QPrinter;
class QWidget;

namespace bw {

// Lets the coach choose a printer and copies; false: no printing. A test answers in their place.
[[nodiscard]] std::function<bool(QPrinter&, QWidget* parent)>& askPrinter();

// Sets the printer to the layout's paper without margins, asks, prints. False: the coach said no.
[[nodiscard]] Result<bool> printSheet(const Layout& layout, QWidget* parent);

} // namespace bw
