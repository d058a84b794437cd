// SPDX-License-Identifier: GPL-3.0-or-later
// Other processes and other surroundings.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <sys/types.h>

namespace bw::test {

// A child process that runs `work` and ends with exit code 0 if it returns true. Killed, if it
// still runs, when this goes. `say` and `hear` are lines between the two.
class Other {
public:
    explicit Other(const std::function<bool(Other&)>& work);
    ~Other();
    Other(const Other&) = delete;
    Other& operator=(const Other&) = delete;

    [[nodiscard]] pid_t pid() const { return pid_; }
    void say(const std::string& line) const;
    [[nodiscard]] std::string hear(); // waits; empty when the other one is gone
    bool endsWell();                  // waits
    void kill();                      // SIGKILL, and waits

private:
    int in_ = -1, out_ = -1;
    pid_t pid_ = -1;
};

// Runs as a user who may do less than root may, when we are root.
bool asNobody(const std::function<bool()>& work);

// Sets an environment variable, or takes it out with null; puts it back when it goes.
class Variable {
public:
    Variable(const char* name, const char* value);
    ~Variable();
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;

private:
    std::string name_;
    std::optional<std::string> before_;
};

} // namespace bw::test
