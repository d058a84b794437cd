// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_maker.hpp"

#include "blockwright/ledger/target.hpp"

#include <algorithm>

namespace bw {

namespace {
// The day of the newest result; without any, the first of the month.
Result<Date> ledgerDay(GymFile& file, const Block& block) {
    const auto newest = file.newestResult();
    if (!newest) return newest.why();
    if (*newest) return **newest;
    return Date::of(block.month.year(), block.month.month(), 1);
}
} // namespace

Result<SheetMaker::Grounds> SheetMaker::grounds() const {
    OpenGym& open = draft_.gym();
    const auto day = ledgerDay(open.file(), *draft_.block());
    if (!day) return day.why();
    const Gym& gym = open.gym();
    Grounds out{open.resultsRevision(), *day, {}, gym.shelf.entries(), gym.settings.limits,
                gym.settings.massUnit};
    for (const Member& m : gym.members)
        if (m.active) out.members.push_back(m.id);
    return out;
}

Result<bool> SheetMaker::readResults() {
    auto now = grounds();
    if (!now) return now.why();
    const Gym& gym = draft_.gym().gym();
    auto asked = MonthTargets(gym, *draft_.block()).exercises();
    const bool known =
        std::includes(exercises_.begin(), exercises_.end(), asked.begin(), asked.end());
    if (ledger_ && grounds_ == *now && known) return true;
    ledger_.emplace(gym, now->on);
    grounds_ = std::move(now).value();
    exercises_ = std::move(asked);
    if (grounds_->members.empty() || exercises_.empty()) return true; // an empty query asks for all
    const auto read = draft_.gym().file().eachResultOf(
        {grounds_->members, exercises_, ledger_->earliest()}, [&](const LiftResult& r) {
            ledger_->add(r);
            return true;
        });
    if (read) return true;
    ledger_.reset();
    return read.why();
}

Result<const Ledger*> SheetMaker::ledger() {
    if (const auto read = readResults(); !read) return read.why();
    return &*ledger_;
}

Result<Layout> SheetMaker::layOut(SheetKind kind, const SheetOptions& options,
                                  const SheetProgress& progress) {
    const bool byLoads = kind == SheetKind::Cards || kind == SheetKind::Kit;
    if (byLoads)
        if (const auto read = readResults(); !read) return read.why();
    return layoutSheet(
        kind,
        {draft_.gym().gym(), *draft_.block(), byLoads ? &*ledger_ : nullptr, &draft_.verdict()},
        options, progress);
}

} // namespace bw
