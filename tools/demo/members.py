# SPDX-License-Identifier: GPL-3.0-or-later
"""The members of Saltmarsh Boathouse. Every name was put together for this file.

Strength is what they could lift once, in kg, in autumn 2025 or on joining: a back squat, a deadlift,
a bench press, a row; then chin-ups in a row and how much a year of training adds (0.1 = a tenth)."""
from dataclasses import dataclass, field
from datetime import date


@dataclass
class Member:
    name: str
    squat: float
    hinge: float
    push: float
    pull: float
    chins: float
    gain: float
    days: str  # the weekdays of their habit, Monday 0
    keen: float = 0.86  # the share of those days on which they come
    skill: int = 2
    joined: date = date(2025, 10, 1)
    left: date = date(2099, 1, 1)
    flags: list = field(default_factory=list)
    flagged: date = date(2099, 1, 1)  # from when they train around the flags
    easing: float = 0.0  # share of strength given up a week from then on


def flag(demand, level, note):
    return {"demand": demand, "level": level, "note": note}


MEMBERS = [
    Member("Marit Oyelaran", 82, 104, 47, 50, 5, 0.09, "024"),
    Member("Dario Fenwick-Sato", 128, 158, 92, 90, 11, 0.05, "0245", skill=3),
    Member("Anouk Brandsma", 64, 80, 36, 40, 1, 0.15, "135", skill=1),
    Member("Tobias Marchwood", 104, 128, 76, 74, 6, 0.08, "024"),
    Member("Leila Achterberg", 71, 92, 39, 43, 2, 0.12, "13", 0.9),
    Member("Sunil Ferreira", 96, 118, 70, 69, 4, 0.11, "135"),
    Member("Greta Okonjo", 76, 98, 42, 45, 3, 0.08, "024",
           flags=[flag("impact", "avoid", "Ankle. Steps and carries instead of jumps; physio sees her.")],
           flagged=date(2026, 9, 14)),
    Member("Pavel Nakamura", 112, 140, 80, 79, 7, 0.06, "024",
           flags=[flag("overhead", "limit", "Left shoulder is fine up to eye level.")],
           flagged=date(2026, 2, 2)),
    Member("Imani Lindqvist", 80, 103, 45, 49, 4, 0.07, "13", 0.82,
           flags=[flag("impact", "avoid", "Expecting in spring. Her midwife knows the plan."),
                  flag("breath", "limit", "Able to talk throughout.")],
           flagged=date(2026, 8, 10), easing=0.008),
    Member("Conall Petrov", 118, 146, 84, 82, 8, 0.06, "135", skill=3),
    Member("Rosalind Tanaka", 67, 86, 37, 41, 1, 0.1, "024", 0.8,
           flags=[flag("overhead", "avoid", "Sore right shoulder; rows and floor presses are fine.")],
           flagged=date(2026, 10, 5)),
    Member("Mateus Haugen", 138, 172, 101, 97, 13, 0.04, "0245", 0.8, skill=3),
    Member("Farah Kowalczyk", 58, 74, 32, 36, 0, 0.2, "13", 0.9, skill=1),
    Member("Hugo Adebayo", 92, 116, 73, 70, 5, 0.07, "024",
           flags=[flag("knee", "limit", "Right knee; box height by feel.")], flagged=date(2026, 1, 12)),
    Member("Wen Castellanos", 69, 88, 38, 42, 2, 0.13, "135"),
    Member("Bronagh Iyer", 73, 90, 41, 44, 2, 0.09, "02", 0.92,
           flags=[flag("lumbar", "limit", "Back after long drives. Asks before heavy pulls.")],
           flagged=date(2026, 3, 2)),
    Member("Emre Vasquez-Hall", 108, 134, 78, 77, 6, 0.08, "135", 0.78),
    Member("Noor Whitlock", 54, 70, 30, 34, 0, 0.22, "024", skill=1, joined=date(2026, 1, 5)),
    Member("Aleksi Duarte", 99, 122, 71, 71, 5, 0.12, "135", joined=date(2026, 1, 8)),
    Member("Priya Sandoval", 78, 100, 44, 47, 3, 0.1, "024"),
    Member("Jonas Mutasa", 110, 136, 82, 80, 8, 0.06, "24", 0.9, left=date(2026, 5, 22)),
    Member("Celeste Varadi", 48, 62, 27, 31, 0, 0.18, "13", 0.94, skill=1),
    Member("Kofi Rasmussen", 122, 150, 88, 86, 9, 0.07, "0135", 0.75, joined=date(2026, 3, 4)),
    Member("Ines Halloran", 62, 80, 35, 38, 1, 0.14, "135", left=date(2026, 8, 21)),
    Member("Davit Moreau", 88, 110, 66, 64, 3, 0.16, "024", 0.83, skill=1, joined=date(2026, 4, 13)),
    Member("Zofia Tamihana", 66, 84, 36, 40, 1, 0.17, "135", 0.88, skill=1, joined=date(2026, 9, 7)),
]


def member_id(number):
    return f"m-{number:03}"


def as_bundle():
    return [{"id": member_id(i), "name": m.name, "flags": m.flags, "active": m.left.year > 2026}
            for i, m in enumerate(MEMBERS, 1)]
