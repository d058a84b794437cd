#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the compiler does not see: arrows between rooms, include circles, sizes, licence lines, links.

house.py FOLDER prints one line for each breach, "file:line: what is wrong", and exits 1 when there
is one, else 0. Only files are read; nothing needs to be built.
"""
import os
import re
import sys
from pathlib import Path

# A room may include its own headers and those of the rooms named here. The public headers under
# include/blockwright belong to core.
ARROWS = {
    "core": set(),
    "interchange": {"core"},
    "store": {"core"},
    "edit": {"core", "interchange", "store"},
    "sheets": {"core"},
    "desk": {"core", "interchange", "store", "edit", "sheets"},
    "cli": {"core", "interchange", "store", "edit", "sheets"},
}
# Libraries from outside, by how their headers begin, and the rooms that may include them. In <...>
# only: a header of our own may have any name.
OUTSIDE = [
    (re.compile(r"Qt?[A-Z]\w*(/|$)"), "Qt", {"sheets", "desk", "cli"}),
    (re.compile(r"nlohmann/"), "nlohmann_json", {"interchange", "cli"}),
    (re.compile(r"sqlite3"), "SQLite", {"store"}),
    (re.compile(r"CLI/"), "CLI11", {"cli"}),
    (re.compile(r"fmt/"), "fmt", {"cli"}),
]
# The engine has no files, no clock and no locale.
NOT_IN_CORE = re.compile(r"(fstream|filesystem|iostream|ctime|time\.h|locale|clocale)$")
CLOCK = re.compile(r"\b(system|steady|high_resolution)_clock::now\b")
# Catch2 2 and 3 name their headers differently; one file knows.
CATCH_ONLY_IN = "tests/support/"

MOST_LINES = {".cpp": 400, ".hpp": 150}
LICENCE = "SPDX-License-Identifier: GPL-3.0-or-later"
LICENSED = {".cpp", ".hpp", ".py", ".sh", ".cmake", ".svg", ".xml", ".desktop", ".in", ".qrc", ".1",
            ".bash"}
LICENSED_NAMES = {"CMakeLists.txt", ".ci/run"}
TEXT = LICENSED | {".md", ".txt", ".json", ".sql", ".csv", ".css", ".yml"}
# Papers and places that a reader of this tree does not have. Written in halves, so that this file
# may pass its own check.
FORBIDDEN = ["seed doc" "ument", "../sha" "red", "/wor" "k/sha" "red", "tran" "script"]
SKIPPED_FOLDERS = {".git", "build", "out", "__pycache__"}

INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')
LINK = re.compile(r"\[[^\]]*\]\(\s*<?([^)>\s]+)>?[^)]*\)")


class House:
    def __init__(self, root):
        self.root = Path(root).resolve()
        self.breaches = []
        self.texts = {}
        for folder, inner, files in os.walk(self.root):
            inner[:] = sorted(set(inner) - SKIPPED_FOLDERS)
            for path in sorted(Path(folder) / file for file in files):
                name = path.relative_to(self.root).as_posix()
                if path.suffix in TEXT or path.name in LICENSED_NAMES or name in LICENSED_NAMES:
                    self.texts[name] = path.read_text(encoding="utf-8", errors="replace")

    def say(self, name, line, what):
        self.breaches.append(f"{name}:{line}: {what}")

    def code(self):
        return {n: t for n, t in self.texts.items()
                if n.endswith((".cpp", ".hpp")) and n.startswith(("src/", "include/", "tests/"))}

    @staticmethod
    def includes(text):
        for number, line in enumerate(text.splitlines(), 1):
            found = INCLUDE.match(line)
            if found:
                yield number, found.group(1) == "<", found.group(2)

    def resolve(self, name, included):
        """The file of ours that a quoted include means, as the compiler would look it up."""
        folder = str(Path(name).parent)
        for place in (folder, "src", "include", "tests"):
            parts = []
            for part in f"{place}/{included}".split("/"):
                if part == "..":
                    parts = parts[:-1]
                elif part != ".":
                    parts.append(part)
            if "/".join(parts) in self.texts:
                return "/".join(parts)
        return None

    @staticmethod
    def room(name):
        parts = name.split("/")
        if name.startswith("include/blockwright/"):
            return "core"
        return parts[1] if parts[0] == "src" and len(parts) > 2 else None

    def check_arrows(self):
        for name, text in self.code().items():
            room = self.room(name)
            if room is None:
                continue
            if room not in ARROWS:
                self.say(name, 1, f"the room {room} is not in the table of rooms")
                continue
            for line, outside, included in self.includes(text):
                if outside:
                    self.check_outside(name, line, room, included)
                    continue
                target = self.resolve(name, included)
                other = self.room(target) if target else None
                if target is None:
                    self.say(name, line, f'"{included}" is no file of this tree')
                elif other is None:
                    self.say(name, line, f'{room} may not include "{included}"')
                elif other != room and other not in ARROWS[room]:
                    self.say(name, line, f'{room} may not include "{included}" of {other}')
            if room == "core":
                for line, words in enumerate(text.splitlines(), 1):
                    if CLOCK.search(words.split("//")[0]):
                        self.say(name, line, "core has no clock; take the time as a parameter")

    def check_outside(self, name, line, room, included):
        for begins, library, rooms in OUTSIDE:
            if begins.match(included) and room not in rooms:
                self.say(name, line, f"{room} may not include <{included}> of {library}")
        if room == "core" and NOT_IN_CORE.match(included):
            self.say(name, line, f"core may not include <{included}>: no files, clock or locale")

    def check_catch(self):
        for name, text in self.code().items():
            for line, _, included in self.includes(text):
                if included.startswith("catch2/") and not name.startswith(CATCH_ONLY_IN):
                    self.say(name, line, 'include "support/catch.hpp" in place of a Catch2 header')

    def check_circles(self):
        graph = {}
        for name, text in self.code().items():
            found = [self.resolve(name, i) for _, outside, i in self.includes(text) if not outside]
            graph[name] = [target for target in found if target]
        done, told = set(), set()

        def visit(name, way):
            if name in way:
                circle = way[way.index(name):]
                if frozenset(circle) not in told:
                    told.add(frozenset(circle))
                    self.say(circle[0], 1, "include circle: " + " -> ".join(circle + [name]))
                return
            if name in done:
                return
            for target in graph[name]:
                visit(target, way + [name])
            done.add(name)

        for name in graph:
            visit(name, [])

    def check_licence(self):
        for name, text in self.texts.items():
            path = Path(name)
            wanted = path.suffix in LICENSED or path.name in LICENSED_NAMES or name in LICENSED_NAMES
            if wanted and not any(LICENCE in line for line in text.splitlines()[:3]):
                self.say(name, 1, f"no line with {LICENCE} at the top")

    def check_sizes(self):
        for name, text in self.code().items():
            lines, most = text.count("\n"), MOST_LINES[Path(name).suffix]
            if lines > most:
                self.say(name, lines, f"{lines} lines; {most} is the most")

    def check_links(self):
        for name, text in self.texts.items():
            if not name.endswith(".md"):
                continue
            fenced = False
            for number, line in enumerate(text.splitlines(), 1):
                if line.lstrip().startswith("```"):
                    fenced = not fenced
                for target in [] if fenced else LINK.findall(re.sub(r"`[^`]*`", "", line)):
                    if re.match(r"[a-z][a-z0-9+.-]*:", target) or target.startswith("#"):
                        continue
                    file = (self.root / name).parent / target.split("#")[0]
                    if not file.exists():
                        self.say(name, number, f"the link leads nowhere: {target}")

    def check_words(self):
        for name, text in self.texts.items():
            for number, line in enumerate(text.splitlines(), 1):
                for word in FORBIDDEN:
                    if word in line.lower():
                        self.say(name, number, f'"{word}" means nothing to a reader of this tree')

    def check(self):
        self.check_arrows()
        self.check_catch()
        self.check_circles()
        self.check_licence()
        self.check_sizes()
        self.check_links()
        self.check_words()
        return self.breaches


def main():
    if len(sys.argv) != 2 or not Path(sys.argv[1]).is_dir():
        print("usage: house.py FOLDER", file=sys.stderr)
        return 2
    house = House(sys.argv[1])
    breaches = house.check()
    print("\n".join(breaches) if breaches else f"{len(house.texts)} files, all in order.")
    return 1 if breaches else 0


if __name__ == "__main__":
    sys.exit(main())
