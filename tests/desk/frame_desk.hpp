// SPDX-License-Identifier: GPL-3.0-or-later
// The real window over a home of its own, driven by keys; questions are answered by the test.
#pragma once
#include "desk/frame/language.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/prompts.hpp"
#include "edit/memory_file.hpp"
#include "support/fixtures.hpp"

#include <QStringList>

namespace bw::test {

// What the coach answers, and what was asked. The real prompts come back with its end.
class Coach {
public:
    Coach();
    ~Coach();
    Coach(const Coach&) = delete;
    Coach& operator=(const Coach&) = delete;

    int button = -1;                   // of choose(); -1: closes it
    std::optional<QString> open, save; // files; none: closes it
    QStringList asked;                 // titles and texts
    QStringList lastButtons;

private:
    Prompts before_;
};

// English again at the end.
struct Speaking {
    explicit Speaking(Language language) { speak(language); }
    ~Speaking() { speak(Language::System); } // of the tests: C.UTF-8
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
};

class FrameDesk {
public:
    FrameDesk(); // nothing open

    // September to November 2026 in memory; the file can be told to be full.
    MemoryFile& openSmallGym();
    [[nodiscard]] Workspace& work();
    [[nodiscard]] const Gym& gym();
    [[nodiscard]] const Block& shown(); // the block on show
    template <class W> W& part(const char* name) {
        W* found = window.findChild<W*>(QLatin1String(name));
        if (!found) throw std::runtime_error(std::string("no ") + name);
        return *found;
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier, QWidget* on = nullptr);
    void type(QWidget& into, const QString& text);
    void settle(); // what is still on its way
    [[nodiscard]] QString notice();

    struct Home { // set before the window looks for what it remembers
        Home();
        ~Home();
        TempFolder folder;
    };
    Home home;
    Coach coach;
    MainWindow window;
};

[[nodiscard]] Gym threeMonths();

} // namespace bw::test
