#!/bin/sh
# Installs what is missing, builds everything, runs every check and every test. Ends with ctest's summary.
#
#   sh tests/run.sh [--long]
#
# Stages stop at the first failure. A second run builds only what changed. Every test runs without a network: whoever
# opens a socket to another machine is ended. Each target is fuzzed for UNDERCOWL_FUZZ_SECONDS (20 unless set). With
# --long, what takes more than a few minutes follows: all kills and faults, the sanitizers over the app too, the thread
# sanitizer, how the shop grows, and the packages.
set -eu
cd "$(dirname "$0")/.."
. platform/packages.sh
case "${1:-}" in
"") long= ;;
--long) long=yes ;;
*) sed -n '2,10s/^# \{0,1\}//p' tests/run.sh; exit 2 ;;
esac

fuzz_seconds=${UNDERCOWL_FUZZ_SECONDS:-20}
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
# Fuzzes every target from its corpus, two at a time; what is found lies in build/sanitize beside the log.
fuzz() {
    ls tests/fuzz/corpus | xargs -P 2 -I NAME sh -c '
        mkdir -p build/sanitize/found/NAME
        UNDERCOWL_FUZZ_TARGET=NAME build/sanitize/tests/fuzz/fuzz build/sanitize/found/NAME tests/fuzz/corpus/NAME \
            -verbosity=0 -seed=1 -print_final_stats=1 -max_total_time="$1" -timeout=10 -rss_limit_mb=4096 \
            -artifact_prefix=build/sanitize/NAME- >build/sanitize/NAME.log 2>&1 ||
            { tail -40 build/sanitize/NAME.log; exit 255; }
        echo "NAME: $(grep -o "number_of_executed_units: .*" build/sanitize/NAME.log | tr -dc 0-9) inputs, no finding"
    ' sh "$fuzz_seconds"
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
stage "core alone, Clang, with the address and undefined-behaviour sanitizers"
build sanitize
stage "tests of the core, with sanitizers"
ctest --preset sanitize -j 2
stage "fuzzing, $fuzz_seconds s for each target"
fuzz
stage "everything, GCC"
build release
stage "qmllint"
lint_screens
stage "all tests, GCC, and clang-tidy beside them"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
# Many tests wait for most of their time: clang-tidy takes what they leave of the processors.
nice -n 19 python3 tests/tidy.py build/release >build/tidy.log 2>&1 &
tidy=$!
trap 'kill $tidy 2>/dev/null || true' EXIT
build/release/tests/platform/no_network ctest --preset release -j 4
stage "what clang-tidy found"
wait $tidy || { cat build/tidy.log; exit 1; }
tail -n 1 build/tidy.log
trap - EXIT
stage "how well the photos in tests/photos are read"
cat build/release/sight_score.txt build/release/sight_score_thin.txt
test -n "$long" || exit 0

stage "every kill and every fault"
UNDERCOWL_LONG=1 build/release/tests/store/test_store '*survive*,what was confirmed*,whatever byte*' >build/long.log 2>&1 ||
    { cat build/long.log; exit 1; }
grep -E 'survived|flipped|injected|still read|lost' build/long.log
stage "everything under the address and undefined-behaviour sanitizers"
build sanitize-app
build/release/tests/platform/no_network ctest --preset sanitize-app -j 2
stage "store, journal and view models under the thread sanitizer"
build threads
build/release/tests/platform/no_network ctest --preset threads -j 2
stage "how the shop grows"
build bench
build/bench/tests/bench/bench_scale build docs/performance.md
stage "packages for amd64 and 64-bit ARM"
sh platform/linux/package/build.sh
sh platform/linux/arm64/build.sh
