// SPDX-License-Identifier: GPL-3.0-or-later
// What bwright writes: answers to standard output, everything else to standard error.
#pragma once
#include <string>
#include <string_view>

namespace bw::cli {

void say(std::string_view text);      // to standard output, as it stands
void complain(std::string_view line); // a line to standard error
[[nodiscard]] bool flushOut();        // false: not all of it could be written

// One line on a terminal's standard error that says what is being done; gone when this goes. Where
// standard error is no terminal, nothing is written.
class Progress {
public:
    explicit Progress(std::string_view doing);
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    void at(std::string_view detail);

private:
    std::string doing_;
    bool shown_;
};

} // namespace bw::cli
