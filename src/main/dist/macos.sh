#!/usr/bin/env bash
# Makes, on a Mac, the program with its own Java and a disk image to install it from:
#     src/main/dist/macos.sh
# Needs a JDK 17 or newer, Maven 3.8 or newer and Node with npm. Leaves target/dist/image/daymount.app
# and target/dist/Daymount-*.dmg. With SIGN="Developer ID Application: …" and JDK 19 both are signed.
set -euo pipefail
cd "$(dirname "$0")/../../.."
[ "$(uname)" = Darwin ] || { echo "this makes a program for macOS, and runs on macOS alone" >&2; exit 1; }
java_home=${JAVA_HOME:-$(/usr/libexec/java_home -v 17+)}
jpackage=$java_home/bin/jpackage
[ -x "$jpackage" ] || { echo "no jpackage in $java_home; set JAVA_HOME to a JDK 17 or newer" >&2; exit 1; }
export JAVA_HOME=$java_home
mvn -B -ntp -q -Pdist -DskipTests package
target/dist/image/daymount.app/Contents/MacOS/daymount --version
sign=()
if [ -n "${SIGN:-}" ]; then
  sign=(--mac-sign --mac-signing-key-user-name "$SIGN")
  # an app that is there is signed by a command of its own, and from JDK 19 on only (from memory)
  "$jpackage" --type app-image --app-image target/dist/image/daymount.app "${sign[@]}"
fi
# the first number of a version must not be 0 there
"$jpackage" --type dmg --app-image target/dist/image/daymount.app --dest target/dist \
  --name Daymount --app-version 1.0.0 --license-file LICENSE ${sign[@]+"${sign[@]}"}
ls target/dist/*.dmg
