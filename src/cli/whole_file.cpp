// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/whole_file.hpp"

#include "cli/ending.hpp"
#include "cli/interrupt.hpp"

#include <fmt/core.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <unistd.h>

namespace bw::cli {

namespace {
using File = std::unique_ptr<std::FILE, int (*)(std::FILE*)>;

[[noreturn]] void fail(const std::string& file, std::string_view what, int error) {
    Interrupt::check(); // it is what broke off a slow read
    throw Ending(Exit::BadFile,
                 fmt::format("{} can't be {}: {}.", file, what, std::strerror(error)));
}

bool wrote(std::FILE* out, std::string_view text) {
    return std::fwrite(text.data(), 1, text.size(), out) == text.size() && std::fflush(out) == 0 &&
           ::fsync(::fileno(out)) == 0;
}
} // namespace

std::string readWholeFile(const std::string& file, std::size_t most) {
    const File in(std::fopen(file.c_str(), "rb"), &std::fclose);
    if (!in) fail(file, "read", errno);
    std::string text, piece(1U << 16U, '\0');
    std::size_t got = 0;
    while (text.size() <= most && (got = std::fread(piece.data(), 1, piece.size(), in.get())) > 0)
        text.append(piece, 0, got);
    if (std::ferror(in.get())) fail(file, "read", errno);
    return text;
}

void writeWholeFile(const std::string& file, std::string_view text) {
    const std::string trial = fmt::format("{}.{}.part", file, ::getpid());
    File out(std::fopen(trial.c_str(), "wbx"), &std::fclose);
    if (!out) fail(file, "written", errno);
    const bool whole = wrote(out.get(), text);
    const int error = errno;
    out.reset();
    if (!whole || std::rename(trial.c_str(), file.c_str()) != 0) {
        const int why = whole ? errno : error;
        ::unlink(trial.c_str());
        fail(file, "written", why);
    }
}

} // namespace bw::cli
