#!/bin/bash
# sample_tracks.sh - files of real receivers, which general-purpose packages carry as test data, are
# read or refused with a reason. None of them is in this repository.
# SPDX-License-Identifier: MIT
#
# Usage: test/sample_tracks.sh <source folder> <lullwise>
set -eu
cd "$1"
lullwise=$2
MOST=10  # [s] for one file
# Debian's source package gpsd (cmake/samples.sh) and npm's gps-distance (web/package.json).
files=$(find build/samples -name '*.log' 2>/dev/null | sort
    ls web/node_modules/gps-distance/test/*.gpx 2>/dev/null) || true
[ -n "$files" ] || { echo "sample_tracks: skipped: none are there; \`make samples\` fetches them"; exit 77; }
faults=0 read=0 refused=0
for file in $files; do
    code=0
    said=$(timeout $MOST "$lullwise" track "$file" --json 2>&1 >/dev/null) || code=$?
    if [ $code = 0 ]; then
        read=$((read + 1))
    elif [ $code = 2 ] && grep -q 'fault:' <<<"$said"; then
        refused=$((refused + 1))
    else
        echo "sample_tracks: $file ends with $code: $said"
        faults=$((faults + 1))
    fi
done
echo "sample_tracks: $read read, $refused refused with a reason"
[ $faults = 0 ] && [ $read -gt 0 ]
