#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""tools/examples.py on made-up documents with a made-up program."""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SCRIPT = Path(__file__).resolve().parents[2] / "tools" / "examples.py"
PROGRAM = """#!/bin/sh
case $1 in
    lines) printf 'one\\ntwo\\nthree\\n' ;;
    fail) echo "no such month" >&2; exit 2 ;;
    keep) echo kept > kept.txt ;;
esac
"""


class ExamplesTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="bw examples ")
        self.root = Path(self.folder.name)
        (self.root / "bin").mkdir()
        (self.root / "docs").mkdir()
        program = self.root / "bin" / "toy"
        program.write_text(PROGRAM, encoding="utf-8")
        program.chmod(0o755)

    def tearDown(self):
        self.folder.cleanup()

    def run_on(self, *lines, fence="console"):
        text = "\n".join(["# Toy", f"```{fence}", *lines, "```", ""])
        (self.root / "README.md").write_text(text, encoding="utf-8")
        done = subprocess.run([sys.executable, "-B", SCRIPT, self.root, self.root / "bin"], text=True,
                              capture_output=True, check=False)
        self.assertEqual(done.stderr, "")
        return done.returncode, done.stdout

    def assert_passes(self, *lines):
        self.assertEqual(self.run_on(*lines), (0, "1 examples, 0 not as written.\n"))

    def assert_differs(self, *lines):
        code, told = self.run_on(*lines)
        self.assertEqual(code, 1)
        self.assertIn("README.md:2: $ ", told)
        self.assertTrue(told.endswith("1 examples, 1 not as written.\n"), told)

    def test_output_as_written_passes(self):
        self.assert_passes("$ toy lines", "one", "two", "three")

    def test_a_word_off_differs(self):
        self.assert_differs("$ toy lines", "one", "too", "three")

    def test_a_line_missing_or_extra_differs(self):
        self.assert_differs("$ toy lines", "one", "two")
        self.assert_differs("$ toy lines", "one", "two", "three", "four")
        self.assert_differs("$ toy lines")

    def test_dots_stand_for_any_number_of_lines_and_no_more(self):
        self.assert_passes("$ toy lines", "one", "...")
        self.assert_passes("$ toy lines", "...", "three")
        self.assert_passes("$ toy lines", "one", "...", "two", "three")
        self.assert_differs("$ toy lines", "...", "four")

    def test_signs_of_a_pattern_are_taken_as_they_stand(self):
        self.assert_differs("$ toy lines", "o.e", "two", "three")

    def test_an_exit_code_must_be_the_one_that_is_written(self):
        self.assert_differs("$ toy fail", "no such month")
        self.assert_passes("$ toy fail", "no such month", "exit 2")
        self.assert_differs("$ toy lines", "...", "exit 1")

    def test_commands_of_a_block_share_a_folder_and_blocks_do_not(self):
        self.assert_passes("$ toy keep", "$ cat kept.txt", "kept")
        self.assert_differs("$ cat kept.txt", "kept")

    def test_documents_without_an_example_do_not_pass(self):
        self.assertEqual(self.run_on("$ toy fail", fence="sh"), (1, "0 examples, 0 not as written.\n"))


if __name__ == "__main__":
    unittest.main()
