#!/bin/bash
# manual.sh - fails when a manual page is not clean, is not of the program's version or leaves a
# command or an option out; when a completion does not offer them; or when the library, installed
# into a folder, builds no example by pkg-config or by CMake.
# SPDX-License-Identifier: MIT
#
# Usage: test/manual.sh <source folder> <build folder>
set -eu
source=$1
build=$2
made=$build/manual
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
faults=0
fault() { echo "manual: $*"; faults=$((faults + 1)); }

# That a page refers to another that is not installed here says nothing of the page.
for page in "$made"/*.[15]; do
    said=$(mandoc -T lint "$page" | grep -v 'referenced manual not found' || true)
    [ -z "$said" ] || fault "$said"
    mandoc -T ascii "$page" | grep -q "lullwise $("$build/lullwise" --version | cut -d' ' -f2)" ||
        fault "$page: of another version"
done
for command in $("$build/lullwise" --help | grep -oE '^  [a-z]+ '); do
    grep -qE "^\.It Cm $command( |$)" "$made/lullwise.1" || fault "lullwise.1 leaves $command out"
    for option in $("$build/lullwise" "$command" --help | grep -oE '^  (-., )?--[a-z-]+' | grep -oE -- '--[a-z-]+'); do
        [ "$option" = --help ] && continue
        grep -qE "^\.It Fl (. , Fl )?$(sed 's/^-//' <<<"$option")( |$)" "$made/lullwise.1" ||
            fault "lullwise.1 leaves $option out"
        grep -E "^        $command\) words=" "$made/lullwise.bash" | grep -qE -- " $option[ \"]" ||
            fault "lullwise.bash: $command leaves $option out"
    done
done

offered() {  # what bash offers behind these words
    bash -c 'source "$0"; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _lullwise lullwise "${!#}"; echo "${COMPREPLY[@]}"' \
        "$made/lullwise.bash" "$@"
}
[ "$(offered lullwise swe)" = sweep ] || fault "bash offers '$(offered lullwise swe)' for swe"
[ "$(offered lullwise sweep --dr)" = --draws ] || fault "bash offers no --draws"
for shell in zsh fish; do
    ! command -v $shell >/dev/null || $shell -n "$made"/*"$([ $shell = fish ] && echo .fish || echo _lullwise)" ||
        fault "$shell does not read its completion"
done

# The library as it is installed.
cmake --install "$build" --component library --prefix "$folder/usr" >/dev/null
sed -i "s|^prefix=.*|prefix=$folder/usr|" "$(find "$folder" -name lullwise.pc)"
flags=$(PKG_CONFIG_PATH=$(dirname "$(find "$folder" -name lullwise.pc)") pkg-config --cflags --libs lullwise)
cc "$source/example/balance.c" -o "$folder/balance" $flags || fault "no example builds by pkg-config"
"$folder/balance" | grep -q flies || fault "the example built on the installed library does not fly"
cat >"$folder/CMakeLists.txt" <<END
cmake_minimum_required(VERSION 3.25)
project(own LANGUAGES C)
find_package(lullwise REQUIRED)
add_executable(own "$(realpath "$source")/example/balance.c")
target_link_libraries(own PRIVATE lullwise::lullwise)
END
cmake -S "$folder" -B "$folder/own" -DCMAKE_PREFIX_PATH="$folder/usr" >/dev/null &&
    cmake --build "$folder/own" >/dev/null && "$folder/own/own" | grep -q flies ||
    fault "no example builds by CMake"
[ $faults = 0 ] && echo "manual: pages, completions and the installed library are sound"
exit $((faults > 0))
