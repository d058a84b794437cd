#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Proves the package of tools/package.sh on a bare Debian: makes one by debootstrap, installs the
# package there with nothing but what it depends on, uses both programs, and takes it out again.
# Needs root, debootstrap and a network.
#   sudo sh tools/fresh-package.sh FILE.deb [bookworm|trixie]
set -eu
cd "$(dirname "$0")/.."

package=${1:?"which package? sh tools/fresh-package.sh FILE.deb"}
suite=${2:-bookworm}
mirror=${BW_MIRROR:-http://deb.debian.org/debian}

if [ "$(id -u)" != 0 ]; then
    echo "chroot and debootstrap need root: sudo sh tools/fresh-package.sh $*" >&2
    exit 2
fi
machine=$(mktemp -d "/tmp/$suite-package.XXXXXX")
chmod 755 "$machine" # apt reads as a user of its own
trap 'umount "$machine/proc" 2>/dev/null || true; rm -rf --one-file-system "$machine"' EXIT
debootstrap --variant=minbase "$suite" "$machine" "$mirror" >"$machine.log" 2>&1 || {
    tail "$machine.log" >&2
    exit 1
}
rm "$machine.log"
cp /etc/resolv.conf "$machine/etc/resolv.conf"
mount -t proc proc "$machine/proc" 2>/dev/null || echo "No /proc in there; going on without."
mkdir -m 700 "$machine/root/run"
cp "$package" "$machine/root/blockwright.deb"
cp data/demo/saltmarsh-boathouse.bundle.json "$machine/root/demo.bundle.json"

inside() {
    chroot "$machine" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
        DEBIAN_FRONTEND=noninteractive QT_QPA_PLATFORM=offscreen XDG_RUNTIME_DIR=/root/run sh -c "cd /root && $*"
}
say() { echo "== $suite: $*"; }

inside apt-get update -q >/dev/null
inside apt-get install -q -y --no-install-recommends ./blockwright.deb >"$machine/root/install.log" 2>&1 || {
    tail -n 30 "$machine/root/install.log" >&2
    exit 1
}
say "installed, $(inside "dpkg-query -f '\${db:Status-Status}\\n' -W | grep -c installed") packages in all"
inside blockwright --version
inside bwright --version
# 1 says that the check is done and a finding of level stop is among its findings.
inside "bwright check --bundle demo.bundle.json >check.txt" || [ $? -eq 1 ]
grep -c '^[■▲●]' "$machine/root/check.txt" | sed 's/$/ findings in the demonstration month/'
inside "bwright sheets --bundle demo.bundle.json --out sheets" | sed 's/^/  /'
inside "blockwright --demo --bench-start" >/dev/null 2>&1 # makes the gym file, and the list of fonts
inside "blockwright --demo --bench-start" 2>/dev/null | sed 's/$/ ms to the first paint/'
inside "dpkg -V blockwright"
inside apt-get purge -q -y blockwright >/dev/null 2>&1
left=$(inside "find / -xdev -ipath '*blockwright*' -not -path '/root/*' -not -path '/proc/*' -not -path '/var/log/*' -not -path '/tmp/*'")
[ -z "$left" ] || { echo "left behind: $left" >&2; exit 1; }
say "installed, used and taken out again."
