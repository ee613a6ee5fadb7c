#!/bin/bash
# ranks.sh - fails when a sweep by MPI is not the table of one thread to the bit: with one rank, with
# two, with a rank that is killed on the way, and gone on with after all were.
# SPDX-License-Identifier: MIT
#
# Usage: test/ranks.sh <source folder> <lullwise> <lullwise-sweep>
set -eu
demo=$1/demo
lullwise=$2
ranks=$3
mpirun=$(command -v mpirun.mpich || command -v mpirun)
export ASAN_OPTIONS=detect_leaks=0  # MPI keeps what it has
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$folder"
ask=(--boat "$demo/heron.yaml" --sailor "$demo/light.yaml" --day "$demo/breeze.yaml"
     --ask balance --pin B --over wind.mean=10:16:3kn)
fail() { echo "ranks: $*"; cat said 2>/dev/null; exit 1; }
same() { cmp -s one.csv "$1" || fail "$2: another table"; }
lines() { cat "$1" 2>/dev/null | wc -l; }

# Of the table of this name: the processes that work, of one rank or of all; each has one that waits.
workers() {
    for process in $(pgrep -f -- "-o $folder/$1"); do
        [ "$(cat "/proc/$process/comm" 2>/dev/null)" = lullwise-sweep ] || continue
        [ -z "$(pgrep -P "$process")" ] || continue
        tr '\0' '\n' <"/proc/$process/environ" | grep -q "^PMI_RANK=${2:-}" && echo "$process"
    done
}

# Waits until so many points are kept.
await() { for _ in $(seq 1500); do [ "$(lines "$1")" -gt "$2" ] && return; sleep 0.02; done; fail "$1: too slow"; }

# What one thread tells, of draws enough that a rank is killed in the midst of them and missed before
# the end, however quick the machine: sets draws.
alone() {
    local began
    for draws in 12 36 108 324; do
        began=$(date +%s%N)
        "$lullwise" sweep "$@" --draws $draws --threads 1 --force -o one.csv >told
        [ $(($(date +%s%N) - began)) -lt 8000000000 ] || break
    done
}
alone "${ask[@]}"
ask+=(--draws $draws)
for count in 1 2; do
    timeout 120 "$mpirun" -n $count "$ranks" "${ask[@]}" -o $count.csv >said 2>&1 || fail "$count ranks: ended $?"
    same $count.csv "$count ranks"
done

# One of three is killed: the others work out what it was at. Its table, and what was asked.
one_killed() {
    local name=$1
    shift
    timeout 120 "$mpirun" -disable-auto-cleanup -n 3 "$ranks" "$@" --patience '2 s' -o "$folder/$name.csv" >said 2>&1 &
    local own=$!
    await "$name.csv.part" 4
    kill -KILL $(workers "$name.csv" 2)
    wait "$own" || true
    [ -f "$name.csv" ] || fail "$name, a rank killed: no table"
    same "$name.csv" "$name, a rank killed"
    grep -q 'rank 2 fell silent' said || fail "$name, a rank killed: nobody says so"
}
one_killed killed "${ask[@]}"

# All are killed: the table goes on with what is kept.
timeout 120 "$mpirun" -n 2 "$ranks" "${ask[@]}" -o "$folder/resumed.csv" >said 2>&1 &
await resumed.csv.part 4
kill -KILL $(workers resumed.csv)
wait %1 || true
[ ! -f resumed.csv ] || fail "all killed: the table is whole"
timeout 120 "$mpirun" -n 2 "$ranks" "${ask[@]}" --resume -o resumed.csv >said 2>&1 || fail "resumed: ended $?"
same resumed.csv "killed and resumed"

# Hardware sought: the same is told, and the same was tried.
seek=(--boat "$demo/heron.yaml" --day "$demo/breeze.yaml" --ask balance --course downwind --over wind.mean=14:18:2kn
      --best main_foil.span=0.9:1.1:0.05m)
alone "${seek[@]}"
seek+=(--draws $draws)
for count in 1 2; do
    timeout 120 "$mpirun" -n $count "$ranks" "${seek[@]}" -o sought$count.csv >said 2>&1 || fail "sought by $count ranks: ended $?"
    same sought$count.csv "sought by $count ranks"
    cmp -s told <(grep -v '^lullwise\| UCX ' said) || fail "sought by $count ranks: another answer"
done

one_killed left "${seek[@]}"
echo "ranks: the same table with 1 and 2 ranks, with one killed, and resumed"
