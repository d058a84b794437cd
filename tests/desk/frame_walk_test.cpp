// SPDX-License-Identifier: GPL-3.0-or-later
// A walk of every window: each control has a name, is reached by Tab, and shows that it has the
// keyboard.
#include "desk/bench/bench_page.hpp"
#include "desk/board/board_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/import_dialog.hpp"
#include "desk/ledger/member_dialog.hpp"
#include "desk/propose/propose_strip.hpp"
#include "frame_desk.hpp"
#include "ledger_gym.hpp"
#include "support/catch.hpp"

#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QTest>
#include <QTreeWidget>

#include <algorithm>
#include <set>

namespace bw::test {

namespace {
std::string describe(const QWidget* widget) {
    std::string chain;
    for (const QObject* o = widget; o; o = o->parent())
        chain += std::string(o->metaObject()->className()) + '(' + o->objectName().toStdString() +
                 ") < ";
    return chain;
}
bool inside(const QWidget* widget, const char* owner) {
    for (const QObject* o = widget->parentWidget(); o; o = o->parent())
        if (o->inherits(owner)) return true;
    return false;
}
// A part of a control that is one for the coach; a corner that Qt has made.
bool isPart(const QWidget* w) {
    return inside(w, "QAbstractSpinBox") || inside(w, "QComboBox") ||
           w->inherits("QTableCornerButton") || w->objectName().startsWith(QLatin1String("qt_"));
}
bool isStop(const QWidget* w) {
    return (w->focusPolicy() & Qt::TabFocus) == Qt::TabFocus && w->isEnabled() && w->isVisible() &&
           !w->focusProxy() && !isPart(w);
}
// Where a table keeps Tab for its cells, other keys lead out: F8, F9, Alt and a digit.
bool keepsTab(const QWidget* w) {
    const auto* view = qobject_cast<const QAbstractItemView*>(w);
    return view && (view->tabKeyNavigation() || view->inherits("bw::SheetView") ||
                    view->inherits("bw::ClassView"));
}
QWidget* stopAfter(QWidget* w) {
    QWidget* next = w->nextInFocusChain();
    while (next != w && !(isStop(next) && next->window() == w->window()))
        next = next->nextInFocusChain();
    return next;
}

QList<QWidget*> stopsOf(QWidget& root) {
    QList<QWidget*> stops;
    for (QWidget* w : root.findChildren<QWidget*>())
        if (isStop(w) && w->window() == root.window()) stops << w;
    return stops;
}

void checkNames(QWidget& root) {
    for (QWidget* w : stopsOf(root)) {
        INFO(describe(w));
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(w);
        REQUIRE(face);
        CHECK_FALSE(face->text(QAccessible::Name).isEmpty());
    }
    for (const QLabel* label : root.findChildren<QLabel*>())
        if (label->isVisible() && !QKeySequence::mnemonic(label->text()).isEmpty()) {
            INFO(describe(label));
            CHECK(label->buddy());
        }
}

void checkTabs(QWidget& root) {
    const QList<QWidget*> stops = stopsOf(root);
    REQUIRE_FALSE(stops.isEmpty());
    stops.first()->setFocus(Qt::TabFocusReason);
    std::set<QWidget*> reached;
    for (int i = 0; i < 3 * stops.size() + 10; ++i) {
        QWidget* now = QApplication::focusWidget();
        REQUIRE(now);
        reached.insert(now);
        if (keepsTab(now))
            stopAfter(now)->setFocus(Qt::TabFocusReason);
        else
            QTest::keyClick(now, Qt::Key_Tab);
    }
    for (QWidget* w : stops) {
        INFO(describe(w));
        CHECK((!isStop(w) || reached.contains(w))); // some go while others have the keyboard
    }
}

// The picture of a control and a little around it, with and without the keyboard.
QImage pictureOf(QWidget& w) {
    QWidget& window = *w.window();
    return window.grab(QRect(w.mapTo(&window, QPoint(-4, -4)), w.size() + QSize(8, 8))).toImage();
}
void checkFocusSeen(QWidget& root) {
    const QList<QWidget*> stops = stopsOf(root);
    for (QWidget* w : stops) {
        if (!isStop(w)) continue;
        INFO(describe(w));
        QWidget* other = stops.first() == w ? stops.last() : stops.first();
        if (other == w || !isStop(other)) continue;
        other->setFocus(Qt::TabFocusReason);
        const QImage without = pictureOf(*w);
        w->setFocus(Qt::TabFocusReason);
        if (QApplication::focusWidget() != w) continue;
        CHECK(pictureOf(*w) != without);
    }
}

void walk(QWidget& root) {
    checkNames(root);
    checkTabs(root);
    checkFocusSeen(root);
}

// The dialog that has come up over the window.
template <class D> D& dialog(FrameDesk& d) {
    d.settle();
    for (D* found : d.window.findChildren<D*>())
        if (found->isVisible()) return *found;
    throw std::runtime_error("no dialog");
}
} // namespace

TEST_CASE("Start page and every place: names, Tab and focus") {
    const auto theme = GENERATE(Theme::Light, Theme::Contrast);
    FrameDesk d;
    d.window.setTheme(theme);
    walk(d.window.startPage());
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(ledgerGym())));
    d.settle();
    for (int place = 1; place <= 7; ++place) {
        if (place > 1) // figures on the Floor
            REQUIRE(QTest::qWaitFor([&] { return d.work().floor().settled(); }, 60'000));
        INFO("place " << place);
        d.press(static_cast<Qt::Key>(Qt::Key_0 + place), Qt::AltModifier);
        walk(d.window);
    }
    for (const char* page : {"house-limits", "gym-and-kit"}) {
        INFO(page);
        d.window.actions().find(QLatin1String(page))->trigger();
        walk(d.window);
    }
    d.window.setTheme(Theme::System);
}

TEST_CASE("A gym without months, and a notice above the page: names, Tab and focus") {
    FrameDesk d;
    Gym empty;
    empty.settings.name = "Tide Mill";
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(empty)));
    d.work().notice().tell({"The disk is full.", {}});
    d.settle();
    walk(d.window);
}

