#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs the examples of the documents: blocks fenced as ```console.

examples.py ROOT BIN: every README.md and docs/**/*.md below ROOT, with BIN first in PATH. Each block
runs in a fresh folder that has data/demo/. A line "$ ..." is a command for sh; the lines up to the next
one are what it must print, where "..." alone stands for any number of lines. The exit code must be 0,
or N where the line "exit N" stands below the output.
Prints what differs and a count; exits 1 when something differs or when there is no example at all.
"""
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path


def blocks(text):
    """Each console block as (line number, list of lines)."""
    inside, fence = None, ""
    for number, line in enumerate(text.splitlines(), 1):
        if inside is None:
            found = re.match(r"(\s*```+)(\w*)\s*$", line)
            if found:
                fence, inside = found.group(1), (number, found.group(2), [])
        elif line.startswith(fence) and not line[len(fence):].strip():
            if inside[1] == "console":
                yield inside[0], inside[2]
            inside = None
        else:
            inside[2].append(line)


def commands(lines):
    """Each command of a block as (command, expected lines, expected exit code)."""
    found = []
    for line in lines:
        if line.startswith("$ "):
            found.append([line[2:], [], 0])
        elif found and re.fullmatch(r"exit \d+", line):
            found[-1][2] = int(line.split()[1])
        elif found:
            found[-1][1].append(line)
        else:
            raise ValueError(f"output before the first command: {line}")
    return found


def agree(expected, printed):
    pattern = "".join(r"(?:.*\n)*?" if line == "..." else re.escape(line.rstrip()) + "\n"
                      for line in expected)
    return re.fullmatch(pattern, "".join(line.rstrip() + "\n" for line in printed)) is not None


def run_block(place, lines, root, programs):
    """What differs, as text; empty when all is as written."""
    differing = []
    with tempfile.TemporaryDirectory(prefix="bw examples ") as folder:
        if (root / "data" / "demo").is_dir():
            shutil.copytree(root / "data" / "demo", Path(folder) / "data" / "demo")
        surroundings = dict(os.environ, PATH=f"{programs}:{os.environ['PATH']}", HOME=folder,
                            BLOCKWRIGHT_HOME=f"{folder}/home", LC_ALL="C.UTF-8",
                            QT_QPA_PLATFORM="offscreen")
        for command, expected, code in commands(lines):
            done = subprocess.run(["sh", "-c", command], cwd=folder, env=surroundings, check=False,
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
            printed = done.stdout.splitlines()
            while expected and not expected[-1].strip():
                expected.pop()
            while printed and not printed[-1].strip():
                printed.pop()
            if done.returncode != code or not agree(expected, printed):
                differing.append(f"{place}: $ {command}\n"
                                 f"  exit {done.returncode}, the document says {code}; printed:\n" +
                                 "".join(f"  | {line}\n" for line in printed))
    return "".join(differing)


def main():
    if len(sys.argv) != 3:
        print(__doc__, file=sys.stderr)
        return 2
    root, programs = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    documents = [root / "README.md", *sorted((root / "docs").rglob("*.md"))]
    count, differing = 0, 0
    for document in documents:
        for number, lines in blocks(document.read_text(encoding="utf-8")):
            count += 1
            told = run_block(f"{document.relative_to(root)}:{number}", lines, root, programs)
            differing += bool(told)
            print(told, end="")
    print(f"{count} examples, {differing} not as written.")
    return 1 if differing or not count else 0


if __name__ == "__main__":
    sys.exit(main())
