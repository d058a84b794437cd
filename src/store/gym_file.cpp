// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/gym_file.hpp"

#include "store/opening.hpp"

#include <cstdlib>
#include <pwd.h>
#include <unistd.h>

namespace bw {

namespace fs = std::filesystem;

namespace {
fs::path variable(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}
fs::path homeFolder() {
    if (const auto home = variable("HOME"); !home.empty()) return home;
    const passwd* user = ::getpwuid(::getuid());
    return user ? user->pw_dir : "/";
}
// A relative path in XDG_DATA_HOME is to be ignored
// (https://specifications.freedesktop.org/basedir-spec/latest/).
fs::path dataFolder() {
    const auto data = variable("XDG_DATA_HOME");
    return (data.is_absolute() ? data : homeFolder() / ".local/share") / "blockwright";
}
} // namespace

Result<std::unique_ptr<GymFile>> GymFile::create(const fs::path& path) {
    return store::createGymFile(path, store::migrations());
}

Result<std::unique_ptr<GymFile>> GymFile::open(const fs::path& path, Access access) {
    return store::openGymFile(path, access, store::migrations());
}

fs::path defaultGymPath() {
    const auto home = variable("BLOCKWRIGHT_HOME");
    return (home.empty() ? dataFolder() : home) / "gym.bwgym";
}

} // namespace bw
