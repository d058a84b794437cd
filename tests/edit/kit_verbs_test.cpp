// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/gym_verbs.hpp"
#include "edit/kit_verbs.hpp"
#include "memory_file.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

namespace bw::test {

namespace {
struct KitGym {
    KitGym() {
        auto owned = std::make_unique<MemoryFile>(withKit());
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
    }
    static Gym withKit() {
        Gym gym;
        layOver(gym, shippedShelf());
        return gym;
    }
    const KitItem& at(const char* id) { return *open->gym().findKit(kit(id)); }
    template <class Do> void doUndoRedo(Do does) {
        const Gym before = open->gym();
        REQUIRE(does(*open));
        const Gym after = open->gym();
        CHECK_FALSE(sameMonths(before, after));
        CHECK(sameMonths(file->stored, after));
        REQUIRE(*open->undo());
        CHECK(sameMonths(before, open->gym()));
        CHECK(sameMonths(before, file->stored));
        REQUIRE(*open->redo());
        CHECK(sameMonths(after, open->gym()));
        REQUIRE(*open->undo());
    }
    MemoryFile* file = nullptr;
    std::unique_ptr<OpenGym> open;
};
const KitId kBell = kit("kettlebell");
} // namespace

TEST_CASE("Each verb of gym and kit is done, undone and done again") {
    KitGym k;
    const std::pair<GymField, const char*> lines[] = {
        {GymField::Name, "Tide Mill"}, {GymField::Unit, "lb"},     {GymField::Paper, "A3"},
        {GymField::Minutes, "45"},     {GymField::Places, "8"},    {GymField::OpeningTime, "1"},
        {GymField::ClosingTime, "4"},  {GymField::WarmUp, "0.5"},  {GymField::Power, "1"},
        {GymField::Strength, "0.9"},   {GymField::Finisher, "0.1"}};
    for (const auto& [field, text] : lines) {
        INFO(text);
        k.doUndoRedo([&, f = field, t = text](auto& g) { return *writeGymField(g, f, t); });
    }
    const std::pair<KitField, const char*> cells[] = {
        {KitField::Name, "Bell"}, {KitField::Units, "5"}, {KitField::Claim, "set"},
        {KitField::Loads, "8x2"}, {KitField::Bar, "15"},  {KitField::Plates, "20x4"}};
    for (const auto& [field, text] : cells) {
        INFO(text);
        k.doUndoRedo([&, f = field, t = text](auto& g) { return *writeKitField(g, kBell, f, t); });
    }
    k.doUndoRedo([](auto& g) { return *ownKit(g, kBell, true); });
    k.doUndoRedo([](auto& g) { return *ownUsualKit(g); });
    k.doUndoRedo([](auto& g) { return addKit(g, "Club").ok(); });
    CHECK(k.open->undoText() == nullptr);
}

TEST_CASE("What is already so, or is not understood, is no step") {
    KitGym k;
    CHECK_FALSE(*writeGymField(*k.open, GymField::Places, "12"));
    CHECK_FALSE(*writeKitField(*k.open, kBell, KitField::Units, "0"));
    CHECK_FALSE(*ownKit(*k.open, kBell, false));
    CHECK_FALSE(*ownKit(*k.open, kit("no-such"), true));
    CHECK_FALSE(writeGymField(*k.open, GymField::Places, "many").ok());
    CHECK_FALSE(writeKitField(*k.open, kBell, KitField::Loads, "8 or so").ok());
    CHECK_FALSE(addKit(*k.open, "kettlebell").ok());
    CHECK_FALSE(addKit(*k.open, "  ").ok());
    CHECK(k.open->undoText() == nullptr);
    CHECK(k.open->revision() == 0);
}

TEST_CASE("A tick takes what is usual for the places, or what the loads say; they outlive it") {
    KitGym k;
    REQUIRE(*ownKit(*k.open, kBell, true));
    CHECK(k.at("kettlebell").units == 12);
    CHECK_FALSE(*ownKit(*k.open, kBell, true)); // owned: as it is
    REQUIRE(*writeKitField(*k.open, kBell, KitField::Loads, "8x2, 12x4, 16"));
    CHECK(k.at("kettlebell").units == 7);
    REQUIRE(*ownKit(*k.open, kBell, false));
    CHECK(k.at("kettlebell").units == 0);
    REQUIRE(*ownKit(*k.open, kBell, true));
    CHECK(k.at("kettlebell").units == 7);
    REQUIRE(*writeGymField(*k.open, GymField::Places, "7"));
    REQUIRE(*ownKit(*k.open, kit("box"), true));
    CHECK(k.at("box").units == 4); // 6 for twelve, so 3.5 for seven
    REQUIRE(*ownKit(*k.open, kit("trap-bar"), true));
    CHECK(k.at("trap-bar").units == 1);
}

TEST_CASE("The usual kit is what the shipped Shelf knows, and leaves what is owned alone") {
    KitGym k;
    REQUIRE(*writeKitField(*k.open, kit("rack"), KitField::Units, "2"));
    REQUIRE(*ownUsualKit(*k.open));
    CHECK(k.at("rack").units == 2);
    int owned = 0;
    for (const KitItem& item : k.open->gym().kit) owned += item.units > 0 ? 1 : 0;
    CHECK(owned == 10);
    CHECK(k.at("sled-lane").units == 0);
    CHECK_FALSE(*ownUsualKit(*k.open));
    REQUIRE(k.open->undoText());
    CHECK(k.open->undoText()->source == "the usual kit");
    REQUIRE(*k.open->undo());
    CHECK(k.at("mat").units == 0);
    CHECK(k.at("rack").units == 2);
}

TEST_CASE("New kit gets an id unlike any other, and one of it is owned") {
    KitGym k;
    const auto club = addKit(*k.open, " Steel club ");
    REQUIRE(club);
    CHECK(*club == kit("steel-club"));
    CHECK(k.at("steel-club").name == "Steel club");
    CHECK(k.at("steel-club").units == 1);
    REQUIRE(*writeKitField(*k.open, *club, KitField::Name, "Heavy club"));
    CHECK_FALSE(addKit(*k.open, "steel club").ok()); // its id still says so
    const auto odd = addKit(*k.open, "\u6876");      // no letter that an id could have
    REQUIRE(odd);
    CHECK(k.open->gym().findKit(*odd)->name == "\u6876");
}

TEST_CASE("What can't be stored is not ticked") {
    KitGym k;
    k.file->full = true;
    CHECK_FALSE(ownKit(*k.open, kBell, true).ok());
    CHECK_FALSE(ownUsualKit(*k.open).ok());
    CHECK_FALSE(addKit(*k.open, "Club").ok());
    CHECK(k.at("kettlebell").units == 0);
    CHECK(k.open->gym().kit.size() == KitGym::withKit().kit.size());
    CHECK(k.open->undoText() == nullptr);
}

} // namespace bw::test
