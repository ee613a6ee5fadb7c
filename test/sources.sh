#!/bin/bash
# sources.sh - fails when a [key] in a comment, a table or a page is not in doc/sources.md, or a file with a
# [judged] number is not among the judgements of doc/theory.md, or a file named there is gone.
# SPDX-License-Identifier: MIT
#
# Usage: test/sources.sh <source folder>
set -eu
cd "$1"
# What stands in brackets and is no source: units, marks, words that comments use for members.
words='rad|deg|turns|chords|ulp|judged|pin|key|label|value|unit|index|column|bytes|source|width'
faults=0
keys=$({
    grep -rhoE --include='*.[ch]' '(//|").*' engine records answer sweep desk web command ranks test
    cat doc/theory.md
} | grep -oE '[^]A-Za-z0-9_)]\[[a-z0-9][a-z0-9.-]{2,}\]([^[(]|$)' | grep -oE '\[[a-z0-9.-]+\]' | tr -d '[]' |
    grep -vxE "$words|[0-9]+" | sort -u)
for key in $keys; do
    grep -q "^| \`$key\` |" doc/sources.md || {
        echo "sources: [$key] is not in doc/sources.md"
        faults=$((faults + 1))
    }
done
judgements=$(sed -n '/^## Judgements/,/^## What is left out/p' doc/theory.md)
marked=$(grep -rlF '[judged]' --include='*.[ch]' engine answer sweep command ranks | grep -v command/quantities.c)
for file in $marked; do
    grep -qF "${file#engine/}" <<<"$judgements" || {
        echo "sources: $file has a [judged] number and is not among the judgements of doc/theory.md"
        faults=$((faults + 1))
    }
done
for file in $(grep -oE '[a-z_/]+/[a-z_]+\.[ch]' <<<"$judgements" | sort -u); do
    [ -f "engine/$file" ] || [ -f "$file" ] || {
        echo "sources: doc/theory.md tells of a judgement in $file, which is not there"
        faults=$((faults + 1))
    }
done
[ $faults = 0 ] && echo "sources: $(echo "$keys" | wc -l) keys resolve"
exit $((faults > 0))
