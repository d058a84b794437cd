#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Draws docs/pictures anew: the screens on the demonstration gym, and its sheets.
set -eu
cd "$(dirname "$0")/.."

sh tools/install-packages.sh --test
sh tools/build.sh dev -- pictures
bin=${BW_BUILD_ROOT:-build}/dev/bin
"$bin/pictures" docs/pictures
