#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The whole gate, the same by hand and in CI.
#   sh tools/gate.sh            every step
#   sh tools/gate.sh --list     the steps and what they are
#   sh tools/gate.sh STEP...    these steps, in this order
# A failed step prints what it found and the next one goes on; the last line counts. The exit code
# is 0 when all passed. BW_SINCE=REF has tidy look only at what changed since that commit.
# BW_BUILD_ROOT and BW_JOBS are those of tools/build.sh.
set -u
cd "$(dirname "$0")/.." || exit 2

root=${BW_BUILD_ROOT:-build}
jobs=${BW_JOBS:-$(nproc)}
log=$(mktemp)
trap 'rm -f "$log"' EXIT

steps="format house desktop build test asan tsan tidy fuzz"
what_of() {
    case $1 in
    format) echo "clang-format 14 finds nothing to change" ;;
    house) echo "arrows, circles, sizes, licence lines, links; and the check itself" ;;
    desktop) echo "desktop file, metainfo and file types are valid and installed" ;;
    build) echo "everything builds with warnings as errors (preset dev)" ;;
    test) echo "every test (preset dev), the examples of the documents among them" ;;
    asan) echo "every test under the address and undefined-behaviour sanitizers" ;;
    tsan) echo "the engine's tests under the thread sanitizer" ;;
    tidy) echo "clang-tidy finds nothing in the rooms without Qt" ;;
    fuzz) echo "half a minute of any bytes breaks no reader" ;;
    *) return 1 ;;
    esac
}

sources() { git ls-files -co --exclude-standard "$@"; }

step_format() {
    # Versions differ in taste; the files are laid out by the one of Debian 12.
    formatter=$(command -v clang-format-14 || command -v clang-format) || return 1
    if ! "$formatter" --version | grep -q 'version 14\.'; then
        echo "skipped: needs clang-format 14, here is $("$formatter" --version)"
        return 77
    fi
    sources '*.cpp' '*.hpp' | xargs "$formatter" --dry-run -Werror --style=file
}
step_house() { sh tools/check-house.sh && python3 -B tests/house/house_test.py; }
step_build() { sh tools/build.sh dev; }
run_tests() { ctest --test-dir "$root/$1" --output-on-failure -j "$jobs" ${2:-}; }
step_test() { step_build && run_tests dev; }
step_desktop() { step_build && run_tests dev '-R ^desktop$ --no-tests=error'; }
step_asan() { sh tools/build.sh asan && run_tests asan; }
step_tsan() { sh tools/build.sh tsan -- test_core && run_tests tsan '-R ^core$ --no-tests=error'; }
step_fuzz() { sh tools/fuzz.sh 10; }
step_tidy() {
    sh tools/build.sh dev -- build.ninja || return 1
    if [ -n "${BW_SINCE:-}" ]; then
        files=$(git diff --name-only --diff-filter=d "$BW_SINCE" -- 'src/*.cpp' | grep -Ev '^src/(desk|sheets)/')
    else
        files=$(sources 'src/core/*.cpp' 'src/interchange/*.cpp' 'src/store/*.cpp' 'src/edit/*.cpp' \
            'src/cli/*.cpp')
    fi
    # The build has its own warnings, as GCC knows them; here only the checks of .clang-tidy speak.
    # Standard error only counts what the system's headers would have said.
    echo "$files" | xargs -r -n 4 -P "$jobs" clang-tidy --quiet -p "$root/dev" \
        --extra-arg=-Wno-error --extra-arg=-Wno-unknown-warning-option 2>/dev/null
}

if [ "${1:-}" = --list ]; then
    for step in $steps; do printf '%-8s %s\n' "$step" "$(what_of "$step")"; done
    exit 0
fi
[ $# -gt 0 ] || set -- $steps
for step in "$@"; do
    what_of "$step" >/dev/null || { echo "no step '$step'; sh tools/gate.sh --list" >&2; exit 2; }
done

passed=0 failed=0
for step in "$@"; do
    began=$(date +%s)
    "step_$step" >"$log" 2>&1
    code=$?
    took=$(($(date +%s) - began))
    case $code in
    0) passed=$((passed + 1)) verdict=passed ;;
    77) verdict=skipped ;;
    *) failed=$((failed + 1)) verdict=FAILED ;;
    esac
    [ "$code" = 0 ] || tail -n 200 "$log"
    printf '%-8s %-8s %4d s  %s\n' "$verdict" "$step" "$took" "$(what_of "$step")"
done
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
