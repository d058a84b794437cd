// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/open_gym.hpp"

#include "edit/changes.hpp"
#include "edit/results_before.hpp"

#include <algorithm>

namespace bw {

namespace {
bool touchesResults(const Change& change) {
    return ResultsBefore::isAbout(change) || std::holds_alternative<RemoveMember>(change);
}
} // namespace

Result<std::unique_ptr<OpenGym>> OpenGym::over(std::unique_ptr<GymFile> file) {
    auto gym = file->load();
    if (!gym) return gym.why();
    return std::unique_ptr<OpenGym>(new OpenGym(std::move(file), std::move(gym).value()));
}

Result<bool> OpenGym::store(const std::vector<Change>& changes) {
    auto stored = file_->apply(changes);
    if (!stored) return stored;
    for (const Change& c : changes) applyTo(gym_, c);
    ++revision_;
    if (std::any_of(changes.begin(), changes.end(), touchesResults)) ++resultsRevision_;
    if (!std::all_of(changes.begin(), changes.end(), ResultsBefore::isAbout)) ++gymRevision_;
    return true;
}

void OpenGym::tell(const std::optional<Spot>& spot) { changed(spot); }

Result<bool> OpenGym::change(Step step) {
    Done done{std::move(step.what), {}, {}, step.before, step.after};
    auto results = ResultsBefore::of(*file_, step.changes);
    if (!results) return results.why();
    ResultsBefore before = std::move(results).value();
    Gym trial = gym_; // later changes of a step build on earlier ones
    for (Change& c : step.changes) {
        auto back = ResultsBefore::isAbout(c) ? before.wayBack(c) : wayBack(trial, c);
        if (!back) continue;
        applyTo(trial, c);
        done.back.push_back(std::move(*back));
        done.forth.push_back(std::move(c));
    }
    if (done.forth.empty()) return false;
    std::reverse(done.back.begin(), done.back.end());
    auto stored = store(done.forth);
    if (!stored) return stored;
    done_.resize(done_.size() - undone_);
    undone_ = 0;
    done_.push_back(std::move(done));
    tell(done_.back().after);
    return true;
}

Result<bool> OpenGym::changeForGood(const std::vector<Change>& changes) {
    auto stored = store(changes);
    if (!stored) return stored;
    done_.clear();
    undone_ = 0;
    tell(std::nullopt);
    return true;
}

Result<bool> OpenGym::undo() {
    if (undone_ == done_.size()) return false;
    const Done& last = done_[done_.size() - undone_ - 1];
    auto stored = store(last.back);
    if (!stored) return stored;
    ++undone_;
    tell(last.before);
    return true;
}

Result<bool> OpenGym::redo() {
    if (undone_ == 0) return false;
    const Done& next = done_[done_.size() - undone_];
    auto stored = store(next.forth);
    if (!stored) return stored;
    --undone_;
    tell(next.after);
    return true;
}

const Message* OpenGym::undoText() const {
    return undone_ == done_.size() ? nullptr : &done_[done_.size() - undone_ - 1].what;
}
const Message* OpenGym::redoText() const {
    return undone_ == 0 ? nullptr : &done_[done_.size() - undone_].what;
}

} // namespace bw
