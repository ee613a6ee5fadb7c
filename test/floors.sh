#!/bin/bash
# floors.sh - fails on an include or a call that runs up, and on state hidden in the engine.
# SPDX-License-Identifier: MIT
#
# Usage: test/floors.sh <source folder> <engine library, built without sanitizers>
set -eu
cd "$1"
library=$2
faults=0
fault() { echo "floors: $*"; faults=$((faults + 1)); }

files_of() { find "$@" -name node_modules -prune -o -name '*.[ch]' -print 2>/dev/null | sort; }
# Lines "how name" for each include of a file: how is < or ".
includes_of() { sed -nE 's/^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]*)[>"].*/\1 \2/p' "$1"; }

# Height of an engine folder: a folder may include its own height and below.
height_of() {
    case "$1" in
        lullwise | quantity | solve) echo 0 ;;
        medium) echo 1 ;;
        foil | hull | rig | linkage) echo 2 ;;
        boat) echo 3 ;;
        flight) echo 4 ;;
        motion) echo 5 ;;
        choice | signs | track) echo 6 ;;
        learning) echo 7 ;;
        *) echo unknown ;;
    esac
}

# --- includes of the engine
for file in $(files_of engine); do
    folder=$(echo "${file#engine/}" | cut -d/ -f1)
    [ "$folder" = include ] && folder=lullwise
    height=$(height_of "$folder")
    [ "$height" = unknown ] && { fault "$file: no height is known for engine/$folder"; continue; }
    while read -r how name; do
        case "$how$name" in
            '<string.h' | '<stdint.h' | '<stddef.h' | '<stdbool.h' | '<float.h' | '<math.h') ;;
            '<assert.h') ;;
            '<'*) fault "$file includes <$name>: the engine may not" ;;
            '"lullwise/'*)
                [ -f "engine/include/$name" ] || fault "$file includes \"$name\": not there" ;;
            '"'*/*)
                [ -f "engine/$name" ] || { fault "$file includes \"$name\": not in engine/"; continue; }
                other=$(height_of "${name%%/*}")
                case "$file,$name" in
                    engine/motion/ride/*,*) ;;
                    *,motion/ride/*) fault "$file includes \"$name\": rides come last" ;;
                    engine/motion/linear/*,*) ;;
                    *,motion/linear/*) fault "$file includes \"$name\": runs up within motion/" ;;
                esac
                [ "$folder" != solve ] || [ "${name%%/*}" = solve ] ||
                    fault "$file includes \"$name\": solve/ knows numbers only"
                [ "$other" != unknown ] && [ "$other" -le "$height" ] ||
                    fault "$file includes \"$name\": runs up" ;;
            *) fault "$file includes \"$name\": write the path from engine/" ;;
        esac
    done < <(includes_of "$file")
done

# --- lullwise.h: every public header, behind those that it needs
read_so_far=" "
while read -r how name; do
    for needed in $(includes_of "engine/include/$name" | sed -n 's/^" //p'); do
        [[ "$read_so_far" == *" $needed "* ]] || fault "lullwise.h has $name before $needed"
    done
    read_so_far="$read_so_far$name "
done < <(includes_of engine/include/lullwise/lullwise.h)
for file in engine/include/lullwise/*.h; do
    name=${file#engine/include/}
    [[ "$read_so_far lullwise/lullwise.h " == *" $name "* ]] || fault "lullwise.h leaves $name out"
done

# --- includes of the floors above
allowed_above() {
    case "$1" in
        records) echo "lullwise records" ;;
        answer) echo "lullwise records picture answer" ;;
        picture) echo "lullwise records picture" ;;
        sweep) echo "lullwise records answer picture sweep" ;;
        desk) echo "lullwise records answer picture desk" ;;
        web) echo "lullwise records answer picture web" ;;
        command) echo "lullwise records answer picture sweep desk command" ;;
        manual) echo "lullwise records answer picture sweep desk command manual" ;;
        ranks) echo "lullwise records answer picture sweep command ranks" ;;
    esac
}
for floor in records answer picture sweep desk web command manual ranks; do
    for file in $(files_of $floor); do
        while read -r how name; do
            [ "$how" = '"' ] || continue
            case "$name" in
                */*) [[ " $(allowed_above $floor) " == *" ${name%%/*} "* ]] ||
                    fault "$file includes \"$name\": $floor/ may not" ;;
                *) [ -f "$floor/$name" ] || fault "$file includes \"$name\": not in $floor/" ;;
            esac
        done < <(includes_of "$file")
    done
