#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The Debian package of this build: what is in it, where, and what it says it needs."""
import os
import re
import subprocess
import tempfile
import unittest
from pathlib import Path

BUILD = Path(os.environ["BW_BIN"]).parent
ID = "io.github.blockwright.Blockwright"
CONTENTS = {"bin/bwright", "bin/blockwright", "share/man/man1/bwright.1.gz",
            "share/man/man1/blockwright.1.gz", "share/bash-completion/completions/bwright",
            "share/zsh/vendor-completions/_bwright",
            f"share/applications/{ID}.desktop", f"share/metainfo/{ID}.metainfo.xml",
            f"share/mime/packages/{ID}.xml", f"share/icons/hicolor/scalable/apps/{ID}.svg",
            "share/doc/blockwright/copyright", "share/doc/blockwright/changelog.gz",
            "share/doc/blockwright/copyright.nlohmann-json3-dev",
            "share/doc/blockwright/copyright.libcli11-dev", "share/doc/blockwright/docs/guide.md"}


def output(*command, **options):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True,
                          check=False, **options)
    if done.returncode != 0:
        raise AssertionError(f"{command[0]}: {done.stdout}{done.stderr}")
    return done.stdout


class PackageTest(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory(prefix="bw-package-")
        folder = Path(cls.folder.name)
        output("cmake", "--install", BUILD, "--strip", "--prefix", folder / "tree" / "usr")
        # The tree is given, so that nothing is built for it.
        output("cpack", "--config", BUILD / "CPackConfig.cmake", "-G", "DEB", "-B", folder,
               "-D", "CPACK_INSTALL_CMAKE_PROJECTS=", "-D", f"CPACK_INSTALLED_DIRECTORIES={folder}/tree;/",
               "-D", "CPACK_DEBIAN_COMPRESSION_TYPE=gzip")
        (cls.package,) = folder.glob("*.deb")
        output("dpkg-deb", "-x", cls.package, folder / "unpacked")
        cls.unpacked = folder / "unpacked" / "usr"

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def field(self, name):
        return output("dpkg-deb", "-f", self.package, name).strip()

    def test_everything_is_under_usr_where_debian_wants_it(self):
        self.assertEqual([p.name for p in self.unpacked.parent.iterdir()], ["usr"])
        there = {str(p.relative_to(self.unpacked)) for p in self.unpacked.rglob("*") if p.is_file()}
        self.assertEqual(CONTENTS - there, set())
        self.assertEqual([name for name in there if name.endswith("LICENSE")], [])

    def test_it_needs_the_libraries_that_are_linked_and_the_fonts_of_the_sheets(self):
        needs = re.findall(r"(?:^|, )([a-z0-9.+-]+)", self.field("Depends"))
        for package in ("libc6", "libqt6widgets6", "libqt6printsupport6", "libqt6svg6", "libsqlite3-0"):
            with self.subTest(package=package):
                self.assertTrue(any(need.removesuffix("t64") == package for need in needs), needs)
        self.assertIn("fonts-dejavu-core", needs)

    def test_it_says_name_version_and_what_it_is(self):
        project = re.search(r"CPACK_PACKAGE_VERSION \"([0-9.]+)\"",
                            (BUILD / "CPackConfig.cmake").read_text()).group(1)
        self.assertEqual((self.field("Package"), self.field("Version")), ("blockwright", project))
        text = self.field("Description")
        self.assertLess(len(text.splitlines()[0]), 80)
        self.assertIn("does not screen", text)

    def test_the_changes_are_in_debians_form(self):
        packed = self.unpacked / "share/doc/blockwright/changelog.gz"
        parsed = output("dpkg-parsechangelog", "-l", "-", input=output("zcat", packed))
        self.assertIn("Source: blockwright\n", parsed)
        self.assertIn(f"Version: {self.field('Version')}\n", parsed)

    def test_the_programs_come_without_their_symbols(self):
        for program in ("bwright", "blockwright"):
            done = subprocess.run(["nm", self.unpacked / "bin" / program], capture_output=True,
                                  text=True, check=False)
            self.assertIn("no symbols", done.stderr)


if __name__ == "__main__":
    unittest.main()
