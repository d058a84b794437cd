#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Brings the translations in step with the texts of the sources; docs/translating.md.
#   sh tools/translate.sh [--check | --list]
exec python3 -B "$(dirname "$0")/translate.py" "$@"
