// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach would first write down: common practice, no source.
#include "edit/block_verbs.hpp"

namespace bw {

namespace {
Range<Millis> rest(int lo, int hi) {
    return Range<Millis>::between(std::chrono::seconds{lo}, std::chrono::seconds{hi});
}
Range<Millis> minutes(int lo, int hi) { return rest(lo * 60, hi * 60); }

struct Usual {
    Range<int> rounds;
    Range<Millis> rest, budget;
    std::string_view role;
};
Usual usual(SectionKind kind) {
    switch (kind) {
    case SectionKind::WarmUp: return {Range(2), rest(0, 30), minutes(8, 12), "warm-up"};
    case SectionKind::Power: return {Range(2), rest(60, 120), minutes(6, 10), "power"};
    case SectionKind::Strength:
        return {Range<int>::between(2, 3), rest(60, 120), minutes(22, 30), ""};
    case SectionKind::Finisher:
        return {Range<int>::between(2, 3), rest(60, 90), minutes(6, 10), "finisher"};
    }
    return {Range(2), rest(60, 120), minutes(10, 20), ""};
}
} // namespace

Group usualGroup(SectionKind kind) {
    const Usual u = usual(kind);
    Group g;
    g.rounds = u.rounds;
    g.rest = u.rest;
    Slot open;
    if (auto role = RoleId::parse(u.role)) open.role = *role;
    g.slots = {open, open};
    return g;
}

Section usualSection(SectionKind kind) {
    Section s;
    s.kind = kind;
    s.budget = usual(kind).budget;
    s.talk = std::chrono::seconds{60};
    s.groups = {usualGroup(kind)};
    return s;
}

} // namespace bw
