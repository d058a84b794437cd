# SPDX-License-Identifier: GPL-3.0-or-later
"""Says of a finished demo whether it is what it should be; lists every fault, an empty list is good."""
from .timing import MEASURES, dose, middle, round_work, section_time, session_time

RATE = {"reps": "seconds_per_rep", "metres": "metres_per_second", "kcal": "kcal_per_minute"}
WANTED = {"knee": ("squat", "lunge"), "hip": ("hinge",), "push": ("horizontal-push", "vertical-push"),
          "pull": ("horizontal-pull", "vertical-pull"), "trunk": ("trunk-stability", "rotation")}


def slots(block):
    return [(s, g, x) for s in block["sections"] for g in s["groups"] for x in g["slots"]]


def used(block):
    return [x["exercise"] for _, _, x in slots(block) if x["exercise"]]


def shelf_faults(shelf, kit):
    for e in shelf.values():
        for part in ("patterns", "planes"):
            if abs(sum(e[part].values()) - 1) > 1e-9:
                yield f"{e['id']}: {part} do not add up to 1"
        for other in e["easier"] + e["harder"] + e["swaps"]:
            if other not in shelf:
                yield f"{e['id']}: names {other}, which is not on the Shelf"
        for need in (n for way in e["needs"] for n in way):
            if need["kit"] not in kit:
                yield f"{e['id']}: needs {need['kit']}, which the kit does not know"


def owned(exercise, kit):
    """Can the gym serve it at all, to one member?"""
    ways = exercise["needs"]
    return not ways or any(all(kit[n["kit"]]["units"] >= n["count"] for n in way) for way in ways)


def slot_faults(block, shelf, kit):
    for section, _, slot in slots(block):
        where = f"{block['month']} {section['kind']} {slot['exercise']}"
        if slot["exercise"] is None:
            continue
        if slot["exercise"] not in shelf:
            yield f"{where}: not on the Shelf"
            continue
        e, measures = shelf[slot["exercise"]], [m for m in MEASURES if m in slot]
        if len(measures) != 1:
            yield f"{where}: needs exactly one dose"
        elif measures[0] in RATE and RATE[measures[0]] not in e and "tempo" not in slot:
            yield f"{where}: can't be timed in {measures[0]}"
        if not owned(e, kit):
            yield f"{where}: the gym has not the kit"
        fits = e["roles"] if section["kind"] != "strength" else [
            "strength" for r in e["roles"] if r.startswith("strength") or r == "power"]
        if section["kind"] not in fits:
            yield f"{where}: stands in a section it is not made for"


def time_faults(block, gym, shelf):
    for week in range(1, 5):
        seconds = session_time(block, gym, shelf, week)
        if seconds > gym["class"]["minutes"] * 60:
            yield f"{block['month']} week {week}: planned {float(seconds) / 60:.1f} min"
    for section in block["sections"]:
        for mode in ("low", "open"):
            planned = section_time(section, shelf, mode)
            lo, hi = section["budget_seconds"]
            if not lo <= planned <= hi:
                yield f"{block['month']} {section['kind']}: planned {float(planned):.0f} s, budget {lo}-{hi}"


def craft_faults(block, shelf):
    """What a coach would see at once in a finished month."""
    trained = {p for name in used(block) for p in shelf[name]["patterns"]}
    for name, patterns in WANTED.items():
        if not trained & set(patterns):
            yield f"{block['month']}: no {name}"
    for section, group, slot in slots(block):
        if slot["exercise"] is None:
            yield f"{block['month']}: an open slot in a finished month"
        if section["kind"] == "power" and middle(dose(slot)[1]) > 6:
            yield f"{block['month']}: {slot['exercise']} is long for power"
    for section, group in ((s, g) for s in block["sections"] for g in s["groups"]):
        work = round_work(group, shelf)
        if section["kind"] == "strength" and len(group["slots"]) > 1 and not 60 <= work <= 120:
            yield f"{block['month']}: {group['slots'][0]['exercise']} works {float(work):.0f} s a round"


def rotation_faults(blocks):
    """At most three new exercises a month after the first, no main lift for more than three months."""
    seen, streak, last = set(used(blocks[0])), {}, None
    for block in blocks:
        new = set(used(block)) - seen
        if len(new) > 3:
            yield f"{block['month']}: {len(new)} new exercises: {', '.join(sorted(new))}"
        seen |= new
        if block["format"] == last:
            yield f"{block['month']}: {last} two months in a row"
        last = block["format"]
        mains = {x["exercise"] for _, _, x in slots(block) if x.get("main")}
        if streak and not mains & set(streak):
            yield f"{block['month']}: no main lift is carried over"
        streak = {m: streak.get(m, 0) + 1 for m in mains}
        for name in (m for m, n in streak.items() if n > 3):
            yield f"{block['month']}: {name} is a main lift for the {streak[name]}th month"


def result_faults(results, members, shelf):
    known, seen = {m["id"] for m in members}, set()
    for r in results:
        key = (r["member"], r["date"], r["exercise"], r["set"])
        if key in seen:
            yield f"written twice: {key}"
        seen.add(key)
        if r["member"] not in known or r["exercise"] not in shelf:
            yield f"nobody or nothing: {key}"


def faults(gym, kit, shelf, blocks, members, results):
    kit = {k["id"]: k for k in kit}
    found = list(shelf_faults(shelf, kit)) + list(rotation_faults(blocks))
    for block in blocks:
        found += slot_faults(block, shelf, kit)
    for block in blocks[:-1]:
        found += list(time_faults(block, gym, shelf)) + list(craft_faults(block, shelf))
    opened = sum(x["exercise"] is None for _, _, x in slots(blocks[-1]))
    if opened != 2:
        found.append(f"the draft has {opened} open slots")
    return found + list(result_faults(results, members, shelf))
