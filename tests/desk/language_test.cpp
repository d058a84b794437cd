// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window: chosen by word or menu, with numbers, months and Qt's own texts.
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/language.hpp"
#include "desk/frame/launch.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/gym/gym_table.hpp"
#include "desk/shelf/entry_words.hpp"
#include "edit/block_verbs.hpp"
#include "frame_desk.hpp"
#include "sheets/sheet_words.hpp"
#include "sheets/worded.hpp"
#include "support/catch.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <QMenuBar>
#include <QTest>

namespace bw::test {

namespace {
QString menuTitles(FrameDesk& d) {
    QStringList titles;
    for (const QAction* menu : d.window.menuBar()->actions()) titles << menu->text();
    return titles.join(QLatin1Char(' ')).remove(QLatin1Char('&'));
}
} // namespace

TEST_CASE("A language is called by a word, in the ini file and on the command line") {
    for (const Language l : {Language::System, Language::English, Language::German})
        CHECK(languageFrom(languageWord(l)) == l);
    CHECK_FALSE(languageFrom(QStringLiteral("fr")));
    const auto asked = [](const char* word) {
        return readLaunch({QStringLiteral("blockwright"), QStringLiteral("--language"),
                           QString::fromLatin1(word)});
    };
    CHECK(asked("de").value().language == Language::German);
    CHECK(asked("french").why().english() == "--language french: it is system, en or de.");
    FrameDesk::Home home;
    CHECK(Remembered::language() == Language::System);
    Remembered::setLanguage(Language::German);
    CHECK(Remembered::language() == Language::German);
}

TEST_CASE("In German the engine's sentences are German, with the words that fill them") {
    const Speaking german(Language::German);
    CHECK(say({"Set the tempo of %1 to %2", {"Floor press", "31X0"}}) ==
          QStringLiteral("Tempo von Floor press auf 31X0 setzen"));
    CHECK(say({"%1 of %2", {"patterns", "Squat"}}) == QStringLiteral("Muster von Squat"));
    CHECK(vocabularyWords("vertical-pull, my-own") == QStringLiteral("Zug vertikal, my-own"));
    CHECK(monthName(Month::parse("2026-03").value()) == QStringLiteral("März 2026"));
    CHECK(printedDate(Date::of(2026, 3, 7).value()) == QStringLiteral("7. März 2026"));
    CHECK(QLocale().toString(0.5) == QStringLiteral("0,5"));
}

TEST_CASE("The fields of an exercise are shown in German, and read in German and English") {
    const Speaking german(Language::German);
    const Gym gym = threeMonths();
    const auto there = [&](ExerciseField field, const char* text) {
        const QString shown = shownField(field, text);
        CHECK(typedField(gym, field, plain(text)) == text);
        CHECK(typedField(gym, field, shown.toUpper()) != shown.toUpper().toStdString());
        return shown.toStdString() + " = " + typedField(gym, field, shown);
    };
    CHECK(there(ExerciseField::Patterns, "vertical pull 60 %, squat 40 %") ==
          "Zug vertikal 60 %, Kniebeuge 40 % = vertical pull 60 %, squat 40 %");
    CHECK(there(ExerciseField::Muscles, "none") == "keine = none");
    CHECK(there(ExerciseField::Demands, "knee 2, grip 1") == "Knie 2, Griff 1 = knee 2, grip 1");
    CHECK(shownField(ExerciseField::Sides, "each (the dose is per side)") ==
          QStringLiteral("jede Seite (die Dosis gilt je Seite)"));
    CHECK(typedField(gym, ExerciseField::Sides,
                     QStringLiteral("jede Seite (die Dosis gilt je Seite)")) == "each");
    CHECK(typedField(gym, ExerciseField::Skill, QStringLiteral("2 (muss gelehrt werden)")) == "2");
    CHECK(shownField(ExerciseField::Name, "none") == QStringLiteral("none"));
}

TEST_CASE("What the engine says of a set is translated inside another sentence") {
    const Speaking german(Language::German);
    CHECK(say({"As last time: %1 on %2.", {"6 × 40 kg with 1.5 in reserve", "2026-09-03"}}) ==
          QStringLiteral("Wie beim letzten Mal: 6 × 40 kg mit 1.5 in Reserve am 2026-09-03."));
    CHECK(unitSaid("3 months") == QStringLiteral("3 Monate"));
    CHECK(unitSaid("0.6–1.4") == QStringLiteral("0.6–1.4"));
}

TEST_CASE("In English all is as the sources have it, and plurals are right") {
    const Speaking english(Language::English);
    CHECK(printedDate(Date::of(2026, 3, 7).value()) == QStringLiteral("7 March 2026"));
    const auto sets = [](int n) {
        return QCoreApplication::translate("bw::BundleActions", "%n exercise(s), ", nullptr, n);
    };
    CHECK(sets(1) == QStringLiteral("1 exercise, "));
    CHECK(sets(2) == QStringLiteral("2 exercises, "));
    CHECK(patternName(Pattern::VerticalPull) == QStringLiteral("vertical pull"));
    CHECK(formatName(Format::RoundTrip) == QStringLiteral("round-trip"));
}

TEST_CASE("A language chosen in the menu is spoken at once, remembered, and loses nothing") {
    const Speaking english(Language::English);
    FrameDesk d;
    d.openSmallGym();
    d.window.showMonth(Month::parse("2026-10").value());
    d.press(Qt::Key_3, Qt::AltModifier);
    const Spot spot{Month::parse("2026-10").value(), Place{0, 0, 0}};
    REQUIRE(setTempo(d.work().gym(), spot, Tempo::parse("31X0").value()));
    d.window.actions().find(QStringLiteral("language-de"))->trigger();
    d.settle();
    CHECK(menuTitles(d) == QStringLiteral("Studio Bearbeiten Monat Ansicht Hilfe"));
    CHECK(d.window.actions().find(QStringLiteral("language-de"))->isChecked());
    CHECK(Remembered::language() == Language::German);
    CHECK(d.work().page()->inherits("bw::StairPage"));
    CHECK(d.work().draft().month() == Month::parse("2026-10").value());
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(slotAt(*d.gym().block(Month::parse("2026-10").value()), spot.place)->tempo);
    d.window.showStart();
    d.window.actions().find(QStringLiteral("language-en"))->trigger();
    d.settle();
    CHECK(menuTitles(d) == QStringLiteral("Gym View Help"));
    CHECK(d.window.workspace());
}

TEST_CASE("What is being typed when the language changes is stored, wherever it is typed") {
    const Speaking english(Language::English);
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_1, Qt::AltModifier);
    const Spot spot{*d.work().draft().month(), Place{0, 0, 0}};
    auto* sheet = d.work().page()->findChild<SheetView*>();
    REQUIRE(sheet);
    const auto before = slotAt(*d.gym().block(spot.month), spot.place)->dose;
    sheet->setFocus();
    sheet->setCurrentIndex(
        sheet->model()->index(sheet->currentIndex().row(), static_cast<int>(SheetColumn::Dose)));
    QTest::keyClicks(sheet, QStringLiteral("7"));
    REQUIRE(sheet->findChild<CellEditor*>());
    d.window.setLanguage(Language::German); // by mouse, so that the cell stays open
    d.settle();
    CHECK(slotAt(*d.gym().block(spot.month), spot.place)->dose == reps(7, 7));
    CHECK(before != reps(7, 7));
    d.press(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    auto* lines = d.work().page()->findChild<GymTable*>();
    REQUIRE(lines);
    lines->setFocus();
    QTest::keyClick(lines, 'E');
    auto* name = lines->findChild<CellEditor*>();
    REQUIRE(name);
    QTest::keyClicks(name, QStringLiteral("bb"));
    d.window.setLanguage(Language::English);
    d.settle();
    CHECK(d.gym().settings.name == "Ebb");
}

} // namespace bw::test
