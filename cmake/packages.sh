#!/bin/bash
# packages.sh - installs the Debian packages that a job needs, and only those that are missing.
# SPDX-License-Identifier: MIT
#
# Usage: cmake/packages.sh run|page|test|bench|fuzz|check|format|deb
set -eu

run="build-essential cmake ninja-build pkg-config libyaml-dev libjansson-dev libexpat1-dev
     libproj-dev libsqlite3-dev libevent-dev nettle-dev librsvg2-bin"
test="$run poppler-utils libcmocka-dev libcminpack-dev libmpfr-dev liblapack-dev libsundials-dev clang-14
      lld-14 wasi-libc libclang-rt-14-dev libclang-rt-14-dev-wasm32 mandoc mpich libmpich-dev procps
      zsh fish"
page="cmake ninja-build clang-14 lld-14 wasi-libc libclang-rt-14-dev-wasm32 zopfli"
node=""
command -v node >/dev/null || node="$node nodejs"
command -v npm >/dev/null || node="$node npm"
page="$page $node"
case "$1" in
    run) wanted=$run ;;
    page) wanted=$page ;;
    test) wanted="$test $page chromium" ;;
    bench) wanted="$run $page libcminpack-dev liblapack-dev libsundials-dev chromium" ;;
    fuzz) wanted="$run clang-14 libclang-rt-14-dev" ;;
    check) wanted="$test $page clang-tidy-14 cppcheck clang-format-14" ;;
    deb) wanted="$run $page libmpich-dev mpich lintian debootstrap dpkg-dev" ;;
    format) wanted="clang-format-14 $node" ;;
    *) echo "packages.sh: no set of packages is called '$1'" >&2; exit 2 ;;
esac

if ! command -v dpkg-query >/dev/null; then
    echo "This is not a Debian system. Needed, under whatever names they have here:" $wanted >&2
    exit 0
fi

missing=""
for package in $wanted; do
    status=$(dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null | head -n 1)
    [ "$status" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

as_root=""
if [ "$(id -u)" != 0 ]; then
    if ! command -v sudo >/dev/null; then
        echo "Missing Debian packages, and neither root nor sudo to install them. As root:" >&2
        echo "    apt-get install --no-install-recommends$missing" >&2
        exit 1
    fi
    as_root="sudo"
fi
echo "Installing missing Debian packages:$missing"
export DEBIAN_FRONTEND=noninteractive
$as_root apt-get update -q
if ! $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -qy --no-install-recommends $missing
then
    echo "The packages could not be installed. By hand, as root:" >&2
    echo "    apt-get install --no-install-recommends$missing" >&2
    exit 1
fi
