// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl-C in the terminal, a logout or a polite kill close the window as the coach would.
#pragma once
#include <QObject>

namespace bw {

class CleanExit : public QObject {
    Q_OBJECT
public:
    explicit CleanExit(QObject* parent); // once in a program
};

} // namespace bw
