#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Proves the commands of the README on a bare Debian: makes one by debootstrap, clones the last commit
# into it and runs tools/test.sh and tools/run.sh there. Needs root, debootstrap and a network.
#   sudo sh tools/fresh-machine.sh [bookworm|trixie] [FOLDER]
# FOLDER (standard /tmp/SUITE) is made when missing and left for the next time; the clone is new each
# time, the build folders too. BW_JOBS limits the parallel compilers.
set -eu
cd "$(dirname "$0")/.."

suite=${1:-bookworm}
machine=${2:-/tmp/$suite}
mirror=${BW_MIRROR:-http://deb.debian.org/debian}

if [ "$(id -u)" != 0 ]; then
    echo "chroot and debootstrap need root: sudo sh tools/fresh-machine.sh $*" >&2
    exit 2
fi
if [ ! -e "$machine/etc/debian_version" ]; then
    debootstrap --variant=minbase "$suite" "$machine" "$mirror"
fi
cp /etc/resolv.conf "$machine/etc/resolv.conf"

rm -rf "$machine/root/blockwright"
git -c safe.directory='*' clone -q --no-hardlinks . "$machine/root/blockwright"

mountpoint -q "$machine/proc" || mount -t proc proc "$machine/proc" 2>/dev/null ||
    echo "No /proc in there; going on without."
trap 'umount "$machine/proc" 2>/dev/null || true' EXIT

inside() {
    echo "== $suite: $*"
    nice -n 10 chroot "$machine" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root \
        ${BW_JOBS:+BW_JOBS="$BW_JOBS"} sh -c "cd /root/blockwright && $*"
}
inside sh tools/test.sh
inside sh tools/run.sh
echo "== $suite: both commands ran."
