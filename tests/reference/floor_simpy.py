#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The simulated class a second time, as processes of SimPy: one a member, who do, wait and rest.

    floor_simpy.py scenarios.json > answers.json

A scenario is {"bundle": file, "week": W, "members": N, "start": null | "together" | "spread" | [heads],
"steady": bool, "runs": R, "seed": S, "pace_sigma": x, "set_sigma": y}; the bundle's last month is played.
Times are whole milliseconds. Ends with 77 when SimPy is not there. SimPy orders what happens at the same
time by a priority, which is where the rules for the same millisecond are: give-backs before turns, and
each by member number.
"""
import json
import math
import random
import sys
import time
from fractions import Fraction as F

try:
    import simpy
except ImportError:
    sys.stderr.write("SimPy 3 is not installed (Debian: python3-simpy3); nothing was compared.\n")
    sys.exit(77)

GIVE_BACK, TURN = 0, 1


def halves_up(x):
    return math.floor(F(x) + F(1, 2))


def span(value):
    return (F(value[0]), F(value[1])) if isinstance(value, list) else (F(value), F(value))


class Dice:
    """Draws of a class; none of them when it is steady."""

    def __init__(self, scenario, run):
        self.steady = scenario["steady"]
        self.random = random.Random(f"{scenario['seed']}/{run}")
        self.pace_sigma = float(scenario.get("pace_sigma", 0))
        self.set_sigma = float(scenario.get("set_sigma", 0))

    def factor(self, sigma):
        return F(1) if self.steady else F(math.exp(sigma * self.random.gauss(0, 1)))

    def between(self, lo, hi):
        return lo + (hi - lo) * (F(1, 2) if self.steady else F(self.random.random()))

    def whole(self, lo, hi):
        return (lo + hi) / 2 if self.steady else F(self.random.randint(int(lo), int(hi)))


class Gym:
    """Kit: what is free, who waits in line, who was how long short of what."""

    def __init__(self, env, units, members):
        self.env, self.units = env, units
        self.free = dict(units)
        self.line = []  # [arrival, member, attempt, event]
        self.waits = [0] * members
        self.kit_waits = {k: [0] * members for k in units}
        self.taken = {k: 0 for k in units}
        self.since = {k: 0 for k in units}

    def change(self, kit, by):
        self.taken[kit] += (self.units[kit] - self.free[kit]) * (self.env.now - self.since[kit])
        self.since[kit] = self.env.now
        self.free[kit] -= by
        assert 0 <= self.free[kit] <= self.units[kit]

    def fits(self, needs):
        return all(n <= self.free.get(kit, 0) for kit, n in needs.items())

    def take(self, needs):
        for kit, n in needs.items():
            self.change(kit, n)

    def ask(self, member, attempt, short):
        """A process step: until attempt() gives something. short() names the kit to blame."""
        got = attempt()
        if got is None:
            blamed, start = short(), self.env.now
            granted = self.env.event()
            self.line.append((start, member.number, attempt, granted))
            self.line.sort(key=lambda request: request[:2])
            got = yield granted
            self.waits[member.number] += self.env.now - start
            for kit in blamed:
                self.kit_waits[kit][member.number] += self.env.now - start
        return got

    def give_back(self, needs):
        for kit, n in needs.items():
            self.change(kit, -n)
        for request in list(self.line):
            got = request[2]()
            if got is not None:
                self.line.remove(request)
                event = request[3]
                event._ok, event._value = True, got
                self.env.schedule(event, priority=priority(TURN, request[1]))


def priority(phase, number):
    return 10 + 1000 * phase + number


def at(env, delay, phase, number):
    event = env.event()
    event._ok, event._value = True, None
    env.schedule(event, priority=priority(phase, number), delay=delay)
    return event


def counted(needs, claims, claim):
    total = {}
    for need in needs:
        if claims.get(need["kit"]) == claim:
            total[need["kit"]] = total.get(need["kit"], 0) + need.get("count", 1)
    return total


class Slot:
    def __init__(self, slot, exercise, bundle):
        kit = {k["id"]: k for k in bundle["gym"]["kit"]}
        claims = {k: v["claim"] for k, v in kit.items()}
        self.slot, self.exercise = slot, exercise
        self.setup = halves_up(F(exercise.get("setup_seconds", 0)) * 1000)
        needs = exercise.get("needs", [])
        self.fixed = any(claims.get(n["kit"]) == "group" for one in needs for n in one)
        self.ways = []
        for one in needs:
            every = {}
            for n in one:
                every[n["kit"]] = every.get(n["kit"], 0) + n.get("count", 1)
            if all(n <= kit.get(k, {"units": 0})["units"] for k, n in every.items()):
                self.ways.append({c: counted(one, claims, c) for c in ("group", "set")})

    def work(self, dice):
        """Milliseconds at pace 1, unrounded."""
        slot, e = self.slot, self.exercise
        k = 2 if e.get("sides", "both") == "each" else 1
        if "reps" in slot:
            each = F(e["seconds_per_rep"]) if "seconds_per_rep" in e else F(0)
            if "tempo" in slot:
                each = F(sum(1 if c == "X" else int(c) for c in slot["tempo"]))
            return dice.whole(*span(slot["reps"])) * each * k * 1000
        if "seconds" in slot:
            return dice.between(*span(slot["seconds"])) * k * 1000
        if "metres" in slot:
            amount = dice.between(*span(slot["metres"]))
            return amount / F(e["metres_per_second"]) * 1000 if "metres_per_second" in e else F(0)
        amount = dice.between(*span(slot["kcal"]))
        return amount / F(e["kcal_per_minute"]) * 60_000 if "kcal_per_minute" in e else F(0)


class Group:
    def __init__(self, group, bundle, mode):
        shelf = {e["id"]: e for e in bundle["shelf"]}
        lo, hi = (int(x) for x in span(group["rounds"]))
        self.lo, self.hi = {"low": (lo, lo), "high": (hi, hi), "open": (lo, hi)}[mode]
        self.rest = [F(x) * 1000 for x in span(group["rest_seconds"])]
        self.slots = [Slot(s, shelf[s["exercise"]], bundle)
                      for s in group["slots"] if s.get("exercise") in shelf]


class Member:
    def __init__(self, number, env, gym, dice):
        self.number, self.env, self.gym, self.dice = number, env, gym, dice
        self.pace = dice.factor(dice.pace_sigma)

    def later(self, delay, phase=TURN):
        return at(self.env, delay, phase, self.number)

    def enter(self, group):
        """Gives the way of each slot that keeps kit, and what is held of each kit item."""
        missing = []

        def attempt():
            ways, held = {}, {}
            for s in group.slots:
                if not s.fixed:
                    continue
                for way in s.ways:
                    wanted = {k: max(held.get(k, 0), n) for k, n in way["group"].items()}
                    if all(wanted[k] <= self.gym.free[k] for k in wanted):
                        held.update(wanted)
                        ways[s] = way
                        break
                else:
                    missing[:] = [s]
                    return None
            self.gym.take(held)
            return ways, held

        def short():
            preferred = missing[0].ways[0]["group"]
            return [k for k, n in preferred.items() if n > self.gym.free[k]]

        return self.gym.ask(self, attempt, short)

    def do(self, slot, ways):
        choices = [ways[slot]] if slot in ways else slot.ways
        takes = {}

        def attempt():
            for way in choices:
                if self.gym.fits(way["set"]):
                    self.gym.take(way["set"])
                    takes["end"] = self.env.now + duration
                    return way["set"]
            return None

        def short():
            return [k for k, n in choices[0]["set"].items() if n > self.gym.free[k]]

        work = slot.work(self.dice) * self.pace * self.dice.factor(self.dice.set_sigma)
        duration = slot.setup + halves_up(work)
        if not choices:
            yield self.later(duration)
            return
        got = yield from self.gym.ask(self, attempt, short)
        if got:
            yield self.later(takes["end"] - self.env.now, GIVE_BACK)
            self.gym.give_back(got)
            yield self.later(0)
        else:
            yield self.later(takes["end"] - self.env.now)

    def section(self, groups, start, budget, rounds):
        begin = self.env.now
        yield self.later(0)
        for k in range(1, len(groups) + 1):
            at_group = (start + k - 1) % len(groups)
            group = groups[at_group]
            ways, held = yield from self.enter(group)
            done = 0
            while True:
                from_ = self.env.now
                for slot in group.slots:
                    yield from self.do(slot, ways)
                done += 1
                rest = halves_up(self.dice.between(*group.rest))
                last = self.env.now - from_
                if done < group.lo or (done < group.hi and (
                        budget is None or
                        self.env.now + rest + last <= begin + F(k, len(groups)) * budget)):
                    yield self.later(rest)
                else:
                    break
            rounds[at_group][self.number] = done
            self.gym.give_back(held)
            if k < len(groups):
                yield self.later(rest)


def starts(rule, groups, members):
    if groups < 2 or rule == "together":
        return [0] * members
    if rule == "spread":
        return [i % groups for i in range(members)]
    order = [g for g, n in enumerate(rule) for _ in range(n)]
    return [order[i % len(order)] for i in range(members)]


def rule_of(section, scenario, groups):
    asked = scenario.get("start")
    if isinstance(asked, str) or (isinstance(asked, list) and len(asked) == groups):
        return asked
    return section.get("start", "together")


def play(scenario, bundle, run):
    block = max(bundle["blocks"], key=lambda b: b["month"])
    mode = block["stair"][min(scenario["week"], len(block["stair"])) - 1]["rounds"]
    hall = bundle["gym"]["class"]
    members = scenario["members"]
    env = simpy.Environment()
    gym = Gym(env, {k["id"]: k["units"] for k in bundle["gym"]["kit"]}, members)
    dice = Dice(scenario, run)
    people = [Member(i, env, gym, dice) for i in range(members)]
    ends, all_rounds = [], []

    def lesson():
        yield env.timeout(halves_up(F(hall["opening_seconds"]) * 1000))
        for section in block["sections"]:
            talk = halves_up(F(section.get("talk_seconds", 0)) * 1000)
            yield env.timeout(talk)
            groups = [Group(g, bundle, mode) for g in section["groups"]]
            budget = None
            if "budget_seconds" in section:
                budget = span(section["budget_seconds"])[1] * 1000 - talk
            where = starts(rule_of(section, scenario, len(groups)), len(groups), members)
            rounds = [[0] * members for _ in groups]
            yield simpy.AllOf(env, [env.process(p.section(groups, where[p.number], budget, rounds))
                                    for p in people])
            assert not gym.line and gym.free == gym.units
            ends.append(env.now)
            all_rounds.append(rounds)

    env.process(lesson())
    env.run()
    finish = env.now + halves_up(F(hall["closing_seconds"]) * 1000)
    return {"finish": finish, "ends": ends, "rounds": all_rounds, "waits": gym.waits,
            "kit_waits": gym.kit_waits, "taken": gym.taken}


def answer(scenario):
    with open(scenario["bundle"], encoding="utf-8") as file:
        bundle = json.load(file, parse_float=F)
    begin = time.process_time()
    runs = [play(scenario, bundle, run) for run in range(scenario["runs"])]
    return {"runs": runs, "seconds": time.process_time() - begin}


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as source:
        json.dump([answer(s) for s in json.load(source)], sys.stdout)
