#!/bin/sh
# Installs what is missing, builds Release, and opens the app on a demo shop. Without a display, or with --headless, the
# same job is done in the terminal. POSIX sh; made for Debian 12.
#
#   sh platform/run.sh [--headless] [--store DIR] [--out DIR]
#
# The shop lies in build/run/demo/shop and the papers in build/run/demo unless --store and --out say otherwise.
set -eu

here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
root=$(dirname -- "$here")
build=$root/build/run
headless=
store=$build/demo/shop
out=$build/demo

while test $# -gt 0; do
    case $1 in
    --headless) headless=yes ;;
    --store | --out)
        test $# -gt 1 || { echo "run.sh: $1 needs a folder" >&2; exit 2; }
        if test "$1" = --store; then store=$2; else out=$2; fi
        shift
        ;;
    -h | --help) sed -n '2,7s/^# \{0,1\}//p' "$0"; exit 0 ;;
    *) echo "run.sh: $1 is not known; see --help" >&2; exit 2 ;;
    esac
    shift
done
test -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" || headless=yes

. "$here/packages.sh"
need_packages run

test -f "$build/build.ninja" ||
    cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DUNDERCOWL_TESTS=OFF
cmake --build "$build"

mkdir -p "$out"
ctl=$build/platform/cli/undercowlctl
if test -n "$headless"; then
    exec "$ctl" demo --store "$store" --out "$out"
fi
"$ctl" demo --only-shop --store "$store"
exec "$build/platform/app/undercowl" --store "$store"
