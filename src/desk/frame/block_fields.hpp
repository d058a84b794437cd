// SPDX-License-Identifier: GPL-3.0-or-later
// Title, format and visits of the month, edited where they stand. Enter or leaving a field keeps
// it, Escape takes back what was typed. What can't be kept stays in the field.
#pragma once
#include "edit/block_verbs.hpp"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QSpinBox;

namespace bw {

class Draft;
class Notice;

class BlockFields : public QWidget {
    Q_OBJECT
public:
    BlockFields(Draft& draft, Notice& notice, QWidget* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeTitle();
    void makeFormat();
    void makeVisits();
    void follow();
    void keepTitle();

    Draft& draft_;
    Notice& notice_;
    QLineEdit* title_;
    QComboBox* format_;
    QSpinBox* visits_;
};

} // namespace bw
