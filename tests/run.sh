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
# Holds every text file of ours to 400 lines, or to saying in its head why it is longer.
short_files() {
    git ls-files '*.h' '*.cpp' '*.inc' '*.qml' '*.cmake' '*.py' '*.sh' '*CMakeLists.txt' '*.md' | {
        long=0
        while read -r file; do
            test "$(wc -l <"$file")" -gt 400 || continue
            head -n 5 "$file" | grep -q -e 'Written by ' -e 'More than 400 lines' && continue
            echo "$file: more than 400 lines: split it, or say in its head 'More than 400 lines: why'"
            long=1
        done
        return $long
    }
}
# qmllint ends well whatever it warns of.
lint_screens() {
    cmake --build --preset release --target all_qmllint >build/qmllint.log 2>&1 || { cat build/qmllint.log; return 1; }
    if grep -A 3 -E '^(Warning|Error|Info):' build/qmllint.log; then
        return 1
    fi
}

stage "packages"
need_packages run test
stage "formatting"
git ls-files '*.h' '*.cpp' | xargs clang-format --dry-run -Werror
stage "length of files"
short_files
stage "core alone, Clang"
build core-clang
stage "tests of the core, Clang"
ctest --preset core-clang -j 2
stage "everything, GCC"
build release
stage "qmllint"
lint_screens
stage "clang-tidy"
python3 tests/tidy.py build/release
stage "all tests, GCC"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
ctest --preset release -j 2
stage "how well the photos in tests/photos are read"
cat build/release/sight_score.txt
