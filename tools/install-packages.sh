#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the Debian packages (12 and 13) that building Blockwright needs.
#   sh tools/install-packages.sh [--test] [--gate] [--package] [--list]
# --test adds what the tests need, --gate what tools/gate.sh needs, --package what tools/package.sh
# needs; --list only prints the names.
# Where everything is there already it asks nothing of the network and changes nothing.
set -eu

wanted="g++ cmake ninja-build ccache
        qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-l10n-tools libqt6svg6 qt6-qpa-plugins
        libgl-dev libopengl-dev
        libsqlite3-dev nlohmann-json3-dev libcli11-dev libfmt-dev fonts-dejavu-core"
# Parts that one release has on its own and the other inside a package above.
where_existing="qt6-svg-plugins"
# Without these, reference tests have nothing to compare with.
test_where_existing="python3-simpy3 minizinc flatzinc"
test_wanted="catch2 python3 python3-icalendar python3-jsonschema poppler-utils xvfb shared-mime-info
             desktop-file-utils appstream groff-base mandoc dpkg-dev file"
gate_wanted="git clang-format clang-tidy clang libclang-rt-dev zsh"
package_wanted="dpkg-dev file"
only_list=no

for option in "$@"; do
    case $option in
    --test) wanted="$wanted $test_wanted"; where_existing="$where_existing $test_where_existing" ;;
    --gate) wanted="$wanted $test_wanted $gate_wanted"
            where_existing="$where_existing $test_where_existing" ;;
    --package) wanted="$wanted $package_wanted" ;;
    --list) only_list=yes ;;
    *) echo "usage: install-packages.sh [--test] [--gate] [--package] [--list]" >&2; exit 2 ;;
    esac
done

if [ "$only_list" = yes ]; then
    printf '%s\n' $wanted $where_existing | sort -u
    exit 0
fi
if ! command -v apt-get >/dev/null || ! command -v dpkg >/dev/null; then
    echo "No apt-get here. These Debian packages, under whatever name your system gives them, are" \
         "needed:" $wanted >&2
    exit 0
fi

missing_of() {
    for package in "$@"; do
        dpkg -s "$package" 2>/dev/null | grep -q '^Status: .* installed$' || printf '%s ' "$package"
    done
}
known_of() {
    for package in "$@"; do
        if apt-cache show "$package" >/dev/null 2>&1; then printf '%s ' "$package"; fi
    done
}
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null; then
        sudo "$@"
    else
        echo "Not root, and no sudo here. Run this as root, then start again:" >&2
        echo "  apt-get update && apt-get install --no-install-recommends $missing" >&2
        exit 1
    fi
}

missing=$(missing_of $wanted)
extra=$(missing_of $(known_of $where_existing))
if [ -z "$missing$extra" ]; then
    echo "All packages are installed."
    exit 0
fi
echo "Installing: $missing$extra"
as_root apt-get update -q
extra=$(missing_of $(known_of $where_existing)) # a bare machine knows them only now
as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends \
    $missing $extra
