#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Configures and builds one preset of CMakePresets.json.
#   sh tools/build.sh PRESET [cmake -D options...] [-- ninja targets...]
# BW_BUILD_ROOT moves the build folders (standard: build/), BW_JOBS limits the parallel compilers.
set -eu
cd "$(dirname "$0")/.."

preset=$1
shift
options=
while [ $# -gt 0 ] && [ "$1" != -- ]; do
    options="$options $1"
    shift
done
[ $# -eq 0 ] || shift

folder=${BW_BUILD_ROOT:-build}/$preset
cmake --preset "$preset" -B "$folder" $options >/dev/null # faults go to standard error
exec ninja -C "$folder" ${BW_JOBS:+-j "$BW_JOBS"} "$@"
