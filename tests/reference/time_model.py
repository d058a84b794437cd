#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The times of a bundle's months, computed a second time.

Written from the definition of a session's time (in short at the head of
include/blockwright/time/timing.hpp), in exact fractions, and sharing nothing with the engine. Prints one JSON list, an entry a bundle; times in whole milliseconds, halves up,
as [short, planned, long].

    python3 time_model.py BUNDLE.json ...
"""
import json
import sys
from fractions import Fraction as F

SECOND = F(1000)


def halves_up(x):
    return (2 * x.numerator + x.denominator) // (2 * x.denominator)


def ends(value):
    return (F(value[0]), F(value[1])) if isinstance(value, list) else (F(value), F(value))


def per_rep(slot, exercise):
    tempo = slot.get("tempo")
    if tempo:
        return F(sum(1 if c in "Xx" else int(c) for c in tempo))
    return F(exercise.get("seconds_per_rep", 0))


def set_seconds(kind, amount, slot, exercise):
    sides = 2 if exercise.get("sides", "both") == "each" else 1
    if kind == "reps":
        return amount * per_rep(slot, exercise) * sides
    if kind == "seconds":
        return amount * sides
    pace = F(exercise.get("metres_per_second" if kind == "metres" else "kcal_per_minute", 0))
    if pace == 0:
        return F(0)
    return amount / pace if kind == "metres" else amount / pace * 60


def slot_times(slot, shelf):
    exercise = shelf.get(slot.get("exercise"))
    kinds = [k for k in ("reps", "seconds", "metres", "kcal") if k in slot]
    if exercise is None or not kinds:
        return [F(0)] * 3
    lo, hi = ends(slot[kinds[0]])
    setup = F(exercise.get("setup_seconds", 0)) * SECOND
    return [setup + halves_up(set_seconds(kinds[0], amount, slot, exercise) * SECOND)
            for amount in (lo, (lo + hi) / 2, hi)]


def group_times(group, shelf, mode):
    one = [sum(column) for column in zip(*[slot_times(s, shelf) for s in group["slots"]])] or [F(0)] * 3
    lo, hi = ends(group.get("rounds", 1))
    count = [lo, {"low": lo, "high": hi, "open": (lo + hi) / 2}[mode], hi]
    return [n * work + (n - 1) * rest for n, work, rest in zip(count, one, rests(group))], one[1]


def rests(group):
    lo, hi = (x * SECOND for x in ends(group.get("rest_seconds", 0)))
    return [lo, (lo + hi) / 2, hi]


def section_times(section, shelf, mode):
    total = [F(section.get("talk_seconds", 0)) * SECOND] * 3
    groups = []
    before = None
    for group in section.get("groups", []):
        if before is not None:
            total = [t + r for t, r in zip(total, rests(before))]
        times, one_round = group_times(group, shelf, mode)
        groups.append({"total": [halves_up(t) for t in times], "round": halves_up(one_round)})
        total = [t + g for t, g in zip(total, times)]
        before = group
    return total, groups


def session_times(gym, shelf, block, mode):
    hall = gym.get("class", {})
    around = F(hall.get("opening_seconds", 0)) + F(hall.get("closing_seconds", 0))
    total = [around * SECOND] * 3
    sections = []
    for section in block.get("sections", []):
        times, groups = section_times(section, shelf, mode)
        sections.append({"total": [halves_up(t) for t in times], "groups": groups})
        total = [a + b for a, b in zip(total, times)]
    return {"session": [halves_up(t) for t in total], "sections": sections}


def bundle_times(path):
    with open(path, encoding="utf-8") as file:
        bundle = json.load(file, parse_float=F)
    shelf = {e["id"]: e for e in bundle.get("shelf", [])}
    return {block["month"]: [session_times(bundle["gym"], shelf, block, step["rounds"])
                             for step in block["stair"]]
            for block in bundle["blocks"]}


if __name__ == "__main__":
    json.dump([bundle_times(path) for path in sys.argv[1:]], sys.stdout)
