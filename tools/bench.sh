#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds the benchmarks (preset release) and runs them one after the other; docs/performance.md says
# what each figure means. The exit code counts those that missed their mark. Not part of the gate: the
# figures belong to a quiet machine.
#   sh tools/bench.sh [NAME...]     such as check import sheets desk desk_years start
set -u
cd "$(dirname "$0")/.." || exit 2

sh tools/install-packages.sh --test || exit 2
[ $# -gt 0 ] || set -- $(cd tests/bench && ls bench_*.cpp | sed 's/^bench_//; s/\.cpp$//') start
targets=$(echo "$@" | tr ' ' '\n' | sed 's/^start$/desk_years/; s/^/bench_/')
sh tools/build.sh release -DBLOCKWRIGHT_BENCH=ON -- blockwright $targets || exit 2
bin=${BW_BUILD_ROOT:-build}/release/bin

missed=0
for name in "$@"; do
    echo "== $name"
    if [ "$name" = start ]; then
        python3 -B tests/bench/start.py "$bin/blockwright" "$("$bin/bench_desk_years" --file)"
    else
        "$bin/bench_$name"
    fi || missed=$((missed + 1))
done
exit "$missed"
