#!/bin/sh
# The Debian package for this machine: builds what is not built, packs, and lets lintian look at it when it is there.
#
#   sh platform/linux/package/build.sh
set -eu
cd "$(dirname "$0")/../../.."
. platform/packages.sh
need_packages run
test -f build/package/build.ninja ||
    cmake -S . -B build/package -G Ninja -DCMAKE_BUILD_TYPE=Release -DUNDERCOWL_TESTS=OFF -DCMAKE_INSTALL_PREFIX=/usr
cmake --build build/package
(cd build/package && cpack -G DEB)
ls -l build/package/*.deb
if command -v lintian >/dev/null; then
    lintian --fail-on error --tag-display-limit 0 build/package/*.deb
fi
