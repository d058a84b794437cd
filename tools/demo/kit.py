# SPDX-License-Identifier: GPL-3.0-or-later
"""What Saltmarsh Boathouse owns: a narrow floor between two doors to the water, wall-folding racks,
the old rowing tank room for the sleds. Kit with no units is known to the Shelf and not owned."""


def item(id, name, units, claim="group", **more):
    return {"id": id, "name": name, "units": units, "claim": claim, **more}


KIT = [
    item("mat", "Floor mat", 14),
    item("mini-band", "Mini band", 14),
    item("long-band", "Long band", 16),
    item("kettlebell", "Kettlebell", 28, loads_kg={
        "8": 4, "10": 2, "12": 6, "16": 8, "20": 4, "24": 4}),
    item("dumbbell", "Dumbbell", 50, loads_kg={
        "4": 2, "5": 2, "6": 4, "7": 2, "8": 4, "9": 2, "10": 4, "12": 6, "14": 4, "16": 4, "18": 4,
        "20": 2, "22": 2, "24": 2, "26": 2, "28": 2, "32": 2}),
    item("barbell", "Barbell with plates", 8, bar_kg=20, plates_kg={
        "20": 12, "15": 4, "10": 16, "5": 16, "2.5": 16, "1.25": 12}),
    item("rack", "Squat rack", 6),
    item("trap-bar", "Trap bar", 3, bar_kg=25, plates_kg={
        "20": 8, "10": 6, "5": 6, "2.5": 6}),
    item("landmine", "Landmine", 4),
    item("pull-up-station", "Pull-up station", 2, "set"),
    item("rings", "Gymnastic rings", 2),
    item("straps", "Suspension straps", 4),
    item("bench", "Bench", 8),
    item("box", "Jump box", 8),
    item("low-step", "Low step", 8),
    item("medicine-ball", "Medicine ball", 12, loads_kg={"3": 4, "5": 4, "7": 4}),
    item("slam-ball", "Slam ball", 6, loads_kg={"6": 2, "8": 2, "10": 2}),
    item("sandbag", "Sandbag", 4, loads_kg={"10": 2, "20": 2}),
    item("slider", "Floor slider", 14),
    item("sled-lane", "Sled lane", 2, "set", bar_kg=30, plates_kg={"20": 6, "10": 4, "5": 4}),
    item("air-bike", "Air bike", 3, "set"),
    item("rowing-machine", "Rowing machine", 3, "set"),
    item("heavy-rope", "Heavy rope", 1, "set"),
    item("skipping-rope", "Skipping rope", 12),
    item("hurdle", "Hurdle", 0),
    item("cable-tower", "Cable tower", 1, "set"),
    item("band-tower", "Band tower", 0),
    item("dip-station", "Dip station", 0),
    item("plate", "Single plate", 10, loads_kg={"5": 4, "10": 4, "15": 2}),
    item("foam-roller", "Foam roller", 6),
    item("stability-ball", "Stability ball", 0),
]

GYM = {
    "name": "Saltmarsh Boathouse", "mass_unit": "kg", "paper": "A4",
    "class": {"minutes": 60, "places": 12, "opening_seconds": 180, "closing_seconds": 120},
    "section_weights": {"warm-up": 0.25, "power": 0.5, "strength": 1, "finisher": 0.5},
}

# An exercise of this gym's own, jotted on the Shelf the evening before: no cues and no options yet.
ROPE_SLED_PULL = {
    "id": "rope-sled-pull", "name": "Rope sled pull",
    "patterns": {"horizontal-pull": 0.8, "trunk-stability": 0.2}, "planes": {"sagittal": 1},
    "sides": "both", "muscles": {"upper-back": 1, "lats": 1, "biceps": 0.5, "forearms": 1, "glutes": 0.5},
    "roles": ["finisher"], "demands": {"grip": 2, "lumbar": 1, "breath": 2}, "skill": 2,
    "measure": "metres", "metres_per_second": 0.5, "setup_seconds": 20, "load": "sled",
    "needs": [[{"kit": "sled-lane", "count": 1}]],
    "easier": [], "harder": [], "swaps": ["backward-sled-drag", "band-row"], "cues": [], "cautions": [],
}
