// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_maker.hpp"

#include "blockwright/ledger/target.hpp"

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

Result<bool> SheetMaker::readResults() {
    OpenGym& open = draft_.gym();
    if (ledger_ && revision_ == open.revision() && block_ == draft_.shown()) return true;
    const auto day = ledgerDay(open.file(), *draft_.block());
    if (!day) return day.why();
    ledger_.emplace(open.gym(), *day);
    const MonthTargets targets(open.gym(), *draft_.block());
    const auto read = open.file().eachResultOf({{}, targets.exercises(), ledger_->earliest()},
                                               [&](const LiftResult& r) {
                                                   ledger_->add(r);
                                                   return true;
                                               });
    if (!read) {
        ledger_.reset();
        return read.why();
    }
    revision_ = open.revision();
    block_ = draft_.shown();
    return true;
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
