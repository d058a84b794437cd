// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/write_parts.hpp"

namespace bw {

using json::Out;

namespace {
Out flagOut(const Flag& flag) {
    auto out = Out::object();
    out.add("demand", wordOut(flag.demand));
    out.add("level", wordOut(flag.level));
    addText(out, "note", flag.note);
    return out.addAll(flag.extras.json);
}
} // namespace

Out memberOut(const Member& member) {
    auto out = Out::object();
    out.add("id", Out::text(member.id.text()));
    out.add("name", Out::text(member.name));
    addUnlessEmpty(out, "flags", listOut(member.flags, flagOut));
    out.add("active", Out::boolean(member.active));
    return out.addAll(member.extras.json);
}

Out resultOut(const LiftResult& result) {
    auto out = Out::object();
    out.add("member", Out::text(result.member.text()));
    out.add("date", Out::text(result.date.text()));
    out.add("exercise", Out::text(result.exercise.text()));
    out.add("set", Out::whole(result.set));
    out.add("reps", Out::whole(result.reps));
    out.add("rir", result.rir ? rirOut(*result.rir) : Out::null());
    out.add("load_kg", result.load ? kgOut(*result.load) : Out::null());
    return out.addAll(result.extras.json);
}

} // namespace bw
