// SPDX-License-Identifier: GPL-3.0-or-later
// Asks why a finding may stay: one line. Enter keeps the reason, Esc leaves; it goes when the
// finding does.
#pragma once
#include <QWidget>

class QLabel;
class QLineEdit;

namespace bw {

class ReasonLine : public QWidget {
    Q_OBJECT
public:
    explicit ReasonLine(QWidget* parent); // hidden

    void ask(const QString& of); // "D1"
    void leave();
    void tell(const QString& trouble); // and stays open

Q_SIGNALS:
    void given(const QString& reason); // may be blank: whoever keeps it says so
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLabel *question_, *trouble_;
    QLineEdit* answer_;
};

} // namespace bw
