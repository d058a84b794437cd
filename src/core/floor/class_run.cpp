// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/class_run.hpp"

#include <map>
#include <utility>

namespace bw {

namespace {
// What happens in a section, moved to where the section starts; what has no length is left out.
class TimelineWriter : public FloorWatch {
public:
    explicit TimelineWriter(const FloorPlan& plan) : plan_(plan), open_(plan.kit.size()) {}
    void startAt(Ticks t) { start_ = t; }
    void did(FloorDoing what, int member, Ticks from, Ticks to, Place place, int round) override {
        const auto lacked = std::exchange(lacked_, std::nullopt);
        if (to > from)
            out_.rows.push_back(
                {member, Millis{start_ + from}, Millis{start_ + to}, what, place, round, lacked});
    }
    void lacked(int, int kit) override {
        if (!lacked_) lacked_ = plan_.kit[kit].id;
    }
    void took(int member, int kit, int load, int count, Ticks now) override {
        open_[kit].push_back({load, hold(member, kit, load, count, now)});
    }
    void gaveBack(int member, int kit, int load, int count, Ticks now) override {
        auto& open = open_[kit];
        for (auto it = open.begin(); count > 0 && it != open.end();) {
            if (it->second.member != member || it->first != load) {
                ++it;
                continue;
            }
            count -= it->second.count;
            close(kit, it->second, now);
            it = open.erase(it);
        }
    }
    ClassTimeline take() {
        std::ranges::stable_sort(out_.rows, [](const FloorRow& a, const FloorRow& b) {
            return a.member != b.member ? a.member < b.member : a.from < b.from;
        });
        for (auto& [kit, holds] : closed_) {
            std::ranges::stable_sort(holds, [](const FloorHold& a, const FloorHold& b) {
                return a.from != b.from ? a.from < b.from : a.member < b.member;
            });
            out_.holds.insert(out_.holds.end(), holds.begin(), holds.end());
        }
        return std::move(out_);
    }

private:
    FloorHold hold(int member, int kit, int load, int count, Ticks now) const {
        return {plan_.kit[kit].id,
                load < 0 ? std::nullopt : plan_.loads[load].mass,
                member,
                count,
                Millis{start_ + now},
                {}};
    }
    void close(int kit, FloorHold& hold, Ticks now) {
        hold.to = Millis{start_ + now};
        if (hold.to > hold.from) closed_[kit].push_back(hold);
    }

    const FloorPlan& plan_;
    ClassTimeline out_;
    std::optional<KitId> lacked_;
    std::vector<std::vector<std::pair<int, FloorHold>>> open_; // by kit, with the load's index
    std::map<int, std::vector<FloorHold>> closed_;             // by kit
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

ClassTimeline ClassRun::timeline(const FloorSteps& steps) {
    TimelineWriter writer(plan_);
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
    return writer.take();
}

} // namespace bw
