#!/bin/bash
# bare_root.sh - fails when the Debian packages do not install and run in a bare Debian 12: the demo
# day answered, manual pages shown, an example built on the installed library, a sweep by MPI.
# SPDX-License-Identifier: MIT
#
# Usage: test/bare_root.sh <folder with the packages> <root folder, made where it is missing>
#
# As root. Debian's packages come from where this machine has its own.
set -eu
packages=$(realpath "$1")
root=$(realpath -m "$2")
mirror=$(sed -nE 's/^(URIs:|deb) *(\[[^]]*\] *)?(http[^ ]*).*/\3/p' /etc/apt/sources.list \
    /etc/apt/sources.list.d/* 2>/dev/null | head -n 1)
within() { chroot "$root" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 HOME=/root "$@"; }
fail() { echo "bare root: $*"; exit 1; }

if [ ! -x "$root/usr/bin/apt-get" ]; then
    debootstrap --variant=minbase bookworm "$root" "${mirror:-http://deb.debian.org/debian}"
fi
rm -rf "$root/packages" && mkdir -p "$root/packages" && cp "$packages"/*.deb "$root/packages"
within apt-get purge -qy 'lullwise*' liblullwise-dev >/dev/null 2>&1 || true
within sh -c 'apt-get install -qy --no-install-recommends /packages/lullwise_*.deb' || fail "lullwise: not installed"
within sh -c 'cd /usr/share/doc/lullwise/examples && lullwise pick --boat heron.yaml --sailor light.yaml --day breeze.yaml' |
    tee "$root/packages/said" | head -n 12
grep -q 'Why' "$root/packages/said" || fail "the demo day is not answered"

within sh -c 'apt-get install -qy --no-install-recommends mandoc gcc libc6-dev pkg-config mpich /packages/*.deb' ||
    fail "liblullwise-dev, lullwise-mpi: not installed"
version=$(within lullwise --version | cut -d' ' -f2)
for page in 1/lullwise 1/lullwise-sweep 5/lullwise-boat 5/lullwise-sailor 5/lullwise-day; do
    within sh -c "zcat /usr/share/man/man$page.${page%%/*}.gz >/packages/page && mandoc -T lint -W warning /packages/page >&2;
        mandoc -T ascii /packages/page" >"$root/packages/shown"
    grep -q "lullwise $version" "$root/packages/shown" || fail "$page: not of version $version"
done
within sh -c 'cd /packages && cc /usr/share/doc/liblullwise-dev/examples/balance.c -o balance $(pkg-config --cflags --libs lullwise) && ./balance' ||
    fail "the example does not build"
mkdir -p "$root/dev/shm"  # what MPI speaks through is there as long as it runs
unshare --mount sh -c "mount -t proc proc '$root/proc' && mount -t sysfs sys '$root/sys' && mount -t tmpfs shm '$root/dev/shm' &&
    chroot '$root' sh -c 'cd /packages && rm -f table.csv* && mpirun -n 2 lullwise-sweep --ask balance --over person.mass=60:80:10kg -o table.csv'" &&
    [ "$(wc -l <"$root/packages/table.csv")" -gt 3 ] || fail "lullwise-sweep: no table"
echo "bare root: installed, answered, shown, built, swept"
