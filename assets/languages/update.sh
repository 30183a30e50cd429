#!/bin/sh
# Brings the files of Qt Linguist up to date with the sources: new sentences come in untranslated, those that are gone
# go. Run after a sentence was changed or added; then translate what is new (Qt Linguist, or an editor).
#
#   sh assets/languages/update.sh [BUILD]     BUILD is build/release unless named: the core lists its texts there
set -eu
cd "$(dirname "$0")/../.."
build=${1:-build/release}
cmake --build "$build" --target undercowl_texts
texts=$build/tests/language/coretexts_of_core.cpp
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
for language in de it fr es; do
    "$lupdate" -silent -no-obsolete -locations none -I . qml platform "$texts" -source-language en \
        -ts "assets/languages/undercowl_$language.ts"
done
# English needs only what it says of one and of several.
"$lupdate" -silent -no-obsolete -locations none -pluralonly -I . qml platform -source-language en -ts assets/languages/undercowl_en.ts
