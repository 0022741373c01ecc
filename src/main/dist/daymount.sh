#!/bin/sh
# Starts the program with the Java beside it, from wherever the folder lies.
#
# The virtual machine takes the class data made at the build only if the class path is, letter by
# letter, the one it was made with; up to Java 18 that ends with the first move of the folder. So
# the folder is opened here as file 9, and everything in it is named by that: /proc/self/fd/9 is
# the same wherever it is.
set -eu
self=$(readlink -f "$0")
home=${self%/bin/*}
exec 9<"$home/lib/app"
# What ends within a second or two is not worth the slower, better of the two compilers, and a month
# of pictures not worth compiling what runs but a few hundred times.
case ${1-} in
  sheets | review | look | open | '') compilers=-XX:CompileThresholdScaling=3 ;;
  *) compilers=-XX:TieredStopAtLevel=1 ;;
esac
# One pool of C memory a thread is more than the detectors need; two are enough.
export MALLOC_ARENA_MAX="${MALLOC_ARENA_MAX:-2}"
exec "$home/lib/runtime/bin/java" @/proc/self/fd/9/options $compilers org.daymount.Main "$@"