TEST_CASE("Proposals in the sheet: names, Tab and focus") {
    FrameDesk d;
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(ledgerGym())));
    d.settle();
    d.press(Qt::Key_F7, Qt::ControlModifier);
    ProposeStrip& strip = d.work().bench().proposals();
    REQUIRE(QTest::qWaitFor([&] { return !strip.looking(); }, 60'000));
    REQUIRE(strip.isVisible());
    checkNames(strip);
    checkFocusSeen(strip);
}

TEST_CASE("Find a command and the sheet of keys: names, Tab and focus") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_F3);
    walk(d.part<QFrame>("commands"));
    d.press(Qt::Key_Escape);
    d.press(Qt::Key_F1, Qt::ShiftModifier);
    auto& sheet = dialog<QDialog>(d);
    checkNames(sheet);
    CHECK(sheet.findChild<QTreeWidget*>()->hasFocus());
}

TEST_CASE("The dialogs of the Ledger: names, Tab and focus") {
    FrameDesk d;
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(ledgerGym())));
    d.settle();
    MemberDialog member(d.gym().members[1], false, &d.window);
    member.open();
    d.settle();
    walk(member);
    member.close();
    ImportDialog import(d.work().gym(), QStringLiteral("table.csv"),
                        "date,member,exercise,load,reps\n2026-11-05,m-001,floor-press,40,5\n"
                        "2026-11-05,nobody,floor-press,40,5\n",
                        &d.window);
    import.open();
    d.settle();
    walk(import);
}

TEST_CASE("The board on the wall has a name, and Esc leaves it") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_F11);
    BoardView* board = nullptr;
    for (QWidget* w : QApplication::topLevelWidgets())
        if (auto* found = qobject_cast<BoardView*>(w); found && found->isVisible()) board = found;
    REQUIRE(board);
    CHECK_FALSE(board->accessibleName().isEmpty());
    QTest::keyClick(board, Qt::Key_Escape);
    d.settle();
    const QWidgetList tops = QApplication::topLevelWidgets();
    CHECK(std::none_of(tops.begin(), tops.end(), [](const QWidget* w) {
        return w->inherits("bw::BoardView") && w->isVisible();
    }));
}

} // namespace bw::test
