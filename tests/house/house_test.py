#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""tools/check-house.sh on small made-up trees: each rule finds its breach, and nothing else."""
import subprocess
import tempfile
import unittest
from pathlib import Path

SCRIPT = Path(__file__).resolve().parents[2] / "tools" / "check-house.sh"
LICENCE = "// SPDX-License-Identifier: GPL-3.0-or-later\n"


class HouseTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="bw house ")
        self.root = Path(self.folder.name)
        self.write("include/blockwright/model/id.hpp", "#pragma once\n#include <string>\n")
        self.write("src/core/model/id.cpp", '#include "blockwright/model/id.hpp"\n')
        self.write("src/store/gym_file.hpp", '#pragma once\n#include "blockwright/model/id.hpp"\n')
        self.write("src/store/gym_file.cpp", '#include "store/gym_file.hpp"\n#include <sqlite3.h>\n')
        self.write("src/edit/verbs.cpp", '#include "store/gym_file.hpp"\n')
        self.write("src/desk/frame/window.cpp", '#include <QWidget>\n#include "store/gym_file.hpp"\n')
        self.write("tests/store/gym_file_test.cpp", '#include "store/gym_file.hpp"\n')
        self.write("README.md", "[how](docs/how.md) [there](https://example.org/x) [up](#up)\n",
                   licence="")
        self.write("docs/how.md", "[back](../README.md)\n", licence="")

    def tearDown(self):
        self.folder.cleanup()

    def write(self, name, text, licence=LICENCE):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(licence + text, encoding="utf-8")

    def check(self):
        done = subprocess.run(["sh", str(SCRIPT), str(self.root)], capture_output=True, text=True,
                              check=False)
        self.assertEqual(done.stderr, "")
        return done.returncode, done.stdout.splitlines()

    def breach(self, beginning, words):
        """Exactly one breach is told, at that place and in those words; the exit code is 1."""
        code, lines = self.check()
        self.assertEqual(code, 1, lines)
        self.assertEqual(len(lines), 1, lines)
        self.assertTrue(lines[0].startswith(beginning), lines)
        self.assertIn(words, lines[0])

    def test_a_tree_in_order_passes(self):
        self.assertEqual(self.check(), (0, ["9 files, all in order."]))

    def test_qt_is_kept_out_of_the_engine(self):
        for room in ("core", "interchange", "store", "edit"):
            for header in ("QString", "QtCore/QString", "QtGui"):
                with self.subTest(room=room, header=header):
                    file = f"src/{room}/label.cpp"
                    self.write(file, f"#include <{header}>\n")
                    self.breach(f"{file}:2:", f"{room} may not include <{header}> of Qt")
                    (self.root / file).unlink()

    def test_each_library_stays_in_its_rooms(self):
        for room, header in (("core", "sqlite3.h"), ("edit", "nlohmann/json.hpp"),
                             ("interchange", "sqlite3.h"), ("desk", "fmt/format.h"),
                             ("store", "CLI/CLI.hpp")):
            with self.subTest(room=room, header=header):
                file = f"src/{room}/stranger.cpp"
                self.write(file, f"#include <{header}>\n")
                self.breach(f"{file}:2:", f"{room} may not include <{header}>")
                (self.root / file).unlink()

    def test_core_has_no_files_and_no_clock(self):
        self.write("src/core/time/now.cpp", "#include <fstream>\n")
        self.breach("src/core/time/now.cpp:2:", "no files, clock or locale")
        self.write("src/core/time/now.cpp",
                   "// not std::chrono::system_clock::now()\n"
                   "auto t = std::chrono::steady_clock::now();\n")
        self.breach("src/core/time/now.cpp:3:", "core has no clock")

    def test_an_arrow_against_the_table_is_told(self):
        self.write("src/core/model/id.cpp", '#include "store/gym_file.hpp"\n')
        self.breach("src/core/model/id.cpp:2:", 'core may not include "store/gym_file.hpp" of store')

    def test_an_arrow_hidden_behind_dots_is_told(self):
        self.write("src/store/gym_file.cpp", '#include "../edit/verbs.hpp"\n')
        self.write("src/edit/verbs.hpp", "#pragma once\n")
        self.breach("src/store/gym_file.cpp:2:", 'store may not include "../edit/verbs.hpp" of edit')

    def test_a_public_header_may_not_look_into_a_room(self):
        self.write("include/blockwright/model/id.hpp", '#include "store/gym_file.hpp"\n')
        code, lines = self.check()
        self.assertEqual(code, 1)
        self.assertIn("include/blockwright/model/id.hpp:2: core may not include "
                      '"store/gym_file.hpp" of store', lines)

    def test_a_room_that_the_table_does_not_know_is_told(self):
        self.write("src/cellar/wine.cpp", "int bottles;\n")
        self.breach("src/cellar/wine.cpp:1:", "the room cellar is not in the table")

    def test_the_program_may_not_include_the_tests(self):
        self.write("tests/support/fixtures.hpp", "#pragma once\n")
        self.write("src/edit/verbs.cpp", '#include "support/fixtures.hpp"\n')
        self.breach("src/edit/verbs.cpp:2:", 'edit may not include "support/fixtures.hpp"')

    def test_a_quoted_include_must_be_a_file_of_the_tree(self):
        self.write("src/edit/verbs.cpp", '#include "store/gone.hpp"\n')
        self.breach("src/edit/verbs.cpp:2:", '"store/gone.hpp" is no file of this tree')

    def test_catch_is_included_in_one_place(self):
        self.write("tests/support/catch.hpp", "#include <catch2/catch.hpp>\n")
        self.write("tests/store/gym_file_test.cpp", "#include <catch2/catch_all.hpp>\n")
        self.breach("tests/store/gym_file_test.cpp:2:", "support/catch.hpp")

    def test_an_include_circle_is_told_once(self):
        self.write("src/edit/a.hpp", '#include "edit/b.hpp"\n')
        self.write("src/edit/b.hpp", '#include "c.hpp"\n')
        self.write("src/edit/c.hpp", '#include "edit/a.hpp"\n')
        self.breach("src/edit/a.hpp:1:", "include circle: src/edit/a.hpp -> src/edit/b.hpp -> "
                                         "src/edit/c.hpp -> src/edit/a.hpp")

    def test_a_diamond_is_no_circle(self):
        self.write("src/edit/a.hpp", '#include "edit/b.hpp"\n#include "edit/c.hpp"\n')
        self.write("src/edit/b.hpp", '#include "edit/d.hpp"\n')
        self.write("src/edit/c.hpp", '#include "edit/d.hpp"\n')
        self.write("src/edit/d.hpp", "#pragma once\n")
        self.assertEqual(self.check()[0], 0)

    def test_a_missing_licence_line_is_told(self):
        for file in ("src/edit/undo.cpp", "src/edit/CMakeLists.txt", "tools/step.sh",
                     "tools/step.py", "cmake/step.cmake", "resources/mark.svg", ".ci/run"):
            with self.subTest(file=file):
                self.write(file, "\n", licence="")
                self.breach(f"{file}:1:", "SPDX-License-Identifier")
                (self.root / file).unlink()

    def test_a_licence_line_may_follow_the_first_line_of_a_script(self):
        self.write("tools/step.sh", "#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n",
                   licence="")
        self.assertEqual(self.check()[0], 0)

    def test_a_file_may_be_as_long_as_the_limit_and_no_longer(self):
        for file, most in (("src/edit/undo.cpp", 400), ("src/edit/undo.hpp", 150)):
            with self.subTest(file=file):
                self.write(file, "\n" * (most - 1))
                self.assertEqual(self.check()[0], 0)
                self.write(file, "\n" * most)
                self.breach(f"{file}:{most + 1}:", f"{most} is the most")
                (self.root / file).unlink()

    def test_a_link_to_nowhere_is_told(self):
        self.write("docs/how.md", "\n[gone](gone.md#part) ![shot](pictures/bench.png)\n", licence="")
        code, lines = self.check()
        self.assertEqual(code, 1)
        self.assertEqual(lines, ["docs/how.md:2: the link leads nowhere: gone.md#part",
                                 "docs/how.md:2: the link leads nowhere: pictures/bench.png"])

    def test_what_looks_like_a_link_in_code_is_none(self):
        self.write("docs/how.md", "`a[1](x)`\n```cpp\nlist[0](y);\n```\n", licence="")
        self.assertEqual(self.check()[0], 0)

    def test_words_of_a_reader_who_is_not_here_are_told(self):
        for word in ("Seed " "Document", "../Sha" "red/x", "Tran" "script"):
            with self.subTest(word=word):
                self.write("docs/how.md", f"\nSee the {word}.\n", licence="")
                self.breach("docs/how.md:2:", word.lower()[:5])

    def test_what_is_built_is_not_looked_at(self):
        self.write("build/dev/moc_window.cpp", "", licence="")
        self.write("src/edit/CMakeLists.txt", "# SPDX-License-Identifier: GPL-3.0-or-later\n",
                   licence="")
        self.assertEqual(self.check()[0], 0)


if __name__ == "__main__":
    unittest.main()
