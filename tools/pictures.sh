#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Draws docs/pictures anew: the screens on the demonstration gym, and its wall sheet.
set -eu
cd "$(dirname "$0")/.."

sh tools/install-packages.sh --test
sh tools/build.sh dev -- pictures bwright
bin=${BW_BUILD_ROOT:-build}/dev/bin
"$bin/pictures" docs/pictures

out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
"$bin/bwright" sheets --bundle data/demo/saltmarsh-boathouse.bundle.json --out "$out" --only wall >/dev/null
pdftoppm -r 60 -png -f 1 -l 1 -singlefile "$out"/*.pdf docs/pictures/wall
echo "drawn docs/pictures/wall.png"
