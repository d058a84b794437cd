// SPDX-License-Identifier: GPL-3.0-or-later
// The program as it is started: a process of its own, without a screen, in a home of its own.
#include "edit/gym_verbs.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QProcess>
#include <QTest>

#include <csignal>

namespace bw::test {

namespace {
constexpr int kLongest = 60'000; // milliseconds, for a slow machine under a sanitizer

struct Program {
    TempFolder home;
    QProcess process;

    void start(const QStringList& arguments, const char* platform = "offscreen") {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("BLOCKWRIGHT_HOME"),
                           QString::fromStdString(home.path().string()));
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QLatin1String(platform));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(BW_BINARY_DIR "/bin/blockwright"), arguments);
        REQUIRE(process.waitForStarted());
    }
    int ended() {
        REQUIRE(process.waitForFinished(kLongest));
        CHECK(process.exitStatus() == QProcess::NormalExit);
        return process.exitCode();
    }
    std::string said() { return process.readAllStandardOutput().toStdString(); }
    std::string complained() { return process.readAllStandardError().toStdString(); }
};
} // namespace

TEST_CASE("--demo makes its copy once; --bench-start says the milliseconds to the first paint") {
    Program p;
    for (int i = 0; i < 2; ++i) {
        p.start({QStringLiteral("--demo"), QStringLiteral("--bench-start")});
        REQUIRE(p.ended() == 0);
        CHECK(std::stod(p.said()) > 0);
    }
    const auto copy = GymFile::open(p.home / "demo.bwgym", GymFile::Access::Read);
    REQUIRE(copy.ok());
    CHECK((*copy)->load()->settings.name == "Saltmarsh Boathouse");
}

TEST_CASE("A polite kill closes the window, and the gym can be written at once") {
    Program p;
    { REQUIRE(createGym(p.home / "gym.bwgym").ok()); }
    p.start({});
    // Open as soon as the program holds the right to write.
    const auto held = [&] {
        const auto file = GymFile::open(p.home / "gym.bwgym", GymFile::Access::Read);
        return file.ok() && !(*file)->writer().empty();
    };
    REQUIRE(QTest::qWaitFor(held, kLongest));
    QTest::qWait(300); // on to its event loop
    const auto pid = static_cast<pid_t>(p.process.processId());
    INFO(p.complained());
    REQUIRE(pid > 0); // 0 would name this test's own process group
    ::kill(pid, SIGTERM);
    CHECK(p.ended() == 0);
    const auto next = GymFile::open(p.home / "gym.bwgym");
    REQUIRE(next.ok());
    CHECK((*next)->writable());
}

TEST_CASE("Help and version need no display") {
    Program p;
    for (const char* asked : {"--help", "--version"}) {
        p.start({QLatin1String(asked)}, "there-is-none");
        CHECK(p.ended() == 0);
        CHECK(p.said().find("lockwright") != std::string::npos);
    }
}

TEST_CASE("Help is given beside an option of Qt's own, too") {
    Program p;
    p.start({QStringLiteral("-platform"), QStringLiteral("offscreen"), QStringLiteral("--help")});
    CHECK(p.ended() == 0);
    CHECK(p.said().find("--demo") != std::string::npos);
}

TEST_CASE("What the command line does not allow ends with 2 and says why") {
    Program p;
    p.start({QStringLiteral("--theme"), QStringLiteral("plaid")});
    CHECK(p.ended() == 2);
    CHECK(p.complained().find("--theme plaid: it is system, light, dark or contrast.") !=
          std::string::npos);
    p.start({QStringLiteral("--version")});
    CHECK(p.ended() == 0);
    CHECK(p.said().substr(0, 12) == "Blockwright ");
}

} // namespace bw::test
