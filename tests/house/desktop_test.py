#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The desktop's own files: valid, of one name, installed where a desktop looks for them."""
import os
import re
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree
from pathlib import Path

SOURCE = Path(os.environ["BW_SOURCE_DIR"])
BUILD = Path(os.environ["BW_BIN"]).parent
DESKTOP = SOURCE / "resources" / "desktop"
ID = "io.github.blockwright.Blockwright"
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


def run(*command, **options):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True,
                          check=False, **options)
    return done.returncode, done.stdout + done.stderr


def desktop_entry():
    lines = (DESKTOP / f"{ID}.desktop").read_text(encoding="utf-8").splitlines()
    return dict(line.split("=", 1) for line in lines if re.match(r"[A-Za-z]+=", line))


class DesktopTest(unittest.TestCase):
    def test_the_desktop_file_is_valid_without_a_word_of_complaint(self):
        self.assertEqual(run("desktop-file-validate", DESKTOP / f"{ID}.desktop"), (0, ""))

    def test_the_metainfo_is_valid(self):
        _, text = run("appstreamcli", "validate", "--no-net", DESKTOP / f"{ID}.metainfo.xml")
        self.assertIn("Validation", text)
        # Version 1 of the tool asks for a homepage; the project has none to name.
        complaints = [line for line in text.splitlines()
                      if re.match(r"[EW]: ", line) and "url-homepage-missing" not in line]
        self.assertEqual(complaints, [], text)

    def test_one_name_serves_desktop_appstream_and_icon(self):
        metainfo = ElementTree.parse(DESKTOP / f"{ID}.metainfo.xml").getroot()
        self.assertEqual(metainfo.findtext("id"), ID)
        self.assertEqual(metainfo.findtext("launchable"), f"{ID}.desktop")
        self.assertEqual(metainfo.findtext("icon"), ID)
        self.assertEqual(desktop_entry()["Icon"], ID)
        self.assertTrue((SOURCE / "resources" / "icons" / f"{ID}.svg").is_file())

    def test_the_type_of_a_gym_file_is_the_same_everywhere(self):
        types = ElementTree.parse(DESKTOP / f"{ID}.mime.xml").getroot()
        names = [kind.get("type") for kind in types.findall(f"{MIME}mime-type")]
        metainfo = ElementTree.parse(DESKTOP / f"{ID}.metainfo.xml").getroot()
        self.assertEqual(metainfo.findtext("provides/mediatype"), names[0])
        self.assertEqual(desktop_entry()["MimeType"], names[0] + ";")

    def test_the_version_is_the_projects(self):
        project = re.search(r"VERSION ([0-9.]+)", (SOURCE / "CMakeLists.txt").read_text().split(
            "project(")[1]).group(1)
        metainfo = ElementTree.parse(DESKTOP / f"{ID}.metainfo.xml").getroot()
        self.assertEqual(metainfo.find("releases/release").get("version"), project)
        self.assertIn(f"## {project}", (SOURCE / "CHANGELOG.md").read_text(encoding="utf-8"))


class InstallTest(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory(prefix="bw install ")
        cls.prefix = Path(cls.folder.name)
        code, text = run("cmake", "--install", BUILD, "--prefix", cls.prefix)
        if code != 0:
            raise AssertionError(text)

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_everything_lands_where_a_system_looks(self):
        for file in ("bin/blockwright", "bin/bwright", f"share/applications/{ID}.desktop",
                     f"share/metainfo/{ID}.metainfo.xml", f"share/mime/packages/{ID}.xml",
                     f"share/icons/hicolor/scalable/apps/{ID}.svg", "share/man/man1/bwright.1",
                     "share/man/man1/blockwright.1", "share/bash-completion/completions/bwright",
                     "share/zsh/site-functions/_bwright"):
            with self.subTest(file=file):
                self.assertTrue((self.prefix / file).is_file())

    def test_the_mime_database_takes_the_types(self):
        share = self.prefix / "share"
        seen = dict(os.environ, XDG_DATA_DIRS=str(share)) # else the tool notes that nobody looks there
        self.assertEqual(run("update-mime-database", share / "mime", env=seen), (0, ""))
        globs = (self.prefix / "share" / "mime" / "globs2").read_text(encoding="utf-8")
        self.assertIn(":application/x-blockwright-gym:*.bwgym\n", globs)
        self.assertIn(":application/x-blockwright-bundle+json:*.bundle.json\n", globs)

    def test_the_magic_of_the_type_is_in_a_gym_file(self):
        gym = Path(self.folder.name) / "a gym.bwgym"
        demo = SOURCE / "data" / "demo" / "saltmarsh-boathouse.bundle.json"
        code, text = run(self.prefix / "bin" / "bwright", "import", "--gym", gym, "--bundle", demo)
        self.assertEqual(code, 0, text)
        head = gym.read_bytes()[:100]
        types = ElementTree.parse(DESKTOP / f"{ID}.mime.xml").getroot()
        matches = {int(m.get("offset")): m.get("value") for m in types.iter(f"{MIME}match")}
        # https://www.sqlite.org/fileformat2.html: the header string, the application id at byte 68.
        self.assertEqual(sorted(matches), [0, 68])
        self.assertEqual(head[:16], matches[0].replace("\\0", "\0").encode())
        self.assertEqual(int.from_bytes(head[68:72], "big"), int(matches[68], 16))

    def test_what_the_desktop_file_starts_is_installed(self):
        self.assertTrue((self.prefix / "bin" / desktop_entry()["Exec"].split()[0]).is_file())


if __name__ == "__main__":
    unittest.main()
