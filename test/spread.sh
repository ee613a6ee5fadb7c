#!/bin/bash
# spread.sh - runs a long test in one of six runs under the sanitizers. Its claims are held in every
# run of the release build; what the sanitizers look for is the same each time.
# SPDX-License-Identifier: MIT
#
# Usage: test/spread.sh <group, 0 to 5> <test program>
#
# LW_RUN in the environment is the run's number, or `all`; without it all run. Ends with 77 where it
# is not this test's turn.
set -eu
run=${LW_RUN:-all}
if [ "$run" != all ] && [ $((run % 6)) != "$1" ]; then
    echo "not in run $run of the sanitizers (LW_RUN=$1 has it, LW_RUN=all has all)"
    exit 77
fi
exec "$2"
