#!/bin/bash
# sources.sh - fails when a [key] in a comment, a table or a page is not in doc/sources.md.
# SPDX-License-Identifier: MIT
#
# Usage: test/sources.sh <source folder>
set -eu
cd "$1"
# What stands in brackets and is no source: units, marks, words that comments use for members.
words='rad|deg|turns|chords|ulp|judged|pin|key|label|value|unit|index|column|bytes|source|width'
faults=0
keys=$({
    grep -rhoE --include='*.[ch]' '(//|").*' engine records advice desk web command test
    cat doc/theory.md
} | grep -oE '[^]A-Za-z0-9_)]\[[a-z0-9][a-z0-9.-]{2,}\]([^[(]|$)' | grep -oE '\[[a-z0-9.-]+\]' | tr -d '[]' |
    grep -vxE "$words|[0-9]+" | sort -u)
for key in $keys; do
    grep -q "^| \`$key\` |" doc/sources.md || {
        echo "sources: [$key] is not in doc/sources.md"
        faults=$((faults + 1))
    }
done
[ $faults = 0 ] && echo "sources: $(echo "$keys" | wc -l) keys resolve"
exit $((faults > 0))
