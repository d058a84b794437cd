# SPDX-License-Identifier: GPL-3.0-or-later
"""A month as a coach jots it down, turned into the block of a bundle.

A slot is one line: exercise, dose, then in any order @tempo, rir, main, locked, and a note after "#".
    front-rack-squat 5 @31X1 rir1-3 main # Heels heavy.
Doses: 5  5-6  30-40s  30m  8-10kcal. An open slot: ? role pattern/pattern.
"""
import re

DOSE = re.compile(r"^(\d+)(?:-(\d+))?(s|m|kcal)?$")
UNIT = {None: "reps", "s": "seconds", "m": "metres", "kcal": "kcal"}


def span(lo, hi):
    """One number when both are the same, else [lo, hi]."""
    return lo if lo == hi else [lo, hi]


def slot(line):
    words, _, note = line.partition("#")
    words = words.split()
    if words[0] == "?":
        made = {"exercise": None, "role": words[1], "patterns": words[2].split("/")}
    else:
        lo, hi, unit = DOSE.match(words[1]).groups()
        made = {"exercise": words[0], UNIT[unit]: span(int(lo), int(hi or lo))}
        for word in words[2:]:
            made.update(extra(word))
    if note.strip():
        made["note"] = note.strip()
    return made


def extra(word):
    if word.startswith("@"):
        return {"tempo": word[1:]}
    if word.startswith("rir"):
        lo, _, hi = word[3:].partition("-")
        return {"effort_rir": span(int(lo), int(hi or lo))}
    if word in ("main", "locked"):
        return {word: True}
    raise ValueError(f"not a word of the shorthand: {word}")


def group(rounds, rest, *lines):
    return {"rounds": span(*rounds), "rest_seconds": span(*rest), "slots": [slot(x) for x in lines]}


def section(kind, talk, budget_minutes, start, *groups):
    lo, hi = budget_minutes
    return {"kind": kind, "talk_seconds": talk, "budget_seconds": [round(lo * 60), round(hi * 60)],
            "start": start, "groups": list(groups)}


def stair(*rir):
    """The usual four weeks; rir of each week where the month differs from 4, 3, 2, 1."""
    rir = rir or (4, 3, 2, 1)
    steps = zip(("low", "open", "open", "open"), rir, ("learn", "build", "build", "challenge"))
    return [{"rounds": r, "rir": q, "intent": i} for r, q, i in steps]


def month(when, title, form, *sections, rir=()):
    return {"month": when, "title": title, "format": form, "visits_per_week": 3,
            "sections": list(sections), "stair": stair(*rir)}
