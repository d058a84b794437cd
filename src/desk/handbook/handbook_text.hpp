// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/handbook/handbook_pages.hpp"

class QTextDocument;

namespace bw {

// Sets a page in paper and ink of now, in the document's font. Links inside the Handbook are
// places; where a link leads out of it, its address stands in the text and leads nowhere.
void setHandbookPage(QTextDocument& text, const HandbookPage& page);
// The number of the block of the page's n-th heading; -1: there is none.
[[nodiscard]] int blockOfHeading(const QTextDocument& text, int heading);

// What is given to the typesetter: without links out, with places where long names may break.
[[nodiscard]] QString handbookSource(const HandbookPage& page);

} // namespace bw
