// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_program.hpp"

#include "support/fixtures.hpp"

#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <spawn.h>
#include <stdexcept>
#include <sys/wait.h>
#include <thread>

extern char** environ;

namespace bw::test {

namespace {
class Process {
public:
    Process(const std::filesystem::path& folder, std::vector<std::string> arguments)
        : out_(folder / "standard output"), err_(folder / "standard error") {
        arguments.insert(arguments.begin(), BW_BINARY_DIR "/bin/bwright");
        std::vector<char*> argv;
        for (auto& a : arguments) argv.push_back(a.data());
        argv.push_back(nullptr);
        posix_spawn_file_actions_t files;
        posix_spawn_file_actions_init(&files);
        constexpr int kNew = O_WRONLY | O_CREAT | O_TRUNC;
        posix_spawn_file_actions_addopen(&files, 1, out_.c_str(), kNew, 0600);
        posix_spawn_file_actions_addopen(&files, 2, err_.c_str(), kNew, 0600);
        const int error = posix_spawn(&pid_, argv[0], &files, nullptr, argv.data(), environ);
        posix_spawn_file_actions_destroy(&files);
        if (error != 0) throw std::runtime_error("bwright can't be started; is it built?");
    }
    void signal(int number) const {
        if (pid_ > 0) ::kill(pid_, number);
    }
    Ran wait() const {
        int status = 0;
        if (::waitpid(pid_, &status, 0) != pid_) throw std::runtime_error("bwright is lost");
        const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
        return {code, readText(out_), readText(err_)};
    }

private:
    std::filesystem::path out_, err_;
    pid_t pid_ = 0;
};
} // namespace

Ran bwright(const std::filesystem::path& folder, const std::vector<std::string>& arguments) {
    return Process(folder, arguments).wait();
}

Ran interrupted(const std::filesystem::path& folder, const std::vector<std::string>& arguments,
                int milliseconds) {
    const Process process(folder, arguments);
    std::this_thread::sleep_for(std::chrono::milliseconds(milliseconds));
    process.signal(SIGINT);
    return process.wait();
}

std::string demoFile() { return BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"; }

const Bundle& demoBundle() {
    static const Bundle demo = [] {
        auto reading = readBundle(readText(demoFile()));
        if (!reading.bundle) throw std::runtime_error("the demo bundle has faults");
        return std::move(*reading.bundle);
    }();
    return demo;
}

std::string smallBundle() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.shelf.put(exercise("floor-press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("towel-row", Pattern::HorizontalPull));
    gym.put(block("2026-09",
                  {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                         {slot("floor-press", reps(5, 5)),
                                                          slot("towel-row", reps(8, 10))})})}));
    return writeBundle(bundleOf(gym));
}

} // namespace bw::test
