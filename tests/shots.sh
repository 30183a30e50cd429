#!/bin/sh
# Takes pictures of the gallery, or of one screen of the app, in every theme and size, and puts each set side by side.
# usage: tests/shots.sh APP OUTPUT_FOLDER [--fast] [PAGE ...]
# SCALE=2 takes them with text at 200 %. Needs ImageMagick (montage). With --fast only 360 x 640 is taken.
set -eu
app=$1
out=$2
shift 2
sizes="360x640 412x915 1280x800"
if [ "${1:-}" = --fast ]; then
    sizes=360x640
    shift
fi
pages=${*:-Actions Wires Fields Marks Choices Measure}
mkdir -p "$out"
export QT_QPA_PLATFORM=offscreen
for page in $pages; do
    scale=${SCALE:-1}
    for size in $sizes; do
        set --
        for theme in night day sun; do
            file="$out/$page-$size-$theme.png"
            "$app" --gallery --page "$page" --size "$size" --theme "$theme" --text-scale "$scale" --shot "$file"
            set -- "$@" "$file"
        done
        montage "$@" -tile 3x1 -geometry +8+8 -background '#808080' "$out/$page-$size.png"
    done
done
