#!/bin/bash
# same_bits.sh - builds test/same_bits.c in several ways and fails when two print different bits.
# SPDX-License-Identifier: MIT
#
# Usage: test/same_bits.sh <source folder> <build folder> <program of the release build>
set -eu
source=$1
builds=$2
release=$3
mkdir -p "$builds"

# build <name> <compiler> <flags> [cmake options]; without flags those of the toolchain
build() {
    local name=$1 compiler=$2 flags=$3
    shift 3
    cmake -G Ninja --log-level=WARNING -S "$source" -B "$builds/$name" "$@" \
        ${compiler:+-DCMAKE_C_COMPILER=$compiler} ${flags:+-DCMAKE_C_FLAGS="$flags"} >/dev/null
    cmake --build "$builds/$name" --target same_bits >"$builds/$name.log" 2>&1 ||
        { cat "$builds/$name.log"; echo "same_bits: the build $name failed"; exit 1; }
}

build gcc-O0 gcc "" -DCMAKE_BUILD_TYPE=Debug
build gcc-native gcc "-march=native"
build gcc-one gcc "" -DLW_WIDTH=1
build clang clang-14 "" -DLW_WIDTH=8
build wasm "" "" -DCMAKE_TOOLCHAIN_FILE="$source/cmake/wasm.cmake"

"$release" >"$builds/release.txt"
status=0
for name in gcc-O0 gcc-native gcc-one clang wasm; do
    if [ $name = wasm ]; then
        node --no-warnings "$source/test/wasi.mjs" "$builds/wasm/same_bits.wasm" >"$builds/wasm.txt"
    else
        "$builds/$name/same_bits" >"$builds/$name.txt"
    fi
    if ! diff "$builds/release.txt" "$builds/$name.txt"; then
        echo "same_bits: $name differs from the release build"
        status=1
    fi
done
[ $status = 0 ] && echo "same_bits: $(wc -l <"$builds/release.txt") hashes agree in 6 builds"
exit $status
