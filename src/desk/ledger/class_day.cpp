// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/class_day.hpp"

#include <algorithm>

namespace bw {

namespace {
using Key = std::pair<MemberId, ExerciseId>;

LiftedSet setOf(const LiftResult& r) { return {r.reps, r.rir, r.load}; }

bool taken(const Section& section, bool whole) {
    return whole || section.kind == SectionKind::Power || section.kind == SectionKind::Strength;
}
} // namespace

// What one look into the file brought, until it is laid out in rows.
struct ClassDay::Reading {
    struct Line {
        std::vector<LiftedSet> today, last;
        std::optional<Date> lastOn;
    };
    Ledger ledger; // up to the day before
    std::map<Key, Line> lines;
    std::map<Key, Line>::value_type* recent = nullptr; // of these: most sets follow others of it

    void add(const LiftResult& r, Date date) {
        if (!recent || recent->first.first != r.member || recent->first.second != r.exercise)
            recent = &*lines.try_emplace({r.member, r.exercise}).first;
        Line& line = recent->second;
        if (r.date == date) return line.today.push_back(setOf(r));
        ledger.add(r);
        if (line.lastOn != r.date) line.last.clear();
        line.lastOn = r.date;
        line.last.push_back(setOf(r));
    }
    [[nodiscard]] const Line& of(const MemberId& member, const ExerciseId& exercise) const {
        static const Line none;
        const auto it = lines.find({member, exercise});
        return it == lines.end() ? none : it->second;
    }
};

ClassDay::ClassDay(const Gym& gym, Date date, bool whole)
    : gym_(std::make_shared<const Gym>(gym)), date_(date), block_(gym_->block(date.month())) {
    if (!block_) return;
    week_ = weekOfDate(*block_, date).value_or(Week::first());
    targets_ = std::make_unique<MonthTargets>(*gym_, *block_);
    asked_ = targets_->exercises();
    addColumns(whole);
}

void ClassDay::addColumns(bool whole) {
    std::set<ExerciseId> seen;
    Place at{0, 0, 0};
    for (at.section = 0; const Section* s = sectionAt(*block_, {at.section}); ++at.section)
        for (at.group = 0; at.group < static_cast<int>(s->groups.size()); ++at.group)
            for (at.slot = 0; const Slot* slot = slotAt(*block_, at); ++at.slot) {
                if (!taken(*s, whole) || !slot->exercise) continue;
                const Exercise* e = gym_->shelf.find(*slot->exercise);
                if (!e || e->pace.usual() != Measure::Reps)
                    ++unmeasured_;
                else if (seen.insert(e->id).second)
                    columns_.push_back({at, e->id});
            }
}

Result<bool> ClassDay::read(GymFile& file, const std::vector<MemberId>& members) {
    std::vector<MemberId> missing;
    for (const MemberId& id : members)
        if (!rows_.contains(id) && gym_->findMember(id)) missing.push_back(id);
    if (missing.empty() || !block_) return true;
    Reading reading{Ledger(*gym_, date_.plusDays(-1)), {}};
    const auto read = file.eachResultOf({missing, asked_, reading.ledger.earliest(), date_},
                                        [&](const LiftResult& r) {
                                            reading.add(r, date_);
                                            return true;
                                        });
    if (!read) return read.why();
    for (const MemberId& id : missing) rows_.emplace(id, rowOf(*gym_->findMember(id), reading));
    return true;
}

ClassRow ClassDay::rowOf(const Member& member, const Reading& reading) {
    const auto targets = targets_->of(reading.ledger, member);
    const auto slotAtPlace = [&](Place place) {
        return std::find_if(targets.begin(), targets.end(),
                            [&](const SlotTargets& t) { return t.place == place; });
    };
    ClassRow row;
    for (const ClassColumn& column : columns_) {
        ClassCell cell{column.exercise, {}, false, {}, {}, {}, {}};
        const auto slot = slotAtPlace(column.place);
        // What is written of the drafted exercise that day was done, whatever the flags say.
        const bool asDrafted = !reading.of(member.id, column.exercise).today.empty();
        if (slot != targets.end()) {
            cell.instead = slot->instead;
            if (slot->exercise && !asDrafted) cell.exercise = slot->exercise->id;
            cell.ruledOut = slot->instead && !slot->exercise && !asDrafted;
            const auto week = static_cast<std::size_t>(week_.index());
            if (week < slot->weeks.size() && !(asDrafted && slot->instead))
                cell.aim = slot->weeks[week];
        }
        const Reading::Line& line = reading.of(member.id, cell.exercise);
        cell.sets = line.today;
        cell.last = line.last;
        cell.lastOn = line.lastOn;
        row.cells.push_back(std::move(cell));
    }
    return row;
}

const ClassRow* ClassDay::row(const MemberId& member) const {
    const auto it = rows_.find(member);
    return it == rows_.end() ? nullptr : &it->second;
}

Result<bool> ClassDay::readCame(GymFile& file) {
    came_.clear();
    return file.eachResultOf({{}, {}, date_, date_}, [&](const LiftResult& r) {
        came_.insert(r.member);
        return true;
    });
}

} // namespace bw
