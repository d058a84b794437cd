// SPDX-License-Identifier: GPL-3.0-or-later
// Title, format and visits where they stand on the top line.
#include "desk/frame/notice.hpp"
#include "desk/frame/workspace.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>

namespace bw::test {

TEST_CASE("A title is typed in place: Enter keeps it, Escape takes it back") {
    FrameDesk d;
    d.openSmallGym();
    auto& title = d.part<QLineEdit>("block-title");
    title.setFocus();
    title.selectAll();
    d.type(title, QStringLiteral("Low tide"));
    d.press(Qt::Key_Return);
    CHECK(d.shown().title == "Low tide");
    d.type(title, QStringLiteral(" again"));
    d.press(Qt::Key_Escape);
    CHECK(title.text() == QStringLiteral("Low tide"));
    d.press(Qt::Key_Return);
    CHECK(d.shown().title == "Low tide");
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    CHECK(title.text() == QStringLiteral("Tide of 2026-10"));
}

TEST_CASE("A title that can't be stored stays in the field as it was typed") {
    FrameDesk d;
    MemoryFile& file = d.openSmallGym();
    auto& title = d.part<QLineEdit>("block-title");
    file.full = true;
    title.selectAll();
    d.type(title, QStringLiteral("Spring tide"));
    d.press(Qt::Key_Return);
    CHECK(d.notice() == QStringLiteral("The disk is full."));
    CHECK(title.text() == QStringLiteral("Spring tide"));
    CHECK(d.shown().title == "Tide of 2026-11");
    file.full = false;
    d.press(Qt::Key_Return);
    CHECK(d.shown().title == "Spring tide");
    CHECK(d.notice().isEmpty());
}

TEST_CASE("The format changes by key, and undo takes it back") {
    FrameDesk d;
    d.openSmallGym();
    auto& format = d.part<QComboBox>("block-format");
    format.setFocus();
    d.press(Qt::Key_Down);
    CHECK(d.shown().format == Format::HeavyThenLong);
    d.press(Qt::Key_Down);
    CHECK(d.shown().format == Format::Opposed);
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(format.currentIndex() == 1);
    d.press(Qt::Key_Home);
    CHECK_FALSE(d.shown().format.has_value());
}

TEST_CASE("Visits a week change by key and stay within a week's worth") {
    FrameDesk d;
    d.openSmallGym();
    auto& visits = d.part<QSpinBox>("block-visits");
    visits.setFocus();
    d.press(Qt::Key_Down);
    CHECK(d.shown().visitsPerWeek == 2);
    visits.selectAll();
    d.type(visits, QStringLiteral("4"));
    d.press(Qt::Key_Return);
    CHECK(d.shown().visitsPerWeek == 4);
    CHECK(visits.text().startsWith(QStringLiteral("4")));
}

} // namespace bw::test
