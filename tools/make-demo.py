#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes data/demo/saltmarsh-boathouse.bundle.json, the same on every machine.

    tools/make-demo.py           writes the file
    tools/make-demo.py --check   exit 1 when the file is not what this would write
"""
import json
import sys
from pathlib import Path

sys.dont_write_bytecode = True
from demo import kit, members, months_one, months_two, proof, results, writer  # noqa: E402

ROOT = Path(__file__).resolve().parent.parent
SHELF = ROOT / "resources" / "shelf"
PARTS = ("legs.bundle.json", "upper.bundle.json", "motion.bundle.json")
TARGET = ROOT / "data" / "demo" / "saltmarsh-boathouse.bundle.json"


def read_shelf():
    own = kit.ROPE_SLED_PULL
    shipped = (e for p in PARTS for e in json.loads((SHELF / p).read_text("utf-8"))["shelf"])
    return {e["id"]: e for e in [*shipped, own]}


def make():
    """The text of the bundle; leaves with the list of faults when there is one."""
    shelf = read_shelf()
    blocks = months_one.MONTHS + months_two.MONTHS
    people = members.as_bundle()
    sets = results.play(blocks, shelf, {k["id"]: k for k in kit.KIT})
    faults = proof.faults(kit.GYM, kit.KIT, shelf, blocks, people, sets)
    if faults:
        sys.exit("The demo is not as it should be:\n  " + "\n  ".join(faults))
    text = writer.bundle(kit.GYM, kit.KIT, writer.shelf_text(SHELF, PARTS), kit.ROPE_SLED_PULL,
                         blocks, people, sets)
    whole = json.loads(text)
    if [e["id"] for e in whole["shelf"]] != list(shelf) or whole["results"] != sets:
        sys.exit("The text of the demo does not say what was made.")
    return text


def main(arguments):
    if arguments not in ([], ["--check"]):
        sys.exit(__doc__)
    text = make()
    if not arguments:
        TARGET.parent.mkdir(parents=True, exist_ok=True)
        TARGET.write_text(text, encoding="utf-8", newline="\n")
        print(f"{TARGET.relative_to(ROOT)}: {len(text.encode()):,} bytes")
    elif not TARGET.exists() or TARGET.read_bytes() != text.encode():
        sys.exit(f"{TARGET.relative_to(ROOT)} is out of date: run tools/make-demo.py")


if __name__ == "__main__":
    main(sys.argv[1:])
