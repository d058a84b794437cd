# SPDX-License-Identifier: GPL-3.0-or-later
"""What a lift weighs: how an exercise stands to the big lift of its family, and which loads the gym
can make. A pair counts with both its bells together; a barbell with its bar."""

# Family, and the single lift as a share of the family's (back squat, deadlift, bench press, row).
RATIO = {
    "goblet-box-squat": ("squat", 0.35), "goblet-squat": ("squat", 0.39),
    "front-rack-squat": ("squat", 0.54), "barbell-box-squat": ("squat", 0.93),
    "barbell-back-squat": ("squat", 1.0), "dumbbell-split-squat": ("squat", 0.42),
    "goblet-lateral-lunge": ("squat", 0.25),
    "kettlebell-deadlift": ("hinge", 0.4), "double-kettlebell-deadlift": ("hinge", 0.55),
    "dumbbell-romanian-deadlift": ("hinge", 0.5), "dumbbell-hip-thrust": ("hinge", 0.36),
    "barbell-hip-bridge": ("hinge", 0.92), "trap-bar-deadlift": ("hinge", 1.02),
    "dumbbell-floor-press": ("push", 0.76), "dumbbell-bench-press": ("push", 0.8),
    "incline-dumbbell-press": ("push", 0.68), "barbell-floor-press": ("push", 0.92),
    "barbell-bench-press": ("push", 1.0), "half-kneeling-press": ("push", 0.31),
    "single-arm-dumbbell-row": ("pull", 0.46), "chest-supported-row": ("pull", 0.72),
    "bent-over-dumbbell-row": ("pull", 0.78),
}
# Hung by the arms: what a member who can't do three in good form does instead.
CHINS = {"chin-up": "band-assisted-pull-up"}


def barbell_loads(kit):
    """The bar with any pairs of plates from stock."""
    loads = {0.0}
    for plate, count in kit["plates_kg"].items():
        pairs = min(count // 2, 4)
        loads = {x + 2 * n * float(plate) for x in loads for n in range(pairs + 1)}
    return sorted(kit["bar_kg"] + x for x in loads if x <= 180)


def bell_loads(kit, together):
    return {float(x) * together for x, n in kit["loads_kg"].items() if n >= together}


def loads_for(exercise, kit):
    """All loads in kg that one member can take to an exercise; empty when it is not counted in kg."""
    how = exercise["load"]
    if how == "barbell":
        bar = next(n["kit"] for n in exercise["needs"][0] if "bar_kg" in kit[n["kit"]])
        return barbell_loads(kit[bar])
    if how not in ("implement", "pair"):
        return []
    together = 2 if how == "pair" else 1
    loads = set()
    for ways in exercise["needs"]:
        for need in ways:
            if need["kit"] in ("kettlebell", "dumbbell"):
                loads |= bell_loads(kit[need["kit"]], together)
    return sorted(loads)


def fitting(loads, target, last):
    """The heaviest load up to a little over the target, at most a tenth or one step above the last."""
    below = [x for x in loads if x <= target * 1.04]
    if not below:
        return None
    best = below[-1]
    if last is None or best <= last * 1.1:
        return best
    steps = [x for x in loads if x > last]
    within = [x for x in loads if x <= last * 1.1]
    return max(within[-1] if within else loads[0], min(best, steps[0]))
