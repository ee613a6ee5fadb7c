#!/bin/bash
# readme.sh - fails when the README shows what `lullwise pick` does not print on the demo day, or names a
# command that is not there, or leaves one out.
# SPDX-License-Identifier: MIT
#
# Usage: test/readme.sh <source folder> <lullwise>
set -eu
cd "$1"
lullwise=$2
printed=$("$lullwise" pick --boat demo/heron.yaml --sailor demo/light.yaml --day demo/breeze.yaml 2>/dev/null | sed 's/ *$//')
faults=0
while IFS= read -r line; do
    [ -z "$line" ] || grep -qxF -- "$line" <<<"$printed" || {
        echo "readme: not printed on the demo day: $line"
        faults=$((faults + 1))
    }
done < <(awk '/^```/ { inside = !inside; next } inside' README.md)
there=$("$lullwise" --help | grep -oE '^  [a-z]+ ' | tr -d ' ' | sort -u)
named=$(grep -oE '(build/release/|`)lullwise +[a-z]+' README.md | grep -oE '[a-z]+$' | grep -vx quantities | sort -u)
for command in $(comm -3 <(echo "$there") <(echo "$named")); do
    echo "readme: '$command' is a command or named in README.md, but not both"
    faults=$((faults + 1))
done
[ $faults = 0 ] && echo "readme: as printed, $(wc -w <<<"$there") commands named"
exit $((faults > 0))
