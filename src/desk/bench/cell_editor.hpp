// SPDX-License-Identifier: GPL-3.0-or-later
// The line that opens in a cell of the sheet. Tells each keystroke; the delegate decides what it
// means.
#pragma once
#include <QLineEdit>

namespace bw {

class CellEditor : public QLineEdit {
    Q_OBJECT
public:
    explicit CellEditor(QWidget* parent);

    // Shown by its frame and to a screen reader, until the text changes again.
    void setTrouble(const QString& trouble);
    [[nodiscard]] bool inTrouble() const { return !trouble_.isEmpty(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString trouble_;
};

} // namespace bw
