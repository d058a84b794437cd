// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

class QWidget;

namespace bw {

class Actions;
class Notice;
class OpenGym;
class WorkLine;

// Bringing a bundle into the gym, and writing the gym as one.
class BundleActions : public QObject {
    Q_OBJECT
public:
    BundleActions(OpenGym& gym, Actions& actions, Notice& notice, WorkLine& work, QWidget* window);

    void bringIn();
    void write();

private:
    OpenGym& gym_;
    Notice& notice_;
    WorkLine& work_;
    QWidget* window_;
};

} // namespace bw
