#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds (preset release) and shows the month of the demonstration gym: in
# the window where there is a screen, else checked, timed and simulated here, and as a wall sheet in out/.
set -eu
cd "$(dirname "$0")/.."

sh tools/install-packages.sh
sh tools/build.sh release -DBLOCKWRIGHT_TESTS=OFF -DBLOCKWRIGHT_WERROR=OFF -- bwright blockwright

bin=${BW_BUILD_ROOT:-build}/release/bin
demo=data/demo/saltmarsh-boathouse.bundle.json
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    echo "Opening a copy of the demonstration gym."
    exec "$bin/blockwright" --demo
fi

echo "No screen here, so on the command line:"
printf '\n$ bwright check --bundle %s\n' "$demo"
# 1 says that the check is done and a finding of level stop is among its findings.
"$bin/bwright" check --bundle "$demo" || [ $? -eq 1 ]
printf '\n$ bwright time --bundle %s --week 2\n' "$demo"
"$bin/bwright" time --bundle "$demo" --week 2
printf '\n$ bwright floor --bundle %s --week 2\n' "$demo"
"$bin/bwright" floor --bundle "$demo" --week 2
printf '\n$ bwright sheets --bundle %s --out out\n' "$demo"
"$bin/bwright" sheets --bundle "$demo" --out out
