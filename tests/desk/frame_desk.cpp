// SPDX-License-Identifier: GPL-3.0-or-later
#include "frame_desk.hpp"

#include "desk/frame/notice.hpp"
#include "desk/frame/workspace.hpp"

#include <QApplication>
#include <QTest>

namespace bw::test {

Coach::Coach() : before_(prompts()) {
    prompts().tell = [this](QWidget*, const QString& title, const QString& text) {
        asked << title << text;
    };
    prompts().choose = [this](QWidget*, const QString& title, const QString& text,
                              const QStringList& buttons) {
        asked << title << text;
        lastButtons = buttons;
        return button;
    };
    prompts().openFile = [this](QWidget*, const QString& title, const QString&) {
        asked << title;
        return open;
    };
    prompts().saveFile = [this](QWidget*, const QString& title, const QString&, const QString&) {
        asked << title;
        return save;
    };
}
Coach::~Coach() { prompts() = before_; }

FrameDesk::Home::Home() { qputenv("BLOCKWRIGHT_HOME", folder.path().string().c_str()); }
FrameDesk::Home::~Home() { qunsetenv("BLOCKWRIGHT_HOME"); }

FrameDesk::FrameDesk() {
    window.resize(1280, 720);
    window.show();
    window.activateWindow();
    (void)QTest::qWaitForWindowActive(&window);
}

Gym threeMonths() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.shelf.put(exercise("floor-press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("towel-row", Pattern::HorizontalPull));
    for (const char* m : {"2026-09", "2026-10", "2026-11"}) {
        Block b =
            block(m, {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                            {slot("floor-press", reps(5, 5)),
                                                             slot("towel-row", reps(8, 10))})})});
        b.title = std::string("Tide of ") + m;
        gym.put(std::move(b));
    }
    return gym;
}

MemoryFile& FrameDesk::openSmallGym() {
    auto file = std::make_unique<MemoryFile>(threeMonths());
    MemoryFile& kept = *file;
    window.take(OpenGym::over(std::move(file)));
    settle();
    return kept;
}

Workspace& FrameDesk::work() {
    if (!window.workspace()) throw std::runtime_error("no gym is open");
    return *window.workspace();
}
const Gym& FrameDesk::gym() { return work().gym().gym(); }
const Block& FrameDesk::shown() {
    if (!work().draft().block()) throw std::runtime_error("no month is on show");
    return *work().draft().block();
}

void FrameDesk::settle() {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
}

void FrameDesk::press(Qt::Key key, Qt::KeyboardModifiers with, QWidget* on) {
    QWidget* popup = QApplication::activePopupWidget();
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(on ? on : popup ? popup : focus ? focus : &window, key, with);
    settle();
}

void FrameDesk::type(QWidget& into, const QString& text) {
    into.setFocus();
    QTest::keyClicks(&into, text);
    settle();
}

QString FrameDesk::notice() { return work().notice().text(); }

} // namespace bw::test
