// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/member_verbs.hpp"

#include "edit/gym_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr std::size_t kLongestName = 200, kLongestNote = 2000;

bool goodName(std::string_view name) {
    return name.find_first_not_of(" \t\n") != std::string_view::npos &&
           lengthOf(name) <= kLongestName;
}
Message badName() { return {"A member needs a name of 1 to 200 characters.", {}}; }

Message whatChanged(const Member* old, const Member& now) {
    if (!old) return {"new member %1", {now.name}};
    if (old->name != now.name) return {"name of %1", {now.name}};
    if (old->active && !now.active) return {"%1 comes no more", {now.name}};
    if (!old->active && now.active) return {"%1 comes again", {now.name}};
    return {"flags of %1", {now.name}};
}
} // namespace

Result<Member> newMember(const Gym& gym, std::string_view name) {
    if (!goodName(name)) return badName();
    for (std::size_t n = gym.members.size() + 1;; ++n) {
        std::string number = std::to_string(n);
        constexpr std::size_t kDigits = 3;
        if (number.size() < kDigits) number.insert(0, kDigits - number.size(), '0');
        const auto id = MemberId::parse("m-" + number);
        if (!gym.findMember(*id)) return Member{*id, std::string(name), {}, true, {}};
    }
}

Result<bool> putMember(OpenGym& gym, Member member) {
    if (!goodName(member.name)) return badName();
    for (const Flag& flag : member.flags)
        if (lengthOf(flag.note) > kLongestNote)
            return Message{"The note of a flag may have 2000 characters; this one has %1.",
                           {std::to_string(lengthOf(flag.note))}};
    Message what = whatChanged(gym.gym().findMember(member.id), member);
    return gym.change({std::move(what), {PutMember{std::move(member)}}, {}, {}});
}

Result<MemberTraces> tracesOf(GymFile& file, const MemberId& member) {
    MemberTraces out;
    const auto read = file.eachResultOf({{member}, {}, {}}, [&](const LiftResult& r) {
        ++out.results;
        out.first = out.first ? std::min(*out.first, r.date) : r.date;
        out.last = out.last ? std::max(*out.last, r.date) : r.date;
        return true;
    });
    if (!read) return read.why();
    return out;
}

Result<Bundle> bundleOfMember(OpenGym& gym, const MemberId& id) {
    const Member* member = gym.gym().findMember(id);
    if (!member) return Message{"There is no member “%1”.", {id.text()}};
    auto results = gym.file().resultsOf(id);
    if (!results) return results.why();
    Bundle out;
    out.members = {*member};
    out.results = std::move(results).value();
    return out;
}

Result<bool> eraseMember(OpenGym& gym, const MemberId& member) {
    if (!gym.gym().findMember(member)) return false;
    return gym.changeForGood({RemoveMember{member}});
}

} // namespace bw
