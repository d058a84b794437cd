#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes tests/rules-fixtures/: for each rule a bundle that must fire it and a near miss that must not.
What must be found stands beside them in RULE.findings.json, which tests/rulebook compares.

    tools/make-rule-fixtures.py           writes the bundles
    tools/make-rule-fixtures.py --check   exit 1 when a bundle is not what this would write
"""
import json
import sys
from pathlib import Path

sys.dont_write_bytecode = True
from demo.shorthand import group, month, section, stair  # noqa: E402

TARGET = Path(__file__).resolve().parent.parent / "tests" / "rules-fixtures"
LONG, OPPOSED, FAST = "heavy-then-long", "opposed", "heavy-then-fast"
STRAIGHT, TRIP = "straight-heavy", "round-trip"
WIDE = (0, 60)  # a budget that nothing misses


def warm(*slots):
    return section("warm-up", 0, WIDE, "together", group((2, 2), (0, 20), *slots))


def power(*slots, rest=(60, 90)):
    return section("power", 0, WIDE, "together", group((3, 3), rest, *slots))


def pair(*slots, rounds=(2, 3), rest=(60, 90)):
    return group(rounds, rest, *slots)


def strength(*groups, budget=WIDE):
    return section("strength", 60, budget, "spread", *groups)


def finisher(*slots, rounds=(1, 2), rest=(30, 60)):
    return section("finisher", 45, WIDE, "spread", *(group(rounds, rest, s) for s in slots))


def draft(form, *sections, when="2026-09", title="Draft", visits=3, steps=None):
    made = month(when, title, form, *sections)
    made["visits_per_week"] = visits
    if form is None:
        del made["format"]
    if steps:
        made["stair"] = steps
    return made


def bundle(*blocks, gym=None, members=None, shelf=None):
    made = {"format": "blockwright-bundle", "version": 1, "gym": {"name": "Tide Mill", **(gym or {})}}
    if shelf:
        made["shelf"] = shelf
    made["blocks"] = list(blocks)
    if members:
        made["members"] = members
    return made


SQUAT = pair("front-rack-squat 5 @31X1 rir1-3 main", "goblet-squat 10-12 rir2-4")
HINGE = pair("dumbbell-romanian-deadlift 6 @31X1 rir1-3 main", "hip-bridge 12-15 rir2-4")
PUSH = pair("dumbbell-floor-press 5-6 @31X1 rir1-3 main", "press-up 10-12 rir2-4")
PULL = pair("bent-over-dumbbell-row 6 @21X1 rir1-3", "band-pull-down 12-15 rir2-4")
WHOLE = (warm("dead-bug 8", "lateral-lunge 8"), power("low-step-jump 5", "medicine-ball-chest-throw 5"),
         strength(SQUAT, HINGE, PUSH, PULL), finisher("bear-crawl 12-15m"))
BACK_SQUAT = pair("barbell-back-squat 5 rir1-3 main", "hip-bridge 12-15 rir2-4")
BENCH = pair("barbell-bench-press 5 rir1-3 main", "band-row 12-15 rir2-4")


def whole(minutes):
    return bundle(draft(LONG, *WHOLE), gym={"class": {"minutes": minutes}})


def of_strength(*groups, form=LONG, **more):
    return bundle(draft(form, strength(*groups)), **more)


def before(*blocks, now):
    """Months before September, the newest last."""
    first = 9 - len(blocks)
    return bundle(*(draft(form, strength(*groups), when=f"2026-{first + i:02}", title="Done")
                    for i, (form, *groups) in enumerate(blocks)), draft(now[0], strength(*now[1:])))


def stepped(*rir, rounds=None):
    steps = stair(*rir)
    for step, mode in zip(steps, rounds or ()):
        step["rounds"] = mode
    return bundle(draft(LONG, strength(SQUAT), steps=steps))


def own_exercise(**more):
    """One that this gym has put on its Shelf."""
    return {"id": "plank-row", "name": "Plank row", "patterns": {"horizontal-pull": 0.6, "trunk-stability": 0.4},
            "planes": {"sagittal": 1}, "muscles": {"upper-back": 1, "abdominals": 1}, "sides": "alternating",
            "roles": ["strength-long"], "demands": {"lumbar": 1}, "skill": 3, "measure": "reps",
            "seconds_per_rep": 3, "setup_seconds": 10, "needs": [], "load": "pair", "easier": ["band-row"],
            "harder": ["bent-over-dumbbell-row"], "swaps": [], "cues": ["Hips stay level"],
            "cautions": ["Set the bells wide"], **more}


def with_own(**more):
    return of_strength(pair("bent-over-dumbbell-row 6 @21X1", "plank-row 10-12"), shelf=[own_exercise(**more)])


def flagged(level):
    press = pair("half-kneeling-landmine-press 6-8", "press-up 10-12")
    return of_strength(press, members=[
        {"id": "m-001", "name": "Ida Marsh", "flags": [{"demand": "overhead", "level": level, "note": ""}],
         "active": True}])


def tank_room(lanes, minutes=60, rounds=(2, 3), exercise="light-sled-push 20-25m"):
    gym = {"class": {"minutes": minutes, "places": 10},
           "kit": [{"id": "sled-lane", "name": "Sled lane", "units": lanes, "claim": "set"},
                   {"id": "mat", "name": "Floor mat", "units": 10, "claim": "group"}]}
    work = section("finisher", 0, (0, 12), "together", group(rounds, (30, 60), exercise, "dead-bug 8"))
    return bundle(draft(None, work), gym=gym)


CASES = {
    "session-length": (whole(38), whole(60)),
    "section-length": (of_strength(SQUAT), of_strength(SQUAT)),
    "superset-work": (of_strength(pair("front-rack-squat 5 @31X1", "goblet-squat 35-40")),
                      of_strength(pair("front-rack-squat 5 @31X1", "goblet-squat 28-30"))),
    "power-rest": (bundle(draft(LONG, power("low-step-jump 5", rest=(30, 45)))),
                   bundle(draft(LONG, power("low-step-jump 5", rest=(60, 120))))),
    "strength-rest": (of_strength(pair("barbell-back-squat 5", rest=(60, 90)), form=STRAIGHT),
                      of_strength(pair("barbell-back-squat 5", rest=(120, 180)), form=STRAIGHT)),
    "power-dose": (bundle(draft(LONG, power("kettlebell-swing 12", "low-step-jump 7-8"))),
                   bundle(draft(LONG, power("kettlebell-swing 6", "low-step-jump 5-6")))),
    "power-first": (bundle(draft(LONG, warm("farmer-carry 20m"), strength(SQUAT), power("low-step-jump 5"))),
                    bundle(draft(LONG, warm("kettlebell-swing 8"), power("low-step-jump 5"), strength(SQUAT)))),
    "heavy-first": (of_strength(pair("goblet-squat 10-12 rir2-4", "front-rack-squat 5 rir1-3"),
                                pair("dumbbell-romanian-deadlift 5", "hip-bridge 6-8")),
                    of_strength(pair("front-rack-squat 5 rir1-3", "goblet-squat 10-12 rir2-4"),
                                pair("dumbbell-romanian-deadlift 5", "hip-bridge 8-10"))),
    "pairing": (of_strength(pair("front-rack-squat 5 main", "press-up 10-12"), pair("dumbbell-floor-press 5")),
                of_strength(pair("front-rack-squat 5 main", "goblet-lateral-lunge 10"), PUSH)),
    "overlap": (of_strength(pair("dumbbell-romanian-deadlift 6 main", "bent-over-dumbbell-row 8"),
                            pair("single-arm-dumbbell-row 8", "band-row 12"), form=OPPOSED),
                of_strength(pair("dumbbell-romanian-deadlift 6 main", "band-row 12"),
                            pair("single-arm-dumbbell-row 8", "band-row 12"), form=OPPOSED)),
    "pattern-missing": (of_strength(SQUAT, HINGE, PUSH), bundle(draft(LONG, *WHOLE))),
    "push-pull": (of_strength(PUSH, PUSH, PULL), of_strength(PUSH, pair("band-row 12", "band-pull-down 12"))),
    "knee-hip": (of_strength(SQUAT, SQUAT, pair("hip-bridge 12")), of_strength(SQUAT, pair("hip-bridge 12"))),
    "horizontal-vertical": (of_strength(PUSH, pair("bent-over-dumbbell-row 6", "band-row 12")),
                            of_strength(PUSH, PULL)),
    "one-sided": (of_strength(SQUAT, HINGE), of_strength(SQUAT, pair("goblet-reverse-lunge 8"))),
    "planes": (of_strength(SQUAT, pair("band-pull-apart 15")),
               of_strength(SQUAT, pair("band-pull-apart 15"), pair("goblet-lateral-lunge 8"))),
    "muscle-dose": (bundle(draft(LONG, strength(SQUAT, pair("hip-bridge 12", rounds=(2, 2))), visits=1)),
                    bundle(draft(LONG, strength(SQUAT, pair("hip-bridge 12", rounds=(2, 2))), visits=4))),
    "kit-short": (tank_room(0), tank_room(1)),
    "kit-queue": (tank_room(1), tank_room(6)),
    "overrun-chance": (tank_room(2, minutes=13), tank_room(4, minutes=25)),
    "third-round": (tank_room(1), tank_room(10)),
    "novelty": (before((LONG, SQUAT, HINGE, BENCH), now=(OPPOSED, SQUAT, PUSH, PULL)),
                before((LONG, SQUAT, HINGE, PUSH), now=(OPPOSED, SQUAT, PUSH, PULL))),
    "staleness": (before((FAST, SQUAT), (OPPOSED, SQUAT), (LONG, SQUAT), now=(LONG, SQUAT)),
                  before((OPPOSED, SQUAT), (TRIP, SQUAT), now=(LONG, SQUAT))),
    "carry-over": (before((LONG, SQUAT, HINGE), now=(OPPOSED, BACK_SQUAT, PUSH)),
                   before((LONG, SQUAT, HINGE), now=(OPPOSED, SQUAT, PUSH))),
    "stair-jump": (stepped(4, 4, 0, 0), stepped(4, 3, 1, 0)),
    "stair-shape": (stepped(3, 1, 2, 1, rounds=("high", "open", "open", "low")), stepped(2, 2, 2, 1)),
    "options": (with_own(easier=[]), with_own(easier=[], no_easier="Do the band row instead.")),
    "member-flag": (flagged("avoid"), flagged("limit")),
    "cue-missing": (with_own(cues=[]), with_own(cues=[], skill=2)),
    "caution-missing": (with_own(cautions=[]), with_own(cautions=[], skill=2)),
    "finisher-dose": (bundle(draft(LONG, finisher("air-bike-hard 5-6kcal"))),
                      bundle(draft(LONG, finisher("air-bike-hard 5-6kcal", rest=(75, 90))))),
}
CASES["section-length"][0]["blocks"][0]["sections"][0]["budget_seconds"] = [240, 360]
CASES["section-length"][1]["blocks"][0]["sections"][0]["budget_seconds"] = [240, 600]


def compact(value, indent=0):
    """JSON with a line for each part that is short enough, and one for each entry of what is not."""
    flat = json.dumps(value, ensure_ascii=False)
    if len(flat) + indent <= 110 or not isinstance(value, (dict, list)):
        return flat
    pad = " " * (indent + 1)
    if isinstance(value, list):
        return "[\n" + ",\n".join(pad + compact(v, indent + 1) for v in value) + "]"
    return "{\n" + ",\n".join(f"{pad}{json.dumps(k)}: {compact(v, indent + 1)}" for k, v in value.items()) + "}"


def texts():
    for rule, (fires, near) in CASES.items():
        for what, made in (("fires", fires), ("near", near)):
            yield TARGET / f"{rule}.{what}.bundle.json", compact(made) + "\n"


def main(arguments):
    if arguments not in ([], ["--check"]):
        sys.exit(__doc__)
    for path, text in texts():
        if not arguments:
            path.write_text(text, encoding="utf-8", newline="\n")
        elif not path.exists() or path.read_text("utf-8") != text:
            sys.exit(f"{path.name} is out of date: run tools/make-rule-fixtures.py")


if __name__ == "__main__":
    main(sys.argv[1:])
