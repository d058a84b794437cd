// SPDX-License-Identifier: GPL-3.0-or-later
#include "people.hpp"

#include <array>
#include <csignal>
#include <cstdlib>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace bw::test {

namespace {
constexpr uid_t kNobody = 65'534; // Debian policy 9.2.2: nobody

void set(const std::string& name, const char* value) {
    if (value)
        ::setenv(name.c_str(), value, 1);
    else
        ::unsetenv(name.c_str());
}
} // namespace

// Either side ignores SIGPIPE: a line to one who is gone is lost.
Other::Other(const std::function<bool(Other&)>& work) {
    std::array<int, 2> down{}, up{};
    std::signal(SIGPIPE, SIG_IGN);
    if (::pipe(down.data()) != 0 || ::pipe(up.data()) != 0) throw std::runtime_error("pipe");
    pid_ = ::fork();
    if (pid_ < 0) throw std::runtime_error("fork");
    const bool child = pid_ == 0;
    in_ = child ? down[0] : up[0];
    out_ = child ? up[1] : down[1];
    ::close(child ? down[1] : down[0]);
    ::close(child ? up[0] : up[1]);
    if (!child) return;
    bool good = false;
    try {
        good = work(*this);
    } catch (...) { // a failed REQUIRE, too: the parent reports it
    }
    ::_exit(good ? 0 : 1);
}

Other::~Other() {
    if (pid_ > 0) kill();
    ::close(in_);
    ::close(out_);
}

void Other::say(const std::string& line) const {
    const std::string text = line + "\n";
    (void)!::write(out_, text.data(), text.size());
}

std::string Other::hear() {
    std::string line;
    char c = 0;
    while (::read(in_, &c, 1) == 1) {
        if (c == '\n') return line;
        line += c;
    }
    return {};
}

bool Other::endsWell() {
    int status = 0;
    const bool waited = ::waitpid(pid_, &status, 0) == pid_;
    pid_ = -1;
    return waited && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

void Other::kill() {
    if (pid_ <= 0) throw std::logic_error("this one has ended already"); // -1 would mean everyone
    ::kill(pid_, SIGKILL);
    ::waitpid(pid_, nullptr, 0);
    pid_ = -1;
}

bool asNobody(const std::function<bool()>& work) {
    Other other([&](Other&) {
        if (::getuid() == 0 && (::setgid(kNobody) != 0 || ::setuid(kNobody) != 0)) return false;
        return work();
    });
    return other.endsWell();
}

Variable::Variable(const char* name, const char* value) : name_(name) {
    if (const char* before = std::getenv(name)) before_ = before;
    set(name_, value);
}
Variable::~Variable() { set(name_, before_ ? before_->c_str() : nullptr); }

} // namespace bw::test
