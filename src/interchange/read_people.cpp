// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/read_parts.hpp"

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
// Null says the same as leaving the key out: not known, or none.
Node unlessNull(const Reading& r, Node n) {
    return n != kNone && r.tree.is(n, Kind::Null) ? kNone : n;
}

std::optional<Flag> readFlag(Reading& r, Node n) {
    Fields f(r, n);
    const auto demand = readWord<Demand>(r, f.need("demand"));
    const auto level = readWord<FlagLevel>(r, f.take("level"));
    auto note = readText(r, f.take("note"), kNote);
    auto extras = f.rest();
    if (!demand) return std::nullopt;
    return Flag{*demand, orElse(level, FlagLevel::Limit), orElse(std::move(note), std::string{}),
                std::move(extras)};
}
} // namespace

std::optional<Member> readMember(Reading& r, Node n) {
    Fields f(r, n);
    const Node idAt = f.need("id");
    r.refs.haveMember(idAt);
    auto id = readParsed<MemberId>(r, idAt);
    auto name = readText(r, f.need("name"), kName);
    auto flags = readList<Flag>(r, f.take("flags"), readFlag);
    const auto active = readBool(r, f.take("active"));
    auto extras = f.rest();
    if (!id || !name) return std::nullopt;
    return Member{.id = std::move(*id),
                  .name = std::move(*name),
                  .flags = std::move(flags),
                  .active = orElse(active, true),
                  .extras = std::move(extras)};
}

std::optional<LiftResult> readResult(Reading& r, Node n) {
    Fields f(r, n);
    const Node memberAt = f.need("member");
    auto member = readParsed<MemberId>(r, memberAt);
    if (member) r.refs.toMember(memberAt);
    const auto date = readParsed<Date>(r, f.need("date"));
    const Node exerciseAt = f.need("exercise");
    auto exercise = readParsed<ExerciseId>(r, exerciseAt);
    if (exercise) r.refs.toLiftedExercise(exerciseAt);
    const Node setAt = f.take("set");
    const auto set = setAt == kNone ? std::optional(1) : readWhole(r, setAt, 1, 100);
    const auto reps = readWhole(r, f.need("reps"), 0, 1000);
    const auto rir = readRir(r, unlessNull(r, f.take("rir")));
    const auto load = readKg(r, unlessNull(r, f.take("load_kg")));
    auto extras = f.rest();
    if (!member || !date || !exercise || !set || !reps) return std::nullopt;
    LiftResult result{.member = std::move(*member),
                      .date = *date,
                      .exercise = std::move(*exercise),
                      .set = *set,
                      .reps = *reps,
                      .rir = rir,
                      .load = load,
                      .extras = std::move(extras)};
    r.refs.haveResult(n, result);
    return result;
}

} // namespace bw
