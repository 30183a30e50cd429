#!/bin/sh
# Installs what is missing, builds everything, runs every test. Ends with ctest's summary.
set -eu
cd "$(dirname "$0")/.."
. platform/packages.sh
need_packages run test
cmake --preset release
cmake --build --preset release
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
ctest --preset release -j 2
