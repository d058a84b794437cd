#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds everything (preset dev) and runs every test.
# The last lines are ctest's summary; the exit code is not 0 when anything failed.
#   sh tools/test.sh [ctest options, such as -R store]
set -eu
cd "$(dirname "$0")/.."

sh tools/install-packages.sh --test
sh tools/build.sh dev
exec ctest --test-dir "${BW_BUILD_ROOT:-build}/dev" --output-on-failure -j "${BW_JOBS:-$(nproc)}" "$@"
