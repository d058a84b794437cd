#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""tools/translate.py on a small made-up tree: what it finds in the sources, keeps and refuses."""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

TOOLS = Path(__file__).resolve().parents[2] / "tools"
sys.path.insert(0, str(TOOLS))
from texts import Text, texts_of  # noqa: E402


class TranslateTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="bw tongue ")
        self.root = Path(self.folder.name)
        self.write("src/desk/a.cpp", 'button(tr("&Print %1"), QStringLiteral("not this one"));\n')
        self.write("src/core/b.cpp", 'return {"It takes %1, "\n    "of %2.", {a, b}};\n')
        self.file = self.root / "resources/translations/blockwright_de.ts"
        self.write("resources/translations/blockwright_de.ts", "")

    def tearDown(self):
        self.folder.cleanup()

    def write(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def run_it(self, *options):
        done = subprocess.run([sys.executable, "-B", str(TOOLS / "translate.py"), "--folder",
                               str(self.root), *options], capture_output=True, text=True, check=False)
        self.assertEqual(done.stderr, "")
        return done.returncode, done.stdout.splitlines()

    def fill(self, source, translation):
        text = self.file.read_text(encoding="utf-8")
        old = f'<source>{source}</source>\n        <translation type="unfinished">'
        self.assertIn(old, text)
        end = text.index("</translation>", text.index(old))
        self.file.write_text(text[:text.index(old)] + f"<source>{source}</source>\n        <translation>"
                             + translation + text[end:], encoding="utf-8")

    def filled(self, print_="&amp;%1 drucken", takes="Von %2 dauert es %1."):
        self.run_it()
        self.fill("&amp;Print %1", print_)
        self.fill("It takes %1, of %2.", takes)

    def test_what_is_a_text(self):
        def texts(room, source):
            self.write(f"src/{room}/c.cpp", source)
            found = [t for t, files in texts_of(self.root).items() if f"src/{room}/c.cpp" in files]
            (self.root / f"src/{room}/c.cpp").unlink()
            return found

        self.assertEqual(texts("desk", 'tr(on ? "on" : "off")'), [Text("texts", "off"), Text("texts", "on")])
        self.assertEqual(texts("desk", 'translate("place", "%n set(s)", nullptr, n)'),
                         [Text("texts", "%n set(s)", "", True)])
        self.assertEqual(texts("desk", 'tr("%1 %2", "day, month")'), [Text("texts", "%1 %2", "day, month")])
        self.assertEqual(texts("desk", 'return {"No room in “%1”.", {file}};'), [Text("texts", "No room in “%1”.")])
        self.assertEqual(texts("sheets", 'sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "talk"))'), [Text("texts", "talk")])
        self.assertEqual(texts("edit", 'change({"move", {}})'), [Text("texts", "move")])
        self.assertEqual(texts("edit", 'case F::Setup: return "set-up";'), [Text("words", "set up")])
        for nothing in ('db.run("DELETE FROM month");', 'throw std::logic_error("no such slot");',
                        '#include "a b.hpp"', '// "a remark of two words"', 'limit("seconds", 2)'):
            self.assertEqual(texts("store", nothing), [], nothing)

    def test_new_texts_are_unfinished_until_translated(self):
        self.assertEqual(self.run_it(), (0, ["blockwright_de.ts: 2 texts, 2 new, 2 unfinished"]))
        self.assertEqual(self.run_it("--list"), (0, ["de\ttexts\t&Print %1", "de\ttexts\tIt takes %1, of %2."]))
        code, lines = self.run_it("--check")
        self.assertEqual((code, len(lines)), (1, 2))
        self.assertIn("is not translated", lines[0])
        self.filled()
        self.assertEqual(self.run_it("--check"), (0, ["2 texts, 1 languages"]))
        before = self.file.read_bytes()
        self.run_it()
        self.assertEqual(self.file.read_bytes(), before)

    def test_a_text_that_is_new_or_gone_is_told_and_its_like_is_offered(self):
        self.filled()
        self.write("src/core/b.cpp", 'return {"It takes %1 of %2.", {a, b}};\n')
        code, lines = self.run_it("--check")
        self.assertEqual(code, 1)
        self.assertIn("“It takes %1 of %2.” is missing (src/core/b.cpp)", lines[0])
        self.assertIn("“It takes %1, of %2.” is in no source any more", lines[1])
        self.run_it()
        self.assertIn('<translation type="unfinished">Von %2 dauert es %1.</translation>',
                      self.file.read_text(encoding="utf-8"))

    def test_what_a_translation_may_not_change(self):
        for print_, takes, words in (("&amp;%2 drucken", "Von %2 %1.", "other marks"),
                                     ("&amp;%1 drucken", "Es dauert %1.", "other marks"),
                                     ("%1 drucken", "Von %2 %1.", "&"),
                                     ("&amp;%1 drucken", "Von %2 %1. ", "blanks")):
            with self.subTest(print_=print_, takes=takes):
                self.file.write_text("", encoding="utf-8")
                self.filled(print_, takes)
                code, lines = self.run_it("--check")
                self.assertEqual((code, len(lines)), (1, 1), lines)
                self.assertIn(words, lines[0])


if __name__ == "__main__":
    unittest.main()
