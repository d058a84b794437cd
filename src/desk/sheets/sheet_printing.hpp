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

enum class Printed { All, Nothing, Stopped }; // Nothing: the coach said no
// Sets the printer to the layout's paper without margins, asks, prints. Before each page `step` is
// told how many are done; false stops.
[[nodiscard]] Result<Printed> printSheet(const Layout& layout, QWidget* parent,
                                         const std::function<bool(int done)>& step = {});

} // namespace bw
