# SPDX-License-Identifier: GPL-3.0-or-later
"""Planned times of a session, reckoned apart from the engine so that each can check the other.

Seconds as exact fractions; each set is rounded to whole milliseconds, halves up, before adding."""
from fractions import Fraction as F

MEASURES = ("reps", "seconds", "metres", "kcal")


def exact(number):
    return F(str(number))


def bounds(value):
    lo, hi = value if isinstance(value, list) else (value, value)
    return exact(lo), exact(hi)


def middle(value):
    return sum(bounds(value)) / 2


def pick(value, which):
    return middle(value) if which == "middle" else bounds(value)[which == "hi"]


def dose(slot):
    """The measure of a slot and its amount; None for an open slot."""
    return next(((m, slot[m]) for m in MEASURES if m in slot), None)


def work(slot, exercise, which):
    """Seconds of one set at pace 1, without set-up."""
    measure, value = dose(slot)
    amount = pick(value, which)
    k = 2 if exercise["sides"] == "each" else 1
    if measure == "reps":
        tempo = slot.get("tempo")
        each = sum(1 if c == "X" else int(c) for c in tempo) if tempo else exercise["seconds_per_rep"]
        seconds = amount * exact(each) * k
    elif measure == "seconds":
        seconds = amount * k
    elif measure == "metres":
        seconds = amount / exact(exercise["metres_per_second"])
    else:
        seconds = amount / exact(exercise["kcal_per_minute"]) * 60
    return F((seconds * 2000 + 1) // 2, 1000)


def rounds(group, mode):
    lo, hi = bounds(group["rounds"])
    return {"low": lo, "high": hi, "open": (lo + hi) / 2}[mode]


def round_work(group, shelf):
    """Work of one round of a group, set-ups left out."""
    return sum(work(s, shelf[s["exercise"]], "middle") for s in group["slots"] if s["exercise"])


def group_time(group, shelf, mode):
    setups = sum(exact(shelf[s["exercise"]]["setup_seconds"]) for s in group["slots"] if s["exercise"])
    n = rounds(group, mode)
    return n * (setups + round_work(group, shelf)) + (n - 1) * middle(group["rest_seconds"])


def section_time(section, shelf, mode):
    groups = section["groups"]
    between = sum(middle(g["rest_seconds"]) for g in groups[:-1])
    return exact(section["talk_seconds"]) + between + sum(group_time(g, shelf, mode) for g in groups)


def session_time(block, gym, shelf, week):
    """Planned seconds of the session in a week of the block, counted from 1."""
    mode = block["stair"][week - 1]["rounds"]
    ends = exact(gym["class"]["opening_seconds"]) + exact(gym["class"]["closing_seconds"])
    return ends + sum(section_time(s, shelf, mode) for s in block["sections"])
