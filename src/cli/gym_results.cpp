// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/gym_results.hpp"

#include "cli/ending.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"

#include <algorithm>

namespace bw::cli {

namespace {
template <class T> bool takes(const std::vector<T>& asked, const T& x) {
    return asked.empty() || std::find(asked.begin(), asked.end(), x) != asked.end();
}

bool takes(const ResultQuery& query, const LiftResult& r) {
    return takes(query.members, r.member) && takes(query.exercises, r.exercise) &&
           (!query.from || r.date >= *query.from) && (!query.until || r.date <= *query.until);
}

template <class T> T orEnd(Result<T> result) {
    if (!result) throw Ending(Exit::BadFile, result.why().english());
    return std::move(result).value();
}
} // namespace

GymResults::GymResults(const GymSource& source) {
    if (source.file().empty()) {
        auto loaded = source.load(GymSource::Results::Take);
        gym_ = std::move(loaded.gym);
        results_ = std::move(loaded.results);
        std::stable_sort(results_.begin(), results_.end(),
                         [](const auto& a, const auto& b) { return a.date < b.date; });
        return;
    }
    file_ = orEnd(GymFile::open(source.file(), GymFile::Access::Read));
    gym_ = orEnd(file_->load());
}

void GymResults::each(const ResultQuery& query,
                      const std::function<void(const LiftResult&)>& visit) const {
    if (!file_) {
        for (const LiftResult& r : results_)
            if (takes(query, r)) visit(r);
        return;
    }
    std::size_t seen = 0;
    const Progress progress("Reading results");
    (void)orEnd(file_->eachResultOf(query, [&](const LiftResult& r) {
        constexpr std::size_t kOften = 10'000;
        if (++seen % kOften == 0) Interrupt::check();
        visit(r);
        return true;
    }));
}

Date GymResults::day(const std::string& asked) const {
    if (!asked.empty()) {
        const auto date = Date::parse(asked);
        if (!date) throw Ending(Exit::BadInput, "--on: " + date.why().english());
        return *date;
    }
    if (file_) {
        if (const auto newest = orEnd(file_->newestResult())) return *newest;
    } else if (!results_.empty()) {
        return results_.back().date;
    }
    const auto latest = gym_.latest();
    if (!latest) throw Ending(Exit::BadInput, "This gym has neither results nor months.");
    return Date::of(latest->month.year(), latest->month.month(), 1).value();
}

const Member& GymResults::member(const std::string& id) const {
    const auto parsed = MemberId::parse(id);
    const Member* member = parsed ? gym_.findMember(*parsed) : nullptr;
    if (!member) throw Ending(Exit::BadInput, "This gym has no member “" + id + "”.");
    return *member;
}

} // namespace bw::cli
