#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Fuzzes the readers of what comes from outside (preset fuzz: clang's libFuzzer with the address and
# undefined-behaviour sanitizers), one after the other. Exit code 1 when one was broken: its bytes are
# named, and belong into tests/fuzz/corpus/READER/ once it is repaired, where a test replays them.
#   sh tools/fuzz.sh [SECONDS] [READER...]     standard: 30 seconds each of bundle csv dose
# New inputs stay in the build folder for the next time.
set -u
cd "$(dirname "$0")/.." || exit 2

seconds=${1:-30}
[ $# -eq 0 ] || shift
[ $# -gt 0 ] || set -- bundle csv dose
sh tools/build.sh fuzz -- fuzzers >/dev/null || {
    echo "The fuzzers can't be built: sh tools/build.sh fuzz -- fuzzers" >&2
    exit 2
}
folder=${BW_BUILD_ROOT:-build}/fuzz

# The words of a bundle are those of its schema.
words_of() {
    if [ -f "tests/fuzz/$1.dict" ]; then
        echo "tests/fuzz/$1.dict"
        return
    fi
    grep -oE '"[A-Za-z][A-Za-z0-9_-]*"' docs/bundle.schema.json | sort -u |
        sed 's/"\(.*\)"/"\\"\1\\""/' >"$folder/$1.dict"
    echo "$folder/$1.dict"
}
longest_of() { [ "$1" != dose ] || echo -max_len=48; } # a cell is short

broken=0
for reader in "$@"; do
    kept=$folder/corpus/$reader log=$folder/fuzz-$reader.log
    mkdir -p "$kept"
    if "$folder/bin/fuzz_$reader" -max_total_time="$seconds" -timeout=10 -rss_limit_mb=2048 \
        -print_final_stats=1 -artifact_prefix="$folder/found-$reader-" -dict="$(words_of "$reader")" \
        $(longest_of "$reader") \
        "$kept" "tests/fuzz/corpus/$reader" >"$log" 2>&1; then
        runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
        echo "$reader: $runs inputs in $seconds s, nothing found"
    else
        broken=1
        echo "$reader: broken; the whole of $log says more"
        grep -E 'does not hold|^==.*ERROR|runtime error|SUMMARY|Test unit written' "$log"
    fi
done
exit "$broken"
