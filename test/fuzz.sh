#!/bin/bash
# fuzz.sh - runs every fuzz program for some seconds, from the seeds in test/seeds/<program>.
# SPDX-License-Identifier: MIT
#
# Usage: test/fuzz.sh <build folder> <seconds each>
set -eu
found=0
for program in "$1"/fuzz_*; do
    [ -f "$program" ] && [ -x "$program" ] || continue
    found=1
    name=$(basename "$program")
    mkdir -p "$1/corpus/$name"
    seeds=""; [ -d "test/seeds/$name" ] && seeds="test/seeds/$name"
    words=""; [ -f "test/seeds/$name.dict" ] && words="-dict=test/seeds/$name.dict"
    echo "$name, $2 s"
    "$program" -max_total_time="$2" -print_final_stats=1 $words -artifact_prefix="$1/" \
        "$1/corpus/$name" $seeds 2>&1 | tail -n 8
    [ "${PIPESTATUS[0]}" = 0 ]
done
[ $found = 1 ] || echo "no fuzz programs"
