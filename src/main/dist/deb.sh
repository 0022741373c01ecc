#!/usr/bin/env bash
# deb.sh IMAGE WORK VERSION ICON: the app image as a Debian package, in the places Debian has for things.
set -euo pipefail
image=$1 work=$2 version=$3 icon=$4
arch=$(dpkg --print-architecture)
tree=$work/deb
rm -rf "$tree"
mkdir -p "$tree"/DEBIAN "$tree"/usr/{bin,lib,share/man,share/bash-completion,share/doc/daymount}
cp -a "$image" "$tree/usr/lib/daymount"
mv "$tree/usr/lib/daymount/share/man/man1" "$tree/usr/share/man/"
mv "$tree/usr/lib/daymount/share/bash-completion/completions" "$tree/usr/share/bash-completion/"
rm -r "$tree/usr/lib/daymount/share" "$tree/usr/lib/daymount/Daymount.desktop"
# a click in the menu opens the start page (freedesktop.org: Desktop Entry, Icon Theme)
install -Dm644 "$(dirname "$0")/daymount.desktop" "$tree/usr/share/applications/daymount.desktop"
install -Dm644 "$icon" "$tree/usr/share/icons/hicolor/scalable/apps/daymount.svg"
gzip -9n "$tree"/usr/share/man/man1/*.1
ln -s ../lib/daymount/bin/daymount "$tree/usr/bin/daymount"
mv "$tree/usr/lib/daymount/LICENSE" "$tree/usr/share/doc/daymount/copyright"

# The packages whose libraries the image's own libraries name: Debian's Java brings few of its own.
libraries=$(find "$tree/usr/lib/daymount" \( -name '*.so' -o -name '*.so.*' -o -path '*/runtime/bin/*' \) -type f \
  -exec ldd {} + 2>/dev/null | awk '$2 == "=>" && $3 ~ /^\// { print $3 }' | grep -vF "$tree" | sort -u)
needs=$(for library in $libraries; do
  dpkg -S "$library" 2>/dev/null || dpkg -S "$(readlink -f "$library")" 2>/dev/null || dpkg -S "/usr$library" 2>/dev/null || true
done | sed 's/:.*//' | grep -vE '^libx|^libasound|^openjdk' | sort -u | paste -sd, | sed 's/,/, /g')

cat > "$tree/DEBIAN/control" <<EOF
Package: daymount
Version: $version
Architecture: $arch
Maintainer: the Daymount project
Section: graphics
Priority: optional
Installed-Size: $(du -sk "$tree/usr" | cut -f1)
Depends: $needs
Description: prints, cuts and stories of a page-a-day album
 Sorts a month of phone pictures into days, chooses and crops one for every
 space of the album, lays them out on sheets to print, and tells how to cut and
 mount them. The pictures are only read; nothing leaves the computer.
EOF
dpkg-deb --root-owner-group -Zgzip --build "$tree" "$work/daymount_${version}_$arch.deb" > /dev/null
