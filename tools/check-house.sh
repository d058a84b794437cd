#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Holds the tree to the rules of docs/architecture.md and DEVELOPERS.md; lists every breach.
#   sh tools/check-house.sh [FOLDER]
exec python3 "$(dirname "$0")/house.py" "${1:-$(dirname "$0")/..}"
