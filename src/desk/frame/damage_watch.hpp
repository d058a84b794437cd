// SPDX-License-Identifier: GPL-3.0-or-later
// A large gym file is looked through behind the window. Tells when that finds damage.
#pragma once
#include "blockwright/model/message.hpp"

#include <QTimer>

namespace bw {

class GymFile;

class DamageWatch : public QObject {
    Q_OBJECT
public:
    DamageWatch(const GymFile& file, QObject* parent); // the file must outlive it

Q_SIGNALS:
    void found(const bw::Message& what);

private:
    void look();

    const GymFile& file_;
    QTimer again_;
};

} // namespace bw
