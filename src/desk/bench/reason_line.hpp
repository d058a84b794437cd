// SPDX-License-Identifier: GPL-3.0-or-later
// Asks for one line, such as why a finding may stay. Enter keeps the answer, Esc leaves.
#pragma once
#include <QWidget>

class QLabel;
class QLineEdit;

namespace bw {

class ReasonLine : public QWidget {
    Q_OBJECT
public:
    explicit ReasonLine(QWidget* parent); // hidden

    void ask(const QString& of);                              // why a finding may stay: "D1"
    void ask(const QString& question, const QString& answer); // the answer can be written over
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