done

# --- what the engine calls outside itself: exact arithmetic and memory only
outside=$(nm -u "$library" | awk '$1 == "U" {print $2}' | sort -u |
    comm -23 - <(nm --defined-only "$library" | awk 'NF == 3 {print $3}' | sort -u))
for symbol in $outside; do
    case "$symbol" in
        sqrt | fabs | floor | copysign | fmin | fmax) ;;
        strto* | strdup | strndup | strftime | strerror) fault "the engine calls $symbol" ;;
        memcpy | memmove | memset | memcmp | memchr | str*) ;;
        _GLOBAL_OFFSET_TABLE_ | __assert_fail | __stack_chk_fail | __cpu_model | __cpu_indicator_init) ;;
        *) fault "the engine calls $symbol" ;;
    esac
done

# --- what the floors above call of libm: what is exact, so that every machine tells the same
inexact='a?(sin|cos|tan)h?|atan2|exp|exp2|exp10|expm1|log|log2|log10|log1p|pow|cbrt|hypot|erfc?|[lt]gamma'
while read -r call; do
    fault "$call: take lullwise/elementary.h, or leave it to the engine"
done < <(files_of records answer picture sweep desk web command manual ranks | xargs awk -v inexact="$inexact" '
    { gsub(/\/\/.*|"[^"]*"/, "") }
    match($0, "(^|[^a-zA-Z0-9_])(" inexact ")[fl]?\\(") {
        print FILENAME " calls " substr($0, RSTART, RLENGTH) ")"
    }')

# --- circles: no two files call each other, not even by way of others
calls_within() {  # lines "caller callee" of the objects below a folder
    find "$1" -name '*.o' | while read -r object; do  # but for those whose source is gone
        source=${object#*.dir/}
        [ ! -f "${source%.o}" ] || echo "$object"
    done | xargs -r nm -A 2>/dev/null | awk '
        { file = $1; sub(/\.o:.*/, "", file); sub(/.*\.dir\//, "", file); kind = $(NF - 1) }
        kind ~ /^[TRDBVW]$/ { home[$NF] = file }
        kind == "U" { needs[file " " $NF] = 1 }
        END {
            for (need in needs) {
                split(need, part, " ")
                if (part[2] in home && home[part[2]] != part[1]) print part[1], home[part[2]]
            }
        }' | sort -u
}
for folder in "$(dirname "$library")"/CMakeFiles/{lullwise_*,lullwise,page_calls}.dir; do
    circle=$(calls_within "$folder" | tsort 2>&1 >/dev/null | grep -v 'contains a loop' |
        awk '{print $NF}' | tr '\n' ' ') || true
    [ -z "$circle" ] || fault "in a circle: $circle"
done

# --- state: the engine has constants only (.data.rel.ro holds constants with addresses in them)
while read -r member; do
    fault "the engine has a variable: $member"
done < <(objdump -t "$library" |
    awk '$0 !~ /\.data\.rel\.ro/ && $0 ~ / O (\.data|\.bss|\.tdata|\.tbss|\*COM\*)/ {print $NF, "in", $4}')

# --- length: a report, not a fault
for file in $(files_of engine records answer picture sweep desk web command manual ranks); do
    lines=$(wc -l <"$file")
    most=400
    case "$file" in engine/include/*.h | records/*.h | answer/*.h | picture/*.h | sweep/*.h | desk/*.h | web/*.h | command/*.h | ranks/*.h) most=150 ;; esac
    [ "$lines" -le $most ] || echo "floors: note: $file has $lines lines, aim for $most"
done

[ $faults = 0 ] && echo "floors: no arrow runs up"
exit $((faults > 0))
