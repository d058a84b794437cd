// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/terminal.hpp"

#include <fmt/core.h>

#include <cstdio>
#include <unistd.h>

namespace bw::cli {

namespace {
constexpr std::string_view kCleanLine = "\r\033[K";
}

void say(std::string_view text) { std::fwrite(text.data(), 1, text.size(), stdout); }

void complain(std::string_view line) { fmt::print(stderr, "{}\n", line); }

bool flushOut() { return std::fflush(stdout) == 0 && !std::ferror(stdout); }

Progress::Progress(std::string_view doing) : doing_(doing), shown_(::isatty(STDERR_FILENO) == 1) {
    at({});
}
Progress::~Progress() {
    if (!shown_) return;
    fmt::print(stderr, "{}", kCleanLine);
    std::fflush(stderr);
}
void Progress::at(std::string_view detail) {
    if (!shown_) return;
    fmt::print(stderr, "{}{} {}", kCleanLine, doing_, detail);
    std::fflush(stderr);
}

} // namespace bw::cli
