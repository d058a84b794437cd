#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The pages of the manual: without a fault, and of the same commands and options as the programs."""
import os
import re
import subprocess
import unittest
from pathlib import Path

from program_help import commands, help_of, options

FOLDER = Path(os.environ["BW_SOURCE_DIR"]) / "resources" / "man"
PAGES = ("bwright.1", "blockwright.1")
EVERYWHERE = "Options of every command"


def output(*command):
    return subprocess.run([str(word) for word in command], capture_output=True, text=True, check=False)


def parts(page, mark):
    """Title of each section (.Sh) or subsection (.Ss) to its lines."""
    text = (FOLDER / page).read_text(encoding="utf-8")
    pieces = re.split(rf"^\.{mark} (.+)$", text, flags=re.MULTILINE)
    return {title: re.split(r"^\.Sh ", lines, flags=re.MULTILINE)[0]
            for title, lines in zip(pieces[1::2], pieces[2::2])}


def told(lines):
    """The options that have an entry of their own."""
    entries = re.findall(r"^\.It (Fl .+)$", lines, re.MULTILINE)
    return {"-" + name for entry in entries for name in re.findall(r"Fl (\S+)", entry)}


class ManualTest(unittest.TestCase):
    def test_groff_sets_the_pages_without_a_warning(self):
        for page in PAGES:
            with self.subTest(page=page):
                done = output("groff", "-mdoc", "-Tutf8", "-ww", "-z", FOLDER / page)
                self.assertEqual((done.returncode, done.stdout + done.stderr), (0, ""))

    def test_mandoc_finds_nothing_to_say(self):
        for page in PAGES:
            with self.subTest(page=page):
                done = output("mandoc", "-T", "lint", "-W", "warning", FOLDER / page)
                self.assertEqual((done.returncode, done.stdout + done.stderr), (0, ""))

    def test_every_command_has_its_part_in_the_order_of_the_help(self):
        titles = [title for title in parts("bwright.1", "Ss") if title != EVERYWHERE]
        self.assertEqual(titles, commands())

    def test_every_option_of_a_command_is_told_and_no_other(self):
        page = parts("bwright.1", "Ss")
        everywhere = told(page[EVERYWHERE])
        self.assertIn("--json", everywhere)
        for command in commands():
            with self.subTest(command=command):
                known = options(help_of("bwright", command))
                self.assertEqual(known - everywhere - told(page[command]), set(), "not in the page")
                self.assertEqual(told(page[command]) - known, set(), "not in the program")

    def test_the_options_of_the_programs_themselves_are_told(self):
        self.assertEqual(options(help_of("bwright")) - told(parts("bwright.1", "Ss")[EVERYWHERE]), set())
        ours = {option for option in options(help_of("blockwright")) if option != "--help-all"}
        self.assertEqual(ours, told(parts("blockwright.1", "Sh")["DESCRIPTION"]))

    def test_the_names_that_the_pages_give_lead_to_pages(self):
        for page in PAGES:
            for name in re.findall(r"^\.Xr (\S+ \d)", (FOLDER / page).read_text(), re.MULTILINE):
                self.assertTrue((FOLDER / name.replace(" ", ".")).is_file(), name)


if __name__ == "__main__":
    unittest.main()
