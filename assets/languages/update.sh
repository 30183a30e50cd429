#!/bin/sh
# Brings the files of Qt Linguist up to date with the sources: new sentences come in untranslated, those that are gone
# go. Run after a sentence was changed or added; then translate what is new (Qt Linguist, or an editor).
set -eu
cd "$(dirname "$0")/../.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
files=
for language in de it fr es; do
    files="$files assets/languages/undercowl_$language.ts"
done
"$lupdate" -silent -no-obsolete -locations none -I . qml platform -source-language en -ts $files
# English needs only what it says of one and of several.
"$lupdate" -silent -no-obsolete -locations none -pluralonly -I . qml platform -source-language en -ts assets/languages/undercowl_en.ts
