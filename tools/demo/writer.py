# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the bundle so that a person can read it: one slot, member or result a line."""
import json
from pathlib import Path


def line(value):
    return json.dumps(value, ensure_ascii=False)


def rows(values, indent):
    pad = "\n" + " " * indent
    return "[" + pad + ("," + pad).join(line(v) for v in values) + "]"


def head(value, without):
    """An object's own line, left open for the part that is written below it."""
    return line({k: v for k, v in value.items() if k not in without})[:-1]


def group(value):
    return head(value, ("slots",)) + ', "slots": ' + rows(value["slots"], 6) + "}"


def section(value):
    groups = ",\n     ".join(group(g) for g in value["groups"])
    return head(value, ("groups",)) + ', "groups": [\n     ' + groups + "]}"


def block(value):
    sections = ",\n    ".join(section(s) for s in value["sections"])
    return (head(value, ("sections", "stair")) + ',\n   "sections": [\n    ' + sections + "],\n"
            '   "stair": ' + line(value["stair"]) + "}")


def gym(value, kit):
    return head(value, ()) + ',\n  "kit": ' + rows(kit, 3) + "}"


def shelf_text(folder, names):
    """The exercises of the shipped Shelf exactly as its files write them."""
    parts = []
    for name in names:
        text = Path(folder, name).read_text(encoding="utf-8")
        start = text.index('"shelf": [') + len('"shelf": [')
        parts.append(text[start:text.rindex("]")].strip("\n").rstrip())
    return ",\n".join(parts)


def bundle(gym_value, kit, shelf, own, blocks, members, results):
    return "\n".join([
        '{"format": "blockwright-bundle", "version": 1,',
        ' "gym": ' + gym(gym_value, kit) + ",",
        ' "shelf": [', shelf + ",", "  " + line(own) + "],",
        ' "blocks": [', "  " + ",\n  ".join(block(b) for b in blocks) + "],",
        ' "members": ' + rows(members, 2) + ",",
        ' "results": ' + rows(results, 2) + "}",
    ]) + "\n"
