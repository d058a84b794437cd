// SPDX-License-Identifier: GPL-3.0-or-later
// A line under the sheet about the slot where the attention is: its cues and cautions from the
// Shelf, and the slot's own note, main-lift and lock marks.
#pragma once
#include "blockwright/model/message.hpp"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace bw {

class Draft;

class SlotStrip : public QWidget {
    Q_OBJECT
public:
    SlotStrip(Draft& draft, QWidget* parent);

Q_SIGNALS:
    void refused(const bw::Message& why);

private:
    void show();
    void enterNote();

    Draft& draft_;
    QLabel* about_;
    QLineEdit* note_;
    QCheckBox *main_, *locked_;
};

} // namespace bw
