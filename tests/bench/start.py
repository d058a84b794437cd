#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Start of the window program on the demonstration gym, without a screen: from the start of the process
to the first paint, and the memory it takes once it has settled. Exit code 1 when a mark is missed.

    start.py PROGRAM [-platform NAME and other options of the program]
"""
import os
import re
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

STARTS, SETTLED_AFTER_SECONDS = 15, 4  # by then the classes behind the Bench have been played
MOST_MILLISECONDS, MOST_MIB = 300, 150


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


def main(arguments):
    if not arguments:
        sys.exit(__doc__)
    command = [*arguments, "--demo"]
    with tempfile.TemporaryDirectory(prefix="bw start ") as home:
        environment = {"QT_QPA_PLATFORM": "offscreen", **os.environ, "BLOCKWRIGHT_HOME": home}
        paints = first_paints(command, environment)
        now, peak = memory(command, environment)
    median = statistics.median(paints)
    kept = told(f"start to the first paint, demo: median {median:.0f} ms of {STARTS}, "
                f"{paints[0]:.0f} to {paints[-1]:.0f}", median, MOST_MILLISECONDS)
    kept &= told(f"memory {SETTLED_AFTER_SECONDS} s after the start, demo: {now:.0f} MiB, never more than {peak:.0f}",
                 peak, MOST_MIB)
    return 0 if kept else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
