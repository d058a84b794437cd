#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What zsh offers after a Tab, asked of a zsh that believes it is typed into."""
import os
import shlex
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

from program_help import BIN, commands, help_of, options

SCRIPT = Path(os.environ["BW_SOURCE_DIR"]) / "resources" / "completion" / "bwright.zsh"
# Types a line and a Tab into a zsh of its own, and waits for what that writes down.
ASK = """
zmodload zsh/zpty zsh/zselect
zpty -b asked zsh -f -i
zpty -w asked "source ${(q)1}/begin"
zpty -w -n asked "$2"$'\\t'
integer turns=0
while (( turns++ < 600 )) && [[ ! -e $1/done ]]; do zselect -t 5; zpty -r -t asked ignored; done
zpty -d asked
[[ -e $1/done ]]
"""
# compadd is what every completion ends in; asked to write to an array (-O, -A, -D) it offers nothing.
BEGIN = """
fpath=({folder}/functions $fpath)
autoload -U compinit; compinit -D -u
compadd() {{
    [[ " ${{@[1,(i)(-|--)]}} " == *' -'[OAD]' '* ]] && {{ builtin compadd "$@"; return }}
    local -a offered
    builtin compadd -O offered "$@"
    (( $#offered )) && print -rl -- $offered >> {folder}/offered
    builtin compadd "$@"
}}
finish() {{ touch {folder}/done; exit }}
comppostfuncs=(finish)
bindkey '^I' complete-word
path=({bin} $path)
cd {work}
"""


class ZshCompletionTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="bw zsh ")
        self.at, self.work = Path(self.folder.name), Path(self.folder.name) / "work"
        (self.at / "functions").mkdir()
        (self.work / "sheets").mkdir(parents=True)
        for name in ("a.bwgym", "gym.txt", "month.bundle.json", "lifts.csv"):
            (self.work / name).touch()
        shutil.copy(SCRIPT, self.at / "functions" / "_bwright") # as it is installed
        quoted = {"folder": self.at, "bin": BIN, "work": self.work}
        (self.at / "begin").write_text(
            BEGIN.format(**{name: shlex.quote(str(path)) for name, path in quoted.items()}))

    def tearDown(self):
        self.folder.cleanup()

    def offered(self, line):
        for name in ("offered", "done"):
            (self.at / name).unlink(missing_ok=True)
        done = subprocess.run(["zsh", "-f", "-c", ASK, "zsh", self.at, line], capture_output=True,
                              text=True, check=False, timeout=60)
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        told = self.at / "offered"
        return told.read_text().splitlines() if told.exists() else []

    def test_every_command_of_the_help_is_offered_and_no_other(self):
        self.assertEqual(self.offered("bwright "), commands())
        self.assertEqual(sorted(self.offered("bwright s")), ["sheets", "stair"])
        self.assertEqual(self.offered("bwright dance"), [])

    def test_every_option_of_a_command_is_offered_and_no_other(self):
        for command in commands():
            with self.subTest(command=command):
                known = {option for option in options(help_of("bwright", command))
                         if option.startswith("--")}
                self.assertEqual(set(self.offered(f"bwright {command} --")), known)

    def test_options_before_any_command_are_those_of_the_program(self):
        self.assertEqual(self.offered("bwright --"), ["--help", "--version"])

    def test_words_of_a_closed_list_come_after_their_option_and_after_a_comma(self):
        self.assertEqual(self.offered("bwright sheets --only wa"), ["wall"])
        self.assertEqual(self.offered("bwright sheets --only wall,ca"), ["cards"])
        self.assertEqual(self.offered("bwright sheets --paper "), ["A4", "Letter", "A3"])
        self.assertEqual(self.offered("bwright export --calendar --days mon,t"), ["tue", "thu"])

    def test_an_option_is_offered_folders_and_the_files_it_takes(self):
        self.assertEqual(self.offered("bwright check --gym a"), ["a.bwgym"])
        self.assertNotIn("gym.txt", self.offered("bwright check --gym "))
        self.assertEqual(self.offered("bwright check --bundle m"), ["month.bundle.json"])
        self.assertEqual(self.offered("bwright import --csv l"), ["lifts.csv"])
        folders = self.offered("bwright sheets --out ") # zsh may look for folders more than once
        self.assertEqual(set(folders), {"sheets"})

    def test_a_number_or_an_id_is_left_to_the_coach(self):
        self.assertEqual(self.offered("bwright time --week "), [])
        self.assertEqual(self.offered("bwright stair --member "), [])


if __name__ == "__main__":
    if not shutil.which("zsh"):
        sys.exit(77) # skipped
    unittest.main()
