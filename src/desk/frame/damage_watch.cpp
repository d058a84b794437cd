// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/damage_watch.hpp"

#include "store/late_check.hpp"

namespace bw {

DamageWatch::DamageWatch(const GymFile& file, QObject* parent) : QObject(parent), file_(file) {
    constexpr std::chrono::milliseconds kEvery{200};
    again_.setInterval(kEvery);
    connect(&again_, &QTimer::timeout, this, &DamageWatch::look);
    if (const auto sound = store::lookedThrough(file_); !sound || !*sound) again_.start();
}

void DamageWatch::look() {
    const auto sound = store::lookedThrough(file_);
    if (!sound) return;
    again_.stop();
    if (!*sound) Q_EMIT found(sound->why());
}

} // namespace bw
