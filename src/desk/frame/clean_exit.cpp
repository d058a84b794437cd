// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/clean_exit.hpp"

#include <QCoreApplication>
#include <QSocketNotifier>

#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>

namespace bw {

namespace {
int g_pipe[2] = {-1, -1};

// Only what a signal handler may do: a byte into a pipe, which the event loop hears.
void knock(int) {
    const int before = errno;
    const char byte = 0;
    [[maybe_unused]] const auto sent = ::write(g_pipe[1], &byte, 1);
    errno = before;
}
} // namespace

CleanExit::CleanExit(QObject* parent) : QObject(parent) {
    if (::pipe2(g_pipe, O_CLOEXEC | O_NONBLOCK) != 0) return; // then signals do what they always do
    auto* heard = new QSocketNotifier(g_pipe[0], QSocketNotifier::Read, this);
    connect(heard, &QSocketNotifier::activated, this, [] {
        char bytes[16];
        [[maybe_unused]] const auto got = ::read(g_pipe[0], bytes, sizeof bytes);
        QCoreApplication::quit();
    });
    struct sigaction action {};
    action.sa_handler = knock;
    action.sa_flags = static_cast<int>(SA_RESTART | SA_RESETHAND); // the second one ends it at once
    for (const int signal : {SIGINT, SIGTERM, SIGHUP}) sigaction(signal, &action, nullptr);
}

} // namespace bw
