#!/usr/bin/env bash
# Makes the pictures of docs/first-month.md from the sample month, with target/daymount.jar and, to
# show and shrink what it writes, chromium, poppler-utils and ImageMagick:
#   mvn -q -DskipTests package && docs/pictures/make.sh
set -euo pipefail
cd "$(dirname "$0")/../.."
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT
daymount() { java -jar target/daymount.jar "$@"; }

daymount sheets sample-photos --clock "Orrery 9=-1h" --cards 3x4 --out "$place/june" --quiet || [ $? = 3 ]
daymount look sample-photos/20260604_160533.jpg --draw "$place/look.jpg" > /dev/null

chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run \
  --disable-background-networking --disable-component-update --disable-sync \
  --user-data-dir="$place/browser" --hide-scrollbars --window-size=1200,1500 \
  --screenshot="$place/page.png" "file://$place/june/index.html" > /dev/null 2>&1
# the guide's first page, and its first with the album's pages
pages=$(pdfinfo "$place/june/guide.pdf" | awk '/^Pages/ { print $2 }')
for page in $(seq 1 "$pages"); do
  if pdftotext -f "$page" -l "$page" "$place/june/guide.pdf" - | grep -qi '^Mount the pages'; then
    break
  fi
done
pdftoppm -r 80 -png -f 1 -l 1 -singlefile "$place/june/guide.pdf" "$place/guide"
pdftoppm -r 80 -png -f "$page" -l "$page" -singlefile "$place/june/guide.pdf" "$place/pages"

small() { convert "$1" -strip "${@:3}" "docs/pictures/first-month-$2"; }
small "$place/page.png" page.jpg -resize 900x -quality 72
small "$place/look.jpg" look.jpg -resize 900x -quality 75
small "$place/june/sheets/sheet-03.jpg" sheet.jpg -resize 480x480 -quality 80
small "$place/guide.png" guide.png -colors 64
small "$place/pages.png" pages.png -colors 200
ls -l docs/pictures
