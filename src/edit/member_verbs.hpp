// SPDX-License-Identifier: GPL-3.0-or-later
// Who comes to the gym: taking members in, their flags, letting them go.
#pragma once
#include "edit/open_gym.hpp"
#include "interchange/bundle.hpp"

namespace bw {

// A member to be put in: the id is the next free number, for names are nobody else's business.
// Why() when the name is blank or longer than 200 characters.
[[nodiscard]] Result<Member> newMember(const Gym& gym, std::string_view name);
// Adds the member, or takes the place of the one with that id: one undoable step. Why() as above,
// and when a flag's note is longer than 2 000 characters.
[[nodiscard]] Result<bool> putMember(OpenGym& gym, Member member);

// What the gym file knows of a member.
struct MemberTraces {
    std::size_t results = 0;
    std::optional<Date> first, last; // of the results
};
[[nodiscard]] Result<MemberTraces> tracesOf(GymFile& file, const MemberId& member);
// All of it as a bundle that can be laid over any gym with that Shelf.
[[nodiscard]] Result<Bundle> bundleOfMember(OpenGym& gym, const MemberId& member);
// The member with all results, overwritten in the file. Can't be undone, nor can anything before
// it: what could be undone might hold the member still. Copies of the file made before keep it.
// False when there is no such member.
[[nodiscard]] Result<bool> eraseMember(OpenGym& gym, const MemberId& member);

} // namespace bw
