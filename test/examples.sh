#!/bin/bash
# examples.sh - writes doc/examples.md: the programs of example/ as they stand, and what they print.
# SPDX-License-Identifier: MIT
#
# Usage: test/examples.sh <source folder> <folder of the built examples> [check]
# With `check` it fails when the page is stale, or a program has 60 lines or more.
set -eu
cd "$1"
built=$2
names="balance choice ride foil track"
page() {
    echo "# Examples"
    echo
    echo "Five programs on the engine alone. They stand in [example/](../example), include"
    echo "[lullwise.h](../engine/include/lullwise/lullwise.h) and link \`liblullwise_engine.a\` and \`-lm\`."
    echo "This page is written by \`test/examples.sh\`."
    for name in $names; do
        printf '\n## %s\n\n```c\n' "${name^}"
        cat "example/$name.c"
        printf '```\n\nIt prints\n\n```text\n'
        "$built/example_$name" || exit 1
        printf '```\n'
    done
}
if [ "${3:-}" != check ]; then
    page
    exit
fi
for file in example/*.c; do
    name=$(basename "$file" .c)
    [[ " $names " == *" $name "* ]] || { echo "examples: $file is not shown"; exit 1; }
    [ "$(wc -l <"$file")" -lt 60 ] || { echo "examples: $file has 60 lines or more"; exit 1; }
done
page | diff doc/examples.md - || { echo "examples: doc/examples.md is stale"; exit 1; }
echo "examples: $(ls example/*.c | wc -l) programs, shown as they are"
