#!/bin/bash
# samples.sh - fetches files of real receivers, which a general-purpose Debian package carries as its
# tests' data; where they cannot be had it says so, and the test that reads them is skipped.
# SPDX-License-Identifier: MIT
#
# Usage: cmake/samples.sh <folder to put them in>
set -eu
folder=$1
[ ! -f "$folder/there" ] || exit 0
say() { echo "samples.sh: $1; test/sample_tracks.sh goes without" >&2; exit 0; }
command -v apt-get >/dev/null || say "this is not a Debian system"
rm -rf "$folder"
mkdir -p "$folder/apt/parts" "$folder/apt/lists/partial"
cd "$folder"
# The sources of the packages that this computer takes, from where it takes them.
for list in /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list; do
    [ -f "$list" ] || continue
    sed -E 's/^Types: deb$/Types: deb-src/; s/^deb /deb-src /' "$list" >"apt/parts/$(basename "$list")"
done
[ ! -f apt/parts/sources.list ] || mv apt/parts/sources.list apt/parts/all.list
options=(-q=2 -o Dir::Etc::sourcelist=/dev/null -o "Dir::Etc::sourceparts=$PWD/apt/parts"
         -o Acquire::Retries=0 -o Acquire::http::Timeout=10 -o Acquire::https::Timeout=10
         -o "Dir::State::lists=$PWD/apt/lists" -o "Dir::Cache=$PWD/apt")
apt-get "${options[@]}" update >/dev/null 2>&1 || say "no list of Debian's source packages could be had"
apt-get "${options[@]}" source --download-only gpsd >/dev/null 2>&1 ||
    say "Debian's source package gpsd could not be had"
tar -xf gpsd_*.orig.tar.* --wildcards '*/test/daemon/*.log' || say "gpsd has no test data"
rm -rf apt
touch there
echo "samples.sh: $(find . -name '*.log' | wc -l) files of gpsd"
