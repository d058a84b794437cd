// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QModelIndex>
#include <QStyleOptionViewItem>

class QPainter;

namespace bw {

// One cell of the sheet on its paper: heads, rows held together by a bracket, the foot under it.
void paintSheetCell(QPainter& p, const QStyleOptionViewItem& option, const QModelIndex& index);

} // namespace bw
