// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/first_paint.hpp"

#include <QEvent>
#include <QFile>
#include <QTimer>
#include <QWidget>

#include <ctime>
#include <unistd.h>

namespace bw {

namespace {
class Watch : public QObject {
public:
    Watch(QWidget* window, std::function<void()> then) : QObject(window), then_(std::move(then)) {
        window->installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::Paint) return false;
        watched->removeEventFilter(this);
        QTimer::singleShot(0, this, [this] { // after its children, and once it was handed on
            then_();
            deleteLater();
        });
        return false;
    }

private:
    std::function<void()> then_;
};
} // namespace

double millisSinceStart() {
    constexpr int kStartTime = 22; // field of proc_pid_stat(5), in clock ticks since boot
    QFile stat(QStringLiteral("/proc/self/stat"));
    if (!stat.open(QIODevice::ReadOnly)) return 0;
    const QByteArray line = stat.readAll();
    const auto fields = line.mid(line.lastIndexOf(')') + 2).split(' '); // from field 3 on
    if (fields.size() < kStartTime - 2) return 0;
    const double started =
        fields[kStartTime - 3].toDouble() * 1000 / static_cast<double>(::sysconf(_SC_CLK_TCK));
    timespec now{};
    ::clock_gettime(CLOCK_BOOTTIME, &now);
    return static_cast<double>(now.tv_sec) * 1000 + static_cast<double>(now.tv_nsec) / 1e6 -
           started;
}

void afterFirstPaint(QWidget* window, std::function<void()> then) {
    new Watch(window, std::move(then));
}

} // namespace bw
