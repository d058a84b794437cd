# SPDX-License-Identifier: GPL-3.0-or-later
"""What the programs that were built say of themselves: commands and options, from their help."""
import functools
import os
import re
import subprocess
from pathlib import Path

BIN = Path(os.environ["BW_BIN"])


@functools.cache
def help_of(program, *command):
    return subprocess.run([BIN / program, *command, "--help"], capture_output=True, text=True,
                          check=True).stdout


def commands():
    part = help_of("bwright").split("Subcommands:\n")[1].split("\n\n")[0]
    return [line.split()[0] for line in part.splitlines()]


def options(text):
    """Short and long ones, at the front of their line."""
    fronts = re.findall(r"^ {2}(-[^ ,]+(?:, ?-[^ ,]+)*)", text, re.MULTILINE)
    return {option for front in fronts for option in front.replace(" ", "").split(",")}
