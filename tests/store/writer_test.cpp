// SPDX-License-Identifier: GPL-3.0-or-later
// One writes, others read.
#include "gyms.hpp"
#include "people.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <array>
#include <unistd.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
std::string host() {
    std::array<char, 256> name{};
    ::gethostname(name.data(), name.size() - 1);
    return name.data();
}
std::string words(pid_t pid) {
    return "Blockwright on " + host() + ", process " + std::to_string(pid);
}
std::vector<Change> named(const std::string& name) {
    GymSettings settings;
    settings.name = name;
    return {PutSettings{settings}};
}
std::string nameIn(GymFile& file) { return file.load().value().settings.name; }

// Another process that has the file open for writing, stores each line it hears as the gym's name
// and says "done", until it hears "close".
bool keepWriting(Other& us, const fs::path& path) {
    const auto file = GymFile::open(path);
    if (!file || !(*file)->writable()) return false;
    us.say("open");
    for (std::string line = us.hear(); line != "close"; line = us.hear()) {
        if (!(*file)->apply(named(line)).ok()) return false;
        us.say("done");
    }
    return true;
}
} // namespace

TEST_CASE("while another process writes, a gym file opens for reading and says who writes") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    Other other([&](Other& us) { return keepWriting(us, path); });
    REQUIRE(other.hear() == "open");

    const auto file = opened(path);
    CHECK(!file->writable());
    CHECK(file->writer() == words(other.pid()));
    CHECK(opened(path, GymFile::Access::Read)->writer() == words(other.pid()));

    SECTION("it sees what the other stores") {
        for (const std::string name : {"Low tide", "High tide"}) {
            other.say(name);
            REQUIRE(other.hear() == "done");
            CHECK(nameIn(*file) == name);
        }
    }
    SECTION("it takes no changes, and says whose turn it is") {
        const auto answer = file->apply(named("Mine"));
        REQUIRE(!answer.ok());
        CHECK(answer.why().english().find(words(other.pid()) + " writes to it") !=
              std::string::npos);
        CHECK(nameIn(*file).empty());
    }
    SECTION("it can be copied") {
        CHECK(file->copyTo(folder / "copy.bwgym").ok());
        CHECK(opened(folder / "copy.bwgym")->writable());
    }
    SECTION("once the other has closed it, it opens for writing") {
        other.say("close");
        REQUIRE(other.endsWell());
        const auto ours = opened(path);
        CHECK(ours->writable());
        CHECK(ours->writer().empty());
    }
    SECTION("the lock of a killed process is taken over") {
        other.kill();
        REQUIRE(fs::exists(folder / "a.bwgym.lock"));
        CHECK(opened(path)->writable());
    }
}

TEST_CASE("a second opener in the same process reads, too") {
    const TempFolder folder;
    const auto first = made(folder / "a.bwgym");
    const auto second = opened(folder / "a.bwgym");
    CHECK(!second->writable());
    CHECK(second->writer() == words(::getpid()));
}

TEST_CASE("a link to a gym file is the same gym file") {
    const TempFolder folder;
    const auto first = made(folder / "a.bwgym");
    fs::create_symlink(folder / "a.bwgym", folder / "link.bwgym");
    CHECK(opened(folder / "link.bwgym")->writer() == words(::getpid()));
}

TEST_CASE("the lock says host, process and program, and goes with the writer") {
    const TempFolder folder;
    auto file = made(folder / "a.bwgym");
    CHECK(readText(folder / "a.bwgym.lock") ==
          host() + "\n" + std::to_string(::getpid()) + "\nBlockwright\n");
    file.reset();
    CHECK(!fs::exists(folder / "a.bwgym.lock"));
}

TEST_CASE("a lock left behind") {
    const TempFolder folder;
    (void)made(folder / "a.bwgym");
    const auto lock = folder / "a.bwgym.lock";
    SECTION("by a dead process of this host is taken over") {
        Other other([](Other&) { return true; });
        const auto pid = std::to_string(other.pid());
        REQUIRE(other.endsWell());
        writeText(lock, host() + "\n" + pid + "\nBlockwright\n");
        CHECK(opened(folder / "a.bwgym")->writable());
    }
    SECTION("empty, by one killed as it began, is taken over") {
        writeText(lock, "");
        CHECK(opened(folder / "a.bwgym")->writable());
    }
    SECTION("by another host is respected, and stays") {
        const std::string text = "boathouse\n123\nBlockwright\n";
        writeText(lock, text);
        for (const auto access : {GymFile::Access::Write, GymFile::Access::Read}) {
            const auto file = opened(folder / "a.bwgym", access);
            CHECK(!file->writable());
            CHECK(file->writer() == "Blockwright on boathouse, process 123");
            const auto answer = file->apply(named("Mine"));
            REQUIRE(!answer.ok());
            CHECK(answer.why().english().find("delete that file") != std::string::npos);
        }
        CHECK(readText(lock) == text);
    }
}

TEST_CASE("of many that open a gym file at once exactly one writes") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    std::vector<std::unique_ptr<Other>> others;
    for (int i = 0; i < 8; ++i)
        others.push_back(std::make_unique<Other>([&](Other& us) {
            us.say("ready");
            (void)us.hear();
            const auto file = GymFile::open(path);
            us.say(!file ? file.why().english() : (*file)->writable() ? "writes" : "reads");
            (void)us.hear();
            return true;
        }));
    for (auto& other : others) REQUIRE(other->hear() == "ready");
    for (auto& other : others) other->say("go");
    int writers = 0, readers = 0;
    for (auto& other : others) {
        const auto answer = other->hear();
        CAPTURE(answer);
        CHECK((answer == "writes" || answer == "reads"));
        ++(answer == "writes" ? writers : readers);
    }
    CHECK(writers == 1);
    CHECK(readers == 7);
}

namespace {
// Another user who may look but not write: true when all goes as it should.
bool readsOnly(const fs::path& path, const std::string& name) {
    const auto file = GymFile::open(path);
    if (!file || (*file)->writable() || !(*file)->writer().empty()) return false;
    const auto answer = (*file)->apply(named("Mine"));
    if (answer || answer.why().english().find("allow writing") == std::string::npos) return false;
    return nameIn(**file) == name;
}
void allow(const fs::path& path, unsigned mode) {
    fs::permissions(path, static_cast<fs::perms>(mode));
}
} // namespace

TEST_CASE("a gym file that may not be written opens for reading") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    put(*made(path), named("Low tide"));
    SECTION("in a folder that may not be written") {
        allow(path, 0444);
        allow(folder.path(), 0555);
        CHECK(asNobody([&] { return readsOnly(path, "Low tide"); }));
    }
    SECTION("in a folder that may be written") {
        allow(path, 0444);
        allow(folder.path(), 0777);
        CHECK(asNobody([&] { return readsOnly(path, "Low tide"); }));
    }
    SECTION("and one that may not be read says so") {
        allow(path, 0000);
        allow(folder.path(), 0777);
        CHECK(asNobody([&] {
            const auto file = GymFile::open(path);
            return !file &&
                   file.why().english().find("may not be read by you") != std::string::npos;
        }));
    }
    allow(folder.path(), 0777);
}

TEST_CASE("no gym file is made in a folder that may not be written") {
    const TempFolder folder;
    allow(folder.path(), 0555);
    CHECK(asNobody([&] {
        const auto file = GymFile::create(folder / "a.bwgym");
        return !file && file.why().english().find("was not made") != std::string::npos;
    }));
    allow(folder.path(), 0777);
}
