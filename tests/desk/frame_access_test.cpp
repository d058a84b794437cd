// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing by mouse alone, and everything has a name that can be read out.
#include "desk/backups/backups_dialog.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/frame_style.hpp"
#include "desk/frame/key_sheet.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/work_line.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/handbook/handbook.hpp"
#include "desk/handbook/handbook_window.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <QTest>
#include <QWindow>

#include <cmath>
#include <set>

namespace bw::test {

namespace {
QString nameOf(QWidget* widget) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
    return face ? face->text(QAccessible::Name) : QString();
}
std::string describe(const QWidget* widget) {
    std::string chain;
    for (const QObject* o = widget; o; o = o->parent())
        chain += std::string(o->metaObject()->className()) + " < ";
    return chain;
}
bool inside(const QWidget* widget, const char* owner) {
    for (const QObject* o = widget; o; o = o->parent())
        if (o->inherits(owner)) return true;
    return false;
}
void checkNames(QWidget& root) {
    int seen = 0;
    for (QWidget* w : root.findChildren<QWidget*>()) {
        const bool takesKeys = w->focusPolicy() & Qt::TabFocus;
        if (!takesKeys || !w->isVisibleTo(&root) || inside(w->parentWidget(), "QAbstractSpinBox") ||
            inside(w->parentWidget(), "QComboBox"))
            continue;
        INFO(describe(w));
        CHECK_FALSE(nameOf(w).isEmpty());
        ++seen;
    }
    CHECK(seen > 3);
}
// WCAG 2.1, definitions of relative luminance and contrast ratio.
double luminance(const QColor& c) {
    const auto part = [](double v) {
        return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(c.redF()) + 0.7152 * part(c.greenF()) + 0.0722 * part(c.blueF());
}
double contrast(const QColor& a, const QColor& b) {
    const double x = luminance(a), y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}
} // namespace

TEST_CASE(
    "Every control that takes keys has an accessible name, in each place and on the start page") {
    FrameDesk d;
    checkNames(d.window.startPage());
    d.openSmallGym();
    for (const Qt::Key place :
         {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6, Qt::Key_7}) {
        d.press(place, Qt::AltModifier);
        checkNames(d.window);
    }
    d.press(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    checkNames(d.window);
    checkNames(openHandbook(&d.window, QStringLiteral("guide.md#the-bench")));
}

TEST_CASE("The screen of backups has names for its controls, and is gone through by Tab") {
    FrameDesk d;
    d.window.openDemo();
    const auto path = d.work().gym().file().path();
    REQUIRE(backUp(path, BackupReason::Asked, wallTime()).ok());
    d.window.actions().find(QStringLiteral("backups"))->trigger();
    auto& screen = *d.window.findChild<BackupsDialog*>();
    REQUIRE(QTest::qWaitFor([&] { return screen.look().has_value(); }, 30'000));
    checkNames(screen);
    (void)QTest::qWaitForWindowActive(&screen);
    std::set<QWidget*> reached;
    for (int i = 0; i < 12 && QApplication::focusWidget(); ++i) {
        reached.insert(QApplication::focusWidget());
        d.press(Qt::Key_Tab);
    }
    for (const char* name : {"backup-list", "restore", "back-up", "close"}) {
        INFO(name);
        CHECK(reached.contains(&d.part<QWidget>(name)));
    }
}

TEST_CASE("Tab goes through everything on the top line and comes back") {
    FrameDesk d;
    d.openSmallGym();
    std::set<QWidget*> reached;
    d.part<QWidget>("block-title").setFocus();
    for (int i = 0; i < 60; ++i) {
        QWidget* now = QApplication::focusWidget();
        REQUIRE(now);
        reached.insert(now);
        // A sheet of paper keeps Tab for itself; F8 and the places lead out of it.
        if (inside(now, "bw::BenchPage")) break;
        d.press(Qt::Key_Tab);
    }
    for (const char* name : {"block-title", "block-format", "block-visits"})
        CHECK(reached.contains(&d.part<QWidget>(name)));
    CHECK(std::any_of(reached.begin(), reached.end(),
                      [](QWidget* w) { return w->inherits("bw::FindingCounts"); }));
}

TEST_CASE("Places answer to Alt and a digit, findings to F8, print leads to the sheets first") {
    FrameDesk d;
    d.openSmallGym();
    QWidget* bench = d.work().page();
    d.press(Qt::Key_P, Qt::ControlModifier);
    CHECK(d.work().page() != bench);
    CHECK(d.work().page()->inherits("bw::SheetsPage"));
    d.press(Qt::Key_F8);
    CHECK(d.work().page() == bench);
    d.press(Qt::Key_7, Qt::AltModifier);
    CHECK(d.work().page()->inherits("bw::SheetsPage"));
    d.press(Qt::Key_1, Qt::AltModifier);
    CHECK(d.work().page() == bench);
}

TEST_CASE("No key is given twice, and every key is on the sheet of keys") {
    FrameDesk d;
    d.openSmallGym();
    std::set<QString> keys;
    QString sheet;
    for (const KeyLine& line : keyLines(d.window.actions())) sheet += line.text + line.keys + u'\n';
    for (const auto& entry : d.window.actions().all())
        for (const QKeySequence& key : entry.action->shortcuts()) {
            INFO(key.toString().toStdString());
            CHECK(keys.insert(key.toString()).second);
            if (entry.action->isVisible())
                CHECK(sheet.contains(key.toString(QKeySequence::NativeText)));
        }
    CHECK(keys.size() > 20);
}

TEST_CASE("No Alt key is given twice among what can be seen at once, in any language") {
    const Speaking spoken(GENERATE(Language::English, Language::German));
    FrameDesk d;
    d.openSmallGym();
    for (const Qt::Key place :
         {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6, Qt::Key_7}) {
        d.press(place, Qt::AltModifier);
        std::set<QString> keys;
        const auto take = [&](const QString& text) {
            const QKeySequence key = QKeySequence::mnemonic(text);
            INFO(text.toStdString());
            CHECK((key.isEmpty() || keys.insert(key.toString()).second));
        };
        for (const QAction* menu : d.window.menuBar()->actions()) take(menu->text());
        for (const QWidget* w : d.work().findChildren<QWidget*>()) {
            if (!w->isVisible()) continue;
            if (const auto* label = qobject_cast<const QLabel*>(w); label && label->buddy())
                take(label->text());
            if (const auto* button = qobject_cast<const QAbstractButton*>(w)) take(button->text());
        }
        CHECK(keys.size() >= 6);
    }
}

TEST_CASE("Everything that can be done stands in a menu") {
    FrameDesk d;
    d.openSmallGym();
    std::set<const QAction*> inMenus;
    for (QMenu* menu : d.window.menuBar()->findChildren<QMenu*>())
        for (const QAction* a : menu->actions()) inMenus.insert(a);
    for (const auto& entry : d.window.actions().all()) {
        INFO(entry.action->objectName().toStdString());
        CHECK(inMenus.contains(entry.action));
    }
}

// WCAG 2.1, 1.4.3: 4.5 to 1; 1.4.6, which high contrast is for: 7 to 1.
TEST_CASE("Text keeps a contrast of 4.5 to 1, and of 7 to 1 in high contrast") {
    for (const bool high : {false, true})
        for (const bool dark : {false, true}) {
            const Inks& k = inksOf(dark, high);
            const double least = high ? 7 : 4.5;
            CHECK(k.dark == dark);
            CHECK(k.highContrast == high);
            for (const QColor& ground : {k.desk, k.paper, k.wash})
                CHECK(contrast(k.ink, ground) >= least);
            for (const QColor& ground : {k.desk, k.paper}) {
                CHECK(contrast(k.quiet, ground) >= least);
                CHECK(contrast(k.accent, ground) >= least);
                for (const QColor& level : k.level) CHECK(contrast(level, ground) >= least);
            }
            CHECK(contrast(k.onAccent, k.accent) >= least);
            CHECK(contrast(k.onColumn, k.column) >= least);
            CHECK(contrast(k.onColumn, k.columnNow) >= least);
            for (std::size_t i = 0; i < k.section.size(); ++i)
                CHECK(contrast(k.onSection[i], k.section[i]) >= least);
        }
}

TEST_CASE("In high contrast lines are black or white, and the chosen row is not paper") {
    // WCAG 2.1, 1.4.11: what is needed to understand a picture keeps 3 to 1.
    for (const bool dark : {false, true}) {
        const Inks& k = inksOf(dark, true);
        for (const QColor& ground : {k.desk, k.paper, k.wash}) {
            CHECK(contrast(k.line, ground) >= 3);
            CHECK(contrast(k.accent, ground) >= 3);
            CHECK(contrast(k.wall, ground) >= 3);
            for (const QColor& level : k.level) CHECK(contrast(level, ground) >= 7);
        }
        CHECK(k.wash != k.paper);
        CHECK(k.stroke >= 2);
        CHECK(frameStyle(k) != frameStyle(inksOf(dark)));
    }
}

namespace {
QPalette desktopOf(QColor window, QColor text) {
    QPalette p(window);
    for (const auto role : {QPalette::Window, QPalette::Base, QPalette::Button})
        p.setColor(role, window);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(role, text);
    return p;
}
struct OtherDesktop {
    OtherDesktop() : before(desktopPalette()) {
        desktopPalette() = [this] { return palette; };
    }
    ~OtherDesktop() {
        desktopPalette() = before;
        applyTheme(*qApp, Theme::System);
    }
    std::function<QPalette()> before;
    QPalette palette = desktopOf(0xEFEFEF, Qt::black);
};
} // namespace

TEST_CASE("The colours of the system follow the desktop while the window is open") {
    OtherDesktop desktop;
    FrameDesk d;
    d.openSmallGym();
    d.window.setTheme(Theme::System);
    const auto turn = [&](QColor window, QColor text) {
        desktop.palette = desktopOf(window, text);
        QEvent changed(QEvent::ThemeChange);
        QApplication::sendEvent(d.window.windowHandle(), &changed); // as the platform does
        d.settle();
    };
    CHECK(&inks() == &inksOf(false));
    turn(0x2A2A2A, 0xF0F0F0);
    CHECK(&inks() == &inksOf(true));
    for (QWidget* w : d.work().findChildren<QWidget*>())
        if (w->inherits("bw::Headline"))
            CHECK(w->styleSheet().toStdString() == frameStyle(inksOf(true)).toStdString());
    turn(Qt::black, Qt::white);
    CHECK(&inks() == &inksOf(true, true));
    turn(Qt::white, Qt::black);
    CHECK(&inks() == &inksOf(false, true));
    turn(0xEFEFEF, Qt::black);
    CHECK(&inks() == &inksOf(false));
    d.window.setTheme(Theme::Light); // then the desktop has no say
    turn(Qt::black, Qt::white);
    CHECK(&inks() == &inksOf(false));
    d.window.actions().find(QStringLiteral("theme-contrast"))->trigger();
    CHECK(&inks() == &inksOf(true, true));
    MainWindow next;
    CHECK(next.actions().find(QStringLiteral("theme-contrast"))->isChecked());
}

TEST_CASE("The theme changes while the window is open, and is remembered") {
    FrameDesk d;
    d.openSmallGym();
    d.window.actions().find(QStringLiteral("theme-dark"))->trigger();
    d.settle();
    CHECK(inks().paper == inksOf(true).paper);
    for (QWidget* w : d.work().findChildren<QWidget*>())
        if (w->inherits("bw::Headline"))
            CHECK(w->styleSheet().toStdString() == frameStyle(inksOf(true)).toStdString());
    d.window.actions().find(QStringLiteral("theme-light"))->trigger();
    d.settle();
    CHECK(inks().paper == inksOf(false).paper);
    MainWindow next;
    CHECK(next.actions().find(QStringLiteral("theme-light"))->isChecked());
    applyTheme(*qApp, Theme::System);
}

TEST_CASE("The window fits a small screen, with the top line in two rows if need be") {
    FrameDesk d;
    d.openSmallGym();
    d.window.resize(640, 480);
    d.settle();
    CHECK(d.window.width() <= 960); // 1920 at a scale of two
    CHECK(d.window.height() <= 540);
    for (QWidget* w : d.work().findChildren<QWidget*>()) {
        if (!w->inherits("bw::Headline")) continue;
        for (QWidget* child : w->findChildren<QWidget*>())
            if (child->isVisible() && child->parentWidget() == w)
                CHECK(w->rect().contains(child->geometry()));
    }
}

TEST_CASE("Long work shows how far it is, takes no other input, and stops when asked") {
    QWidget window;
    WorkLine line(&window);
    QPushButton other(&window);
    int pressed = 0;
    QObject::connect(&other, &QPushButton::clicked, [&] { ++pressed; });
    window.show();
    int done = 0;
    {
        WorkLine::Run run(line, QStringLiteral("Counting"), 1000);
        CHECK(line.isVisibleTo(&window));
        QTest::mouseClick(&other, Qt::LeftButton);
        for (; done < 1000; ++done) {
            QTest::qSleep(1);
            if (done == 200) QTest::mouseClick(line.findChild<QPushButton*>(), Qt::LeftButton);
            if (!run.at(done)) break;
        }
    }
    CHECK(done >= 200);
    CHECK(done < 1000);
    CHECK(pressed == 0);
    CHECK_FALSE(line.isVisibleTo(&window));
    QTest::mouseClick(&other, Qt::LeftButton);
    CHECK(pressed == 1);
}

} // namespace bw::test
