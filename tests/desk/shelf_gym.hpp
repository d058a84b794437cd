// SPDX-License-Identifier: GPL-3.0-or-later
// A Shelf of six, and three months that used some of it:
//   box-squat      squat; easier than goblet-squat; warm-up, skill 1; no kit; never used
//   goblet-squat   squat; kettlebell; knee 2; strength-heavy; September to November 2026, main lift
//   front-squat    squat; barbell + rack; knee 3; strength-heavy; September 2026; a swap of goblet
//   towel-row      horizontal pull; grip 3; strength-long; October 2026
//   overhead-press vertical push; barbell; overhead 3, grip 1; never used
//   old-press      horizontal push; retired; September 2026
#pragma once
#include "desk/frame/workspace.hpp"
#include "desk/shelf/entry_view.hpp"
#include "desk/shelf/family_view.hpp"
#include "desk/shelf/shelf_page.hpp"
#include "desk/shelf/shelf_table.hpp"
#include "desk/shelf/word_line.hpp"
#include "frame_desk.hpp"

#include <QApplication>
#include <QLabel>
#include <QTest>

namespace bw::test {

inline Exercise shelved(const char* id, const char* name, Pattern pattern, const char* role) {
    Exercise e = exercise(id, pattern);
    e.name = name;
    e.roles = {RoleId::parse(role).value()};
    return e;
}

inline Gym shelfGym() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    for (const auto& [id, name] :
         {std::pair{"kettlebell", "Kettlebell"}, {"barbell", "Barbell"}, {"rack", "Squat rack"}})
        gym.put(KitItem{kit(id), name, 4, Claim::Group, {}, {}, {}, {}});
    Exercise box = shelved("box-squat", "Box squat", Pattern::Squat, "warm-up");
    box.harder = {ex("goblet-squat")};
    Exercise goblet = shelved("goblet-squat", "Goblet squat", Pattern::Squat, "strength-heavy");
    goblet.needs = {{{kit("kettlebell"), 1, {}}}};
    goblet.easier = {ex("box-squat")};
    goblet.swaps = {ex("front-squat")};
    goblet.cues = {"Elbows inside the knees"};
    (void)goblet.demands.set(Demand::Knee, 2);
    Exercise front = shelved("front-squat", "Front squat", Pattern::Squat, "strength-heavy");
    front.needs = {{{kit("barbell"), 1, {}}, {kit("rack"), 1, {}}}};
    front.skill = 2;
    (void)front.demands.set(Demand::Knee, 3);
    Exercise row = shelved("towel-row", "Towel row", Pattern::HorizontalPull, "strength-long");
    (void)row.demands.set(Demand::Grip, 3);
    Exercise press =
        shelved("overhead-press", "Overhead press", Pattern::VerticalPush, "strength-heavy");
    press.needs = {{{kit("barbell"), 1, {}}}};
    (void)press.demands.set(Demand::Overhead, 3);
    (void)press.demands.set(Demand::Grip, 1);
    Exercise old = shelved("old-press", "Old press", Pattern::HorizontalPush, "strength-long");
    old.retired = true;
    for (const Exercise& e : {box, goblet, front, row, press, old}) gym.shelf.put(e);
    const std::pair<const char*, std::vector<const char*>> months[] = {
        {"2026-09", {"front-squat", "goblet-squat", "old-press"}},
        {"2026-10", {"goblet-squat", "towel-row"}},
        {"2026-11", {"goblet-squat"}}};
    for (const auto& [name, used] : months) {
        std::vector<Slot> slots;
        for (const char* id : used) slots.push_back(slot(id, reps(5, 5)));
        for (Slot& s : slots) s.main = s.exercise == ex("goblet-squat");
        gym.put(block(name, {section(SectionKind::Strength,
                                     {group(rounds(2, 2), secondsRange(60, 60), slots)})}));
    }
    return gym;
}

struct ShelfDesk : FrameDesk {
    explicit ShelfDesk(Gym gym = shelfGym()) {
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        window.take(OpenGym::over(std::move(owned)));
        settle();
        press(Qt::Key_4, Qt::AltModifier);
        page = qobject_cast<ShelfPage*>(work().page());
        if (!page) throw std::runtime_error("Alt+4 leads elsewhere");
        table = page->findChild<ShelfTable*>();
        entry = page->findChild<EntryView*>();
        family = page->findChild<FamilyView*>();
        filter = page->findChild<WordLine*>();
    }
    // To wherever the keyboard is.
    void keys(const QString& text) {
        for (const QChar c : text) {
            QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
            settle();
        }
    }
    void find(const QString& text) {
        press(Qt::Key_F, Qt::AltModifier);
        filter->selectAll();
        press(Qt::Key_Delete);
        keys(text);
    }
    // The names in the table, as they stand.
    [[nodiscard]] std::string names() const {
        QStringList out;
        for (int row = 0; row < table->model()->rowCount(); ++row)
            out << table->model()->index(row, ShelfLine::Name).data().toString();
        return out.join(u", ").toStdString();
    }
    [[nodiscard]] std::string here() const {
        return table->currentIndex()
            .siblingAtColumn(ShelfLine::Name)
            .data()
            .toString()
            .toStdString();
    }
    // What the line of the entry says, by what it is.
    [[nodiscard]] std::string line(const QString& label) const {
        for (int row = 0; row < entry->model()->rowCount(); ++row) {
            const QString said =
                entry->model()->index(row, 0).data(Qt::AccessibleTextRole).toString();
            if (said.startsWith(label + QStringLiteral(": ")))
                return said.mid(label.size() + 2).toStdString();
        }
        return "no such line";
    }
    // From the table into a line of the entry, by keys.
    void goToLine(const QString& label) {
        table->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Home);
        for (int i = 0; i < entry->model()->rowCount(); ++i) {
            if (entry->currentIndex().data(EntryModel::LabelRole).toString() == label) return;
            press(Qt::Key_Down);
        }
        throw std::runtime_error("no line " + label.toStdString());
    }
    [[nodiscard]] std::string words(const char* name) const {
        const auto* label = page->findChild<QLabel*>(QLatin1String(name));
        return label->isVisible() ? label->text().toStdString() : std::string();
    }
    const Exercise& at(const char* id) { return *gym().shelf.find(ex(id)); }

    MemoryFile* file = nullptr;
    ShelfPage* page = nullptr;
    ShelfTable* table = nullptr;
    EntryView* entry = nullptr;
    FamilyView* family = nullptr;
    WordLine* filter = nullptr;
};

} // namespace bw::test
