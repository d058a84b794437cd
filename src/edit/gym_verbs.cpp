// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/gym_verbs.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/place.hpp"

namespace bw {

namespace {
std::vector<Change> changesOf(const Gym& gym) {
    std::vector<Change> changes{PutSettings{gym.settings}};
    for (const auto& k : gym.kit) changes.emplace_back(PutKit{k});
    for (const auto& e : gym.shelf.entries()) changes.emplace_back(PutExercise{e});
    for (const auto& [month, b] : gym.blocks) changes.emplace_back(PutBlock{b});
    for (const auto& m : gym.members) changes.emplace_back(PutMember{m});
    return changes;
}

// Only what the bundle names, as it stands once laid over the gym.
std::vector<Change> changesOf(const Gym& laid, const Bundle& bundle) {
    std::vector<Change> changes;
    if (bundle.settings) changes.emplace_back(PutSettings{laid.settings});
    for (const auto& k : bundle.kit) changes.emplace_back(PutKit{k});
    for (const auto& e : bundle.shelf) changes.emplace_back(PutExercise{laid.shelf.entry(e.id)});
    for (const auto& b : bundle.blocks) changes.emplace_back(PutBlock{laid.block(b.month)});
    for (const auto& m : bundle.members) changes.emplace_back(PutMember{m});
    for (const auto& r : bundle.results) changes.emplace_back(PutResult{r});
    return changes;
}
} // namespace

std::size_t lengthOf(std::string_view text) {
    std::size_t n = 0;
    for (const char c : text) n += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    return n;
}

Did setSettings(OpenGym& gym, GymSettings settings) {
    return gym.change({{"gym settings", {}}, {PutSettings{std::move(settings)}}, {}, {}});
}
Did putKit(OpenGym& gym, KitItem item) {
    Message what{"kit %1", {item.name}};
    return gym.change({std::move(what), {PutKit{std::move(item)}}, {}, {}});
}
Did putExercise(OpenGym& gym, Exercise exercise) {
    Message what{"exercise %1", {exercise.name}};
    return gym.change({std::move(what),
                       {PutExercise{std::make_shared<const Exercise>(std::move(exercise))}},
                       {},
                       {}});
}

Result<Exercise> newExercise(const Gym& gym, std::string_view name, Pattern pattern) {
    if (name.empty() || lengthOf(name) > 200)
        return Message{"An exercise needs a name of 1 to 200 characters.", {}};
    std::string base = idTextFrom(name);
    if (base.empty()) base = "exercise";
    if (base.size() > 190) base.resize(190);
    while (base.back() == '-') base.pop_back();
    auto id = ExerciseId::parse(base);
    for (int n = 2; gym.shelf.find(*id); ++n)
        id = ExerciseId::parse(base + "-" + std::to_string(n));
    Exercise e = blankExercise(*id, std::string(name),
                               Pace::of(Measure::Reps, {Rate::of(3.0).value(), {}, {}}).value());
    e.patterns = Shares<Pattern>::of({{pattern, Share::whole()}}).value();
    e.setup = Millis{10'000};
    return e;
}

Did addAndSetExercise(OpenGym& gym, Spot at, Exercise exercise) {
    const auto old = gym.gym().block(at.month);
    if (!old || !slotAt(*old, at.place)) return false;
    auto block = std::make_shared<Block>(*old);
    Slot* slot = slotAt(*block, at.place);
    slot->exercise = exercise.id;
    slot->dose = fittingDose(*slot, exercise, sectionAt(*block, at.place)->kind);
    Message what{"new exercise %1", {exercise.name}};
    auto entry = std::make_shared<const Exercise>(std::move(exercise));
    return gym.change({std::move(what), {PutExercise{entry}, PutBlock{block}}, at, at});
}

Did importBundle(OpenGym& gym, const Bundle& bundle) {
    Gym laid = gym.gym();
    layOver(laid, bundle);
    return gym.changeForGood(changesOf(laid, bundle));
}

Result<std::unique_ptr<OpenGym>> createGym(const std::filesystem::path& path,
                                           const Bundle* bundle) {
    auto file = GymFile::create(path);
    if (!file) return file.why();
    Gym gym;
    layOver(gym, shippedShelf());
    gym.settings = {};
    if (bundle) layOver(gym, *bundle);
    auto changes = changesOf(gym);
    if (bundle)
        for (const auto& r : bundle->results) changes.emplace_back(PutResult{r});
    auto stored = (*file)->apply(changes);
    if (!stored) return stored.why();
    return OpenGym::over(std::move(file).value());
}

} // namespace bw
