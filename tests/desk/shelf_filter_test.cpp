// SPDX-License-Identifier: GPL-3.0-or-later
// What the words of the filter find, and the models under the Shelf.
#include "desk/shelf/shelf_model.hpp"
#include "shelf_gym.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>

namespace bw::test {

namespace {
std::string found(const QString& words) {
    static const Gym gym = shelfGym();
    ShelfModel model(nullptr);
    model.refresh(gym);
    model.choose(words);
    QStringList ids;
    for (int row = 0; row < model.rowCount(); ++row)
        ids << QString::fromStdString(model.exerciseAt(row)->id.text());
    return ids.join(u' ').toStdString();
}
std::string trouble(const QString& words) {
    ShelfModel model(nullptr);
    model.refresh(shelfGym());
    model.choose(words);
    return model.trouble().toStdString();
}
} // namespace

TEST_CASE("A word of the filter begins a word of name, pattern, role, kit, load or demand") {
    CHECK(found("SQUAT") == "box-squat front-squat goblet-squat");
    CHECK(found("squat heavy") == "front-squat goblet-squat");
    CHECK(found("horizontal-pull") == "towel-row");
    CHECK(found("barbell") == "front-squat overhead-press");
    CHECK(found("owel").empty()); // not inside a word
    CHECK(found("rack") == "front-squat");
    Gym gym = shelfGym();
    Exercise pull = shelved("bar-row", "Bar row", Pattern::HorizontalPull, "warm-up");
    pull.needs = {{{kit("rack"), 1, {}}}}; // a squat rack does not make it a squat
    CHECK_FALSE(shelfLine(gym, std::make_shared<const Exercise>(pull)).words.contains(" squat"));
    CHECK(found("overhead") == "overhead-press");
    CHECK(found("grip") == "overhead-press towel-row");
    CHECK(found("bodyweight squat box") == "box-squat");
}

TEST_CASE("A demand can be asked for by how much, and words be ruled out") {
    CHECK(found("grip 2") == "towel-row");
    CHECK(found("knee 3") == "front-squat");
    CHECK(found("skill 2") == "front-squat");
    CHECK(found("squat no barbell") == "box-squat goblet-squat");
    CHECK(found("not grip no knee") == "box-squat");
    CHECK(found("no knee") == "box-squat overhead-press towel-row");
}

TEST_CASE("The filter knows what no month has used, or none since") {
    CHECK(found("unused") == "box-squat overhead-press");
    CHECK(found("used") == "front-squat goblet-squat towel-row");
    CHECK(found("not used") == found("unused"));
    CHECK(found("unused 1") == "box-squat front-squat overhead-press towel-row");
    CHECK(found("unused 2") == "box-squat front-squat overhead-press");
    CHECK(found("used 2") == "goblet-squat towel-row");
    CHECK(found("since October") == "goblet-squat towel-row");
    CHECK(found("used since 2026-11") == "goblet-squat");
    CHECK(found("not since oct 2026") == "box-squat front-squat overhead-press");
    CHECK(found("unused since december") == "box-squat overhead-press"); // of last year
    CHECK(trouble("since").find("After “since” comes a month, such as 2026-08 or July.") == 0);
    CHECK(trouble("since July").empty());
}

TEST_CASE("Retired exercises are left out unless asked for, and what is half typed waits") {
    CHECK(found("press") == "overhead-press");
    CHECK(found("retired") == "old-press");
    CHECK(found("retired squat").empty());
    CHECK(found("squat unus") == "box-squat front-squat goblet-squat");
    CHECK(found("squat unusx").empty());
    CHECK(found("flute").empty());
}

TEST_CASE("The table keeps to the rules of models while it is sorted, narrowed and written anew") {
    Gym gym = shelfGym();
    ShelfModel model(nullptr);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.refresh(gym);
    for (int column = 0; column < ShelfLine::kColumns; ++column)
        for (const auto order : {Qt::AscendingOrder, Qt::DescendingOrder}) {
            model.sort(column, order);
            CHECK(model.rowCount() == 5);
        }
    model.choose("squat");
    gym.shelf.put(shelved("pause-squat", "Pause squat", Pattern::Squat, "strength-long"));
    model.refresh(gym);
    CHECK(model.rowCount() == 4);
    CHECK(model.rowOf(ex("pause-squat")) >= 0);
    CHECK(model.rowOf(ex("towel-row")) == -1);
}

TEST_CASE("The lines of an exercise keep to the rules of models while it grows and goes") {
    auto file = std::make_unique<MemoryFile>(shelfGym());
    const auto open = OpenGym::over(std::move(file)).value();
    EntryModel model(*open, nullptr);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(ex("goblet-squat"), ShelfUses(open->gym()));
    const int rows = model.rowCount();
    REQUIRE(*writeCue(*open, ex("goblet-squat"), 1, "Look ahead"));
    model.show(ex("goblet-squat"), ShelfUses(open->gym()));
    CHECK(model.rowCount() == rows + 1);
    model.show(std::nullopt, ShelfUses(open->gym()));
    CHECK(model.rowCount() == 0);
}

TEST_CASE("A thousand exercises are narrowed to those that fit, in order") {
    Gym gym = shelfGym();
    for (int i = 0; i < 1000; ++i) {
        const std::string n = std::to_string(1000 + i);
        gym.shelf.put(shelved(("reach-" + n).c_str(), ("Reach " + n).c_str(),
                              i % 2 == 0 ? Pattern::Lunge : Pattern::Rotation, "warm-up"));
    }
    ShelfModel model(nullptr);
    model.refresh(gym);
    CHECK(model.rowCount() == 1005);
    model.choose("rea lun");
    REQUIRE(model.rowCount() == 500);
    CHECK(model.exerciseAt(499)->name == "Reach 1998");
    model.choose("reach 1998");
    CHECK(model.rowCount() == 1);
}

} // namespace bw::test
