#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Start of the window program without a screen, on the demonstration gym and then on the gym file given:
from the start of the process to the first paint, and the memory it takes once it has settled. Exit code 1 when
a mark is missed.

    start.py PROGRAM [FILE.bwgym]     the file is copied before it is opened
"""
import os
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

STARTS, SETTLED_AFTER_SECONDS = 15, 4  # by then the classes behind the Bench have been played
MOST_MILLISECONDS, MOST_MIB, MOST_MIB_OF_YEARS = 300, 150, 200


def first_paints(command, environment):
    """Milliseconds, fastest first; the first start is not among them, as it makes the gym file."""
    times = [float(subprocess.run([*command, "--bench-start"], env=environment, check=True,
                                  capture_output=True, text=True).stdout)
             for _ in range(1 + STARTS)]
    return sorted(times[1:])


def memory(command, environment):
    """MiB resident now, and the most that ever were."""
    with subprocess.Popen(command, env=environment, stderr=subprocess.DEVNULL) as program:
        time.sleep(SETTLED_AFTER_SECONDS)
        if program.poll() is not None:
            sys.exit(f"{command[0]} ended by itself")
        status = Path(f"/proc/{program.pid}/status").read_text(encoding="utf-8")
        program.terminate()
    return [int(re.search(rf"^{row}:\s+(\d+) kB", status, re.MULTILINE).group(1)) / 1024
            for row in ("VmRSS", "VmHWM")]


def told(text, figure, most):
    print(f"{text} (at most {most}){'' if figure <= most else '  MISSED'}")
    return figure <= most


def measured(name, home, command, most_mib):
    environment = {"QT_QPA_PLATFORM": "offscreen", **os.environ, "BLOCKWRIGHT_HOME": str(home)}
    paints = first_paints(command, environment)
    now, peak = memory(command, environment)
    median = statistics.median(paints)
    kept = told(f"start to the first paint, {name}: median {median:.0f} ms of {STARTS}, "
                f"{paints[0]:.0f} to {paints[-1]:.0f}", median, MOST_MILLISECONDS)
    return told(f"memory {SETTLED_AFTER_SECONDS} s after the start, {name}: {now:.0f} MiB, "
                f"never more than {peak:.0f}", peak, most_mib) and kept


def main(program, file=None):
    with tempfile.TemporaryDirectory(prefix="bw start ") as home:
        kept = measured("demo", home, [program, "--demo"], MOST_MIB)
        if file:
            copy = shutil.copy(file, Path(home) / "copy.bwgym")
            kept &= measured(Path(file).stem, home, [program, copy], MOST_MIB_OF_YEARS)
    return 0 if kept else 1


if __name__ == "__main__":
    if len(sys.argv) not in (2, 3):
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))
