// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/class_run.hpp"

namespace bw {

namespace {
// Rows of a section, moved to where the section starts; rows without length are left out.
class RowWriter : public FloorWatch {
public:
    explicit RowWriter(std::vector<FloorRow>& rows) : rows_(rows) {}
    void startAt(Ticks t) { start_ = t; }
    void did(FloorDoing what, int member, Ticks from, Ticks to, Place place, int round) override {
        if (to > from)
            rows_.push_back(
                {member, Millis{start_ + from}, Millis{start_ + to}, what, place, round});
    }

private:
    std::vector<FloorRow>& rows_;
    Ticks start_ = 0;
};
} // namespace

ClassRun::ClassRun(const FloorPlan& plan, FloorStarts starts, int members)
    : plan_(plan), starts_(std::move(starts)), members_(members), run_(plan, members) {}

void ClassRun::play(const FloorSteps& steps, ClassRecord& record) {
    record.clear();
    Ticks now = plan_.opening;
    for (int s = 0; s < static_cast<int>(plan_.sections.size()); ++s) {
        now += plan_.sections[s].talk + run_.play(s, starts_[s], steps, record);
        record.sectionEnd[s] = now;
    }
    record.finish = now + plan_.closing;
}

std::vector<FloorRow> ClassRun::timeline(const FloorSteps& steps) {
    std::vector<FloorRow> rows;
    RowWriter writer(rows);
    ClassRecord record(plan_, members_);
    Ticks now = plan_.opening;
    for (int s = 0; s < static_cast<int>(plan_.sections.size()); ++s) {
        writer.startAt(now);
        for (int m = 0; m < members_; ++m)
            writer.did(FloorDoing::Talk, m, 0, plan_.sections[s].talk, {s, -1, -1}, 0);
        now += plan_.sections[s].talk;
        writer.startAt(now);
        now += run_.play(s, starts_[s], steps, record, &writer);
    }
    std::ranges::stable_sort(rows, [](const FloorRow& a, const FloorRow& b) {
        return a.member != b.member ? a.member < b.member : a.from < b.from;
    });
    return rows;
}

} // namespace bw
