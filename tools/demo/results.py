# SPDX-License-Identifier: GPL-3.0-or-later
"""Plays the year: who came on which day and what they wrote on their cards.

Draws come from one generator a member, seeded with the name; only plain sums and products of its
uniform numbers are used, so that every machine writes the same file."""
from datetime import date, timedelta
from random import Random

from .lifts import CHINS, RATIO, fitting, loads_for
from .members import MEMBERS, member_id

FIRST, LAST = date(2025, 10, 1), date(2026, 11, 21)
CLOSED = {date(2025, 12, d) for d in (24, 25, 26, 31)} | {date(2026, 1, d) for d in (1, 2)} | {
    date(2026, 4, 3), date(2026, 4, 6), date(2026, 5, 4), date(2026, 8, 31)} | {
    date(2026, 8, d) for d in range(10, 15)}  # the floor is oiled


def normal(rng):
    """Near enough a standard normal draw: twelve uniform ones."""
    return sum(rng.random() for _ in range(12)) - 6


def between(rng, lo, hi):
    return lo + int(rng.random() * (hi - lo + 1))


def week_of(day):
    """Week of the block: the days of the month by sevens, the last ones with week 4."""
    return min(4, (day.day + 6) // 7)


def away_days(rng, member):
    """Two or three spells away, and the quiet days around New Year for most."""
    days = set()
    for _ in range(between(rng, 2, 3)):
        start = FIRST + timedelta(days=between(rng, 20, 400))
        days |= {start + timedelta(days=n) for n in range(between(rng, 6, 17))}
    if rng.random() < 0.6:
        days |= {date(2025, 12, 20) + timedelta(days=n) for n in range(16)}
    return days


def loaded_slots(block):
    """Slots of the strength sections whose sets are written down."""
    for section in block["sections"]:
        if section["kind"] == "strength":
            for group in section["groups"]:
                for slot in group["slots"]:
                    if slot["exercise"] in RATIO or slot["exercise"] in CHINS:
                        yield group, slot


def pair(value):
    return value if isinstance(value, list) else [value, value]


class Lifter:
    """One member through the year: how strong today, what the last card said."""

    def __init__(self, number, member, shelf, kit):
        self.id, self.member = member_id(number), member
        self.shelf, self.kit = shelf, kit
        self.rng = Random(f"saltmarsh {member.name}")
        self.away = away_days(self.rng, member)
        self.last_load, self.sessions, self.bent = {}, {}, {}
        self.last_visit, self.rust = None, 0.0

    def comes(self, day):
        m = self.member
        here = max(m.joined, FIRST) <= day <= min(m.left, LAST)
        wants = str(day.weekday()) in m.days and self.rng.random() < m.keen
        return here and wants and day not in CLOSED and day not in self.away

    def arrive(self, day):
        """A long gap costs a little; it is back after a few visits."""
        gap = (day - self.last_visit).days if self.last_visit else 0
        self.rust = self.rust * 0.7 + (min(0.1, 0.005 * (gap - 6)) if gap >= 9 else 0)
        self.last_visit = day

    def growth(self, day):
        years = (day - self.member.joined).days / 365
        gained = 1 + self.member.gain * 1.6 * years / (years + 0.6)
        weeks = max(0, (day - self.member.flagged).days / 7)
        return gained * (1 - self.member.easing * weeks)

    def allowed(self, exercise, day):
        """Skill, and the flags from the day on which they count."""
        longer = (day - self.member.joined).days > 180
        if exercise["skill"] > self.member.skill + (1 if longer and self.member.skill == 1 else 0):
            return False
        flags = self.member.flags if day >= self.member.flagged else []
        demands = exercise["demands"]
        return all(demands.get(f["demand"], 0) < (1 if f["level"] == "avoid" else 3) for f in flags)

    def choices(self, exercise_id):
        exercise = self.shelf[exercise_id]
        wide = exercise["easier"] + exercise["swaps"]
        wide += [x for e in exercise["easier"] for x in self.shelf[e]["easier"]]
        return [exercise_id] + [x for x in wide if x in RATIO]

    def best_single(self, exercise_id, day):
        """What they could lift once today, before the luck of the day."""
        family, ratio = RATIO[exercise_id]
        fresh = (0.94, 0.97, 0.99)[min(2, self.sessions.get(exercise_id, 0) // 2)]
        own = self.bent.setdefault(exercise_id, 1 + 0.04 * normal(self.rng))
        return getattr(self.member, family) * ratio * own * self.growth(day) * (1 - self.rust) * fresh

    def choose(self, exercise_id, day, middle, reserve, taken):
        """The exercise they do and the load for it; None when nothing on the floor fits. Taken: the
        others of the session, which nobody does a second time instead."""
        for choice in self.choices(exercise_id):
            if choice in taken or not self.allowed(self.shelf[choice], day):
                continue
            target = self.best_single(choice, day) / (1 + (middle + reserve) / 30)
            load = fitting(loads_for(self.shelf[choice], self.kit), target,
                           self.last_load.get(choice))
            if load is not None:
                return choice, load
        return None

    def card(self, day, block):
        """All the sets written down on a day."""
        step = block["stair"][week_of(day) - 1]
        self.arrive(day)
        session = {slot["exercise"] for _, slot in loaded_slots(block)}
        for group, slot in loaded_slots(block):
            if self.rng.random() > (0.95 if slot.get("main") else 0.6):
                continue
            low, high = pair(group["rounds"])
            rounds = low if step["rounds"] == "low" else between(self.rng, low, high)
            if slot["exercise"] in CHINS:
                yield from self.hang(day, slot, step["rir"])
            else:
                yield from self.lift(day, slot, step["rir"], rounds,
                                     session - {slot["exercise"]})

    def lift(self, day, slot, reserve, rounds, taken):
        lo, hi = pair(slot["reps"])
        reserve = max(reserve, pair(slot["effort_rir"])[0])
        chosen = self.choose(slot["exercise"], day, (lo + hi) / 2, reserve, taken)
        if not chosen:
            return
        exercise, load = chosen
        able = 30 * (self.best_single(exercise, day) * (1 + 0.02 * normal(self.rng)) / load - 1)
        self.last_load[exercise] = load
        self.sessions[exercise] = self.sessions.get(exercise, 0) + 1
        yield self.row(day, exercise, 1, able, (lo, hi), reserve, load)
        if rounds > 1 and self.rng.random() < 0.3:
            yield self.row(day, exercise, rounds, able * 0.94, (lo, hi), reserve, load)

    def hang(self, day, slot, reserve):
        """Chin-ups: as many as the dose allows, on the bar or with a band."""
        able = self.member.chins + self.member.gain * 20 * (self.growth(day) - 1) + normal(self.rng) * 0.4
        name = slot["exercise"]
        allowed = self.allowed(self.shelf[name], day)
        if able < 3.5 or not allowed:
            name, able = CHINS[name], able + 6
        if not self.allowed(self.shelf[name], day):
            return
        yield self.row(day, name, 1, able, pair(slot["reps"]), min(reserve, 3), None)

    def row(self, day, exercise, number, able, dose, reserve, load):
        reps = min(max(round(able - reserve), dose[0]), dose[1])
        reps = min(reps, max(1, int(able)))
        left = min(6, max(0, round(able - reps + 0.3 * normal(self.rng))))
        known = self.rng.random() > 0.04
        weight = int(load) if load is not None and load == int(load) else load
        return {"member": self.id, "date": day.isoformat(), "exercise": exercise, "set": number,
                "reps": reps, "rir": left if known else None, "load_kg": weight}


def play(blocks, shelf, kit):
    """All results, by date, then member, in the order of the card."""
    months = {b["month"]: b for b in blocks}
    lifters = [Lifter(n, m, shelf, kit) for n, m in enumerate(MEMBERS, 1)]
    rows, day = [], FIRST
    while day <= LAST:
        for lifter in lifters:
            if lifter.comes(day):
                rows += lifter.card(day, months[day.isoformat()[:7]])
        day += timedelta(days=1)
    return rows
