// SPDX-License-Identifier: GPL-3.0-or-later
// The gym being worked on: the model in memory, its file, and what can be undone. Every change of a
// gym goes through change(), is in the file before change() returns, and can be undone until the
// gym is closed, whichever month is on the screen by then. The verbs (block_verbs.hpp,
// month_verbs.hpp, gym_verbs.hpp) are the way to call it.
#pragma once
#include "blockwright/model/place.hpp"
#include "edit/signal.hpp"
#include "store/gym_file.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace bw {

// Where the coach's attention is: put back by undo and redo.
struct Spot {
    Month month;
    Place place;
    bool operator==(const Spot&) const = default;
};

// One thing the coach did. `what` names it in the menu: "Undo: %1".
struct Step {
    Message what;
    std::vector<Change> changes;
    std::optional<Spot> before, after;
};

class OpenGym {
public:
    static Result<std::unique_ptr<OpenGym>> over(std::unique_ptr<GymFile> file);

    [[nodiscard]] const Gym& gym() const { return gym_; }
    [[nodiscard]] GymFile& file() { return *file_; }
    // Grows with every change, undo and redo.
    [[nodiscard]] std::uint64_t revision() const { return revision_; }
    // Likewise, but not by results alone: they are not part of gym().
    [[nodiscard]] std::uint64_t gymRevision() const { return gymRevision_; }
    // Likewise, but only when results come, change or go.
    [[nodiscard]] std::uint64_t resultsRevision() const { return resultsRevision_; }

    // False, and nothing is kept or told, when the step changes nothing. Why() when it could not be
    // stored; the gym is then as before.
    [[nodiscard]] Result<bool> change(Step step);
    // For what can't be undone (a bundle with results, a member erased): forgets what could be
    // undone before it.
    [[nodiscard]] Result<bool> changeForGood(const std::vector<Change>& changes);

    // False when there is nothing to undo or redo.
    [[nodiscard]] Result<bool> undo();
    [[nodiscard]] Result<bool> redo();
    [[nodiscard]] const Message* undoText() const; // null: nothing
    [[nodiscard]] const Message* redoText() const;

    // After each change, with where to look if the step says so.
    Signal<const std::optional<Spot>&> changed;

private:
    struct Done {
        Message what;
        std::vector<Change> forth, back;
        std::optional<Spot> before, after;
    };
    OpenGym(std::unique_ptr<GymFile> file, Gym gym)
        : file_(std::move(file)), gym_(std::move(gym)) {}
    Result<bool> store(const std::vector<Change>& changes);
    void tell(const std::optional<Spot>& spot);

    std::unique_ptr<GymFile> file_;
    Gym gym_;
    std::vector<Done> done_;
    std::size_t undone_ = 0; // how many at the end of done_ are undone
    std::uint64_t revision_ = 0, gymRevision_ = 0, resultsRevision_ = 0;
};

} // namespace bw
