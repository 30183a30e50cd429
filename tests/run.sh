#!/bin/sh
# Installs what is missing, builds everything, runs every check and every test. Ends with ctest's summary.
#
#   sh tests/run.sh
#
# Stages stop at the first failure. A second run builds only what changed.
set -eu
cd "$(dirname "$0")/.."
. platform/packages.sh

started=$(date +%s)
stage() {
    echo "== $* ($(($(date +%s) - started)) s)"
}
# Sets up and builds a preset; what CMake says is shown only when it fails.
build() {
    mkdir -p build
    cmake --preset "$1" >"build/$1.log" 2>&1 || { cat "build/$1.log"; return 1; }
    cmake --build --preset "$1"
}

stage "packages"
need_packages run test
stage "formatting"
git ls-files '*.h' '*.cpp' | xargs clang-format --dry-run -Werror
stage "core alone, Clang"
build core-clang
stage "tests of the core, Clang"
ctest --preset core-clang -j 2
stage "everything, GCC"
build release
stage "all tests, GCC"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
ctest --preset release -j 2
