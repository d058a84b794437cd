// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <cmath>

namespace bw::book {

namespace {
Message tooLong(Millis planned, Millis most) {
    return {"The session is planned at %1 and the class has %2: it runs %3 over.",
            {clockText(planned), clockText(most), clockText(planned - most)}};
}
Message nearlyTooLong(Millis planned, Millis most) {
    return {"The session is planned at %1 of the %2 in the class: %3 is left for late starts, "
            "questions and waiting.",
            {clockText(planned), clockText(most), clockText(most - planned)}};
}

void judge(const Facts& facts, Verdict& verdict) {
    const Millis planned = roundHalvesUp(facts.time.total.planned);
    const Millis most = std::chrono::minutes{facts.gym.settings.classMinutes};
    const double share = verdict.limit("look_share").hi;
    const Millis near{std::llround(static_cast<double>(most.count()) * share)};
    const bool over = planned > most;
    if (!over && planned <= near) return;
    Finding& f = verdict.add(over ? Level::Stop : Level::Look, {}, inSeconds(planned), "look_share",
                             over ? tooLong(planned, most) : nearlyTooLong(planned, most));
    f.limit = atMost(inSeconds(over ? most : near));
    f.unit = "s";
    f.remedies = shorten(facts, -1);
}
} // namespace

Rule sessionLength() {
    return {
        "session-length",
        {"The session as planned, without any queue, fits into the class.", {}},
        {{"look_share",
          atMost(0.95),
          "share",
          thisGymsSetting(),
          {"How full a class may be planned before a coach should look. Above the whole class it "
           "can't be run.",
           {}}}},
        judge};
}

} // namespace bw::book
