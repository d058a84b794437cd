// SPDX-License-Identifier: GPL-3.0-or-later
// Under the preview, for the mouse: turn the page, bring it nearer, fit it.
#pragma once
#include "desk/sheets/sheet_preview.hpp"

#include <QWidget>

class QLabel;
class QToolButton;

namespace bw {

class PreviewBar : public QWidget {
    Q_OBJECT
public:
    PreviewBar(SheetPreview& preview, QWidget* parent); // the preview must outlive it

private:
    void refresh();

    SheetPreview& preview_;
    QLabel* page_;
    QToolButton *back_, *on_, *farther_, *fit_, *nearer_;
};

} // namespace bw
