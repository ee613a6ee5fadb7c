#!/bin/bash
# random_boats.sh - sweeps random boats and sailors, and fails where a line is not a balance within its
# residual or an outcome with a name: no number that is none, no boat left out.
# SPDX-License-Identifier: MIT
#
# Usage: test/random_boats.sh <source folder> <program> <boats>
set -eu
demo=$1/demo
program=$2
boats=$3
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
"$program" sweep --boat "$demo/heron.yaml" --sailor "$demo/light.yaml" --day "$demo/breeze.yaml" \
    --ask balance --course reach --draws "$boats" -o "$folder/table.csv"
awk -F, -v boats="$boats" '
    function column(name, i) { for (i = 1; i <= NF; i++) if ($i ~ "^" name) return i }
    function wrong(what) { print "random_boats: line " NR ": " what ": " $0; bad = 1; exit 1 }
    NR == 1 { outcome = column("outcome"); pin = column("pin"); residual = column("residual"); next }
    { told[$outcome]++; pins[$pin] = 1 }
    tolower($0) ~ /nan|[^a-z]inf/ { wrong("no number") }
    $outcome == "flies" || $outcome == "sails on the hull" {
        if (!($residual >= 0 && $residual < 1e-9)) wrong("residual")
        next
    }
    $outcome != "no steady balance found" { wrong("no such outcome") }
    END {
        if (bad) exit 1
        for (pin in pins) count++
        if (NR - 1 != boats * count) { print "random_boats: " NR - 1 " lines"; exit 1 }
        for (outcome in told) printf "random_boats: %9d %s\n", told[outcome], outcome
    }' "$folder/table.csv"
