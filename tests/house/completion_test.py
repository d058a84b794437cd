#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What bash offers after a Tab, asked of bash itself."""
import json
import os
import re
import subprocess
import tempfile
import unittest
from pathlib import Path

from program_help import BIN, commands, help_of, options

SOURCE = Path(os.environ["BW_SOURCE_DIR"])
SCRIPT = SOURCE / "resources" / "completion" / "bwright.bash"
# compopt works while bash completes only; here it says what it would have been told.
ASK = """
source "$1"; shift
compopt() { :; }
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1))
_bwright "$1" "${COMP_WORDS[COMP_CWORD]}" "${COMP_WORDS[COMP_CWORD - 1]}"
printf '%s\\n' "${COMPREPLY[@]}"
"""


def bash(*words, folder=None):
    done = subprocess.run(["bash", "--norc", "-c", ASK, "bash", SCRIPT, BIN / "bwright", *words],
                          capture_output=True, text=True, check=True, cwd=folder)
    if done.stderr:
        raise AssertionError(done.stderr)
    return [line for line in done.stdout.splitlines() if line]


class CompletionTest(unittest.TestCase):
    def test_the_beginning_of_a_command_gives_the_command(self):
        self.assertEqual(bash("ch"), ["check"])
        self.assertEqual(sorted(bash("s")), ["sheets", "stair"])
        self.assertEqual(bash("dance"), [])

    def test_every_command_of_the_help_is_offered_and_no_other(self):
        self.assertEqual(bash(""), commands())

    def test_every_option_of_a_command_is_offered_and_no_other(self):
        for command in commands():
            with self.subTest(command=command):
                known = {option for option in options(help_of("bwright", command))
                         if option.startswith("--")}
                self.assertEqual(set(bash(command, "")), known)

    def test_options_are_offered_after_others(self):
        self.assertEqual(bash("check", "--json", "--bundle", "x", "--flo"), ["--floor-runs"])

    def test_options_before_any_command_are_those_of_the_program(self):
        self.assertEqual(bash("--v"), ["--version"])

    def test_words_of_a_closed_list_come_after_their_option_and_after_a_comma(self):
        self.assertEqual(bash("sheets", "--only", "wa"), ["wall"])
        self.assertEqual(bash("sheets", "--only", "wall,ca"), ["wall,cards"])
        self.assertEqual(bash("sheets", "--paper", ""), ["A4", "Letter", "A3"])
        self.assertEqual(bash("export", "--calendar", "--days", "mon,t"), ["mon,tue", "mon,thu"])

    def test_the_sections_offered_are_those_of_a_bundle(self):
        schema = (SOURCE / "docs" / "bundle.schema.json").read_text(encoding="utf-8")
        kinds = re.search(r'"enum": \[("warm-up", "power"[^\]]*)\]', schema).group(1)
        self.assertEqual(bash("propose", "--section", ""), json.loads(f"[{kinds}]"))

    def test_the_words_offered_for_a_start_are_understood(self):
        self.assertEqual(bash("floor", "--spread", ""), ["together", "spread", "best"])
        demo = SOURCE / "data" / "demo" / "saltmarsh-boathouse.bundle.json"
        for word in ("together", "spread"):
            subprocess.run([BIN / "bwright", "floor", "--bundle", demo, "--steady", "--no-buys",
                            "--spread", word], capture_output=True, check=True)

    def test_a_number_or_an_id_is_left_to_the_coach(self):
        self.assertEqual(bash("time", "--week", ""), [])
        self.assertEqual(bash("stair", "--member", ""), [])


class FilesTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="bw completion ")
        for name in ("a gym.bwgym", "g[o-z].bwgym", "gym.txt", "month.bundle.json", "lifts.csv", "note.txt"):
            (Path(self.folder.name) / name).touch()
        (Path(self.folder.name) / "sheets").mkdir()

    def tearDown(self):
        self.folder.cleanup()

    def offered(self, *words):
        return set(bash(*words, folder=self.folder.name))

    def test_an_option_is_offered_folders_and_the_files_it_takes(self):
        self.assertEqual(self.offered("check", "--gym", ""), {"sheets", "a gym.bwgym", "g[o-z].bwgym"})
        self.assertEqual(self.offered("restore", "--backup", "a"), {"a gym.bwgym"})
        self.assertEqual(self.offered("check", "--bundle", ""), {"sheets", "month.bundle.json"})
        self.assertEqual(self.offered("import", "--csv", ""), {"sheets", "lifts.csv"})
        self.assertEqual(self.offered("sheets", "--out", ""), {"sheets"})
        self.assertEqual(self.offered("export", "--out", "n"), {"note.txt"})

    def test_the_words_say_how_far_a_name_has_come(self):
        self.assertEqual(self.offered("check", "--bundle", "month.b"), {"month.bundle.json"})
        self.assertEqual(self.offered("check", "--bundle", "nothing"), set())


if __name__ == "__main__":
    unittest.main()
