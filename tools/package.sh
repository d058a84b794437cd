#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds (preset release) and packs: out/blockwright_VERSION_ARCH.deb, for the
# Debian release that it is built on. Says the package's name last.
#   sh tools/package.sh
#   sudo apt install ./out/blockwright_*.deb
# SOURCE_DATE_EPOCH, where set, dates the files in the package.
set -eu
cd "$(dirname "$0")/.."

sh tools/install-packages.sh --package
sh tools/build.sh release -DBLOCKWRIGHT_TESTS=OFF -DBLOCKWRIGHT_BENCH=OFF -DBLOCKWRIGHT_WERROR=OFF -- \
    bwright blockwright
mkdir -p out
cpack --config "${BW_BUILD_ROOT:-build}/release/CPackConfig.cmake" -G DEB -B out >/dev/null
rm -rf out/_CPack_Packages
ls out/blockwright_*.deb
