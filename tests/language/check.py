"""Every sentence of the program stands in every language: python3 check.py ROOT LUPDATE MORE...

MORE are generated sources with the core's sentences. Fails on a sentence that is missing or gone, left untranslated, left
as in English (unless alike.txt names it), or that lost a place holder or gained one.
"""

import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree
from pathlib import Path

HOW = """
A sentence on the screen is spoken in every language. To add or change one:
  1. write it in English: qsTr("...") in QML, tr("...") in C++, or as a text of the core (DEVELOPERS.md);
  2. sh assets/languages/update.sh          brings the files of all languages up to date;
  3. translate what is new, "unfinished", in assets/languages/undercowl_XX.ts with Qt Linguist or an editor;
  4. a word that is the same in that language goes into tests/language/alike.txt.
"""


def messages(path):
    """(context, source, comment) to the list of its forms; None where it is not translated."""
    read = {}
    for context in tree.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
            done = translation.get("type") is None and all(forms)
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "")
            read[key] = forms if done else None
    return read


def places(text):
    return sorted(set(re.findall(r"%(?:L?\d|n)", text)))


def wanted(root, lupdate, more, kept, folder, plural):
    """What the sources of today hold, with what KEPT says of it."""
    now = Path(folder) / kept.name
    shutil.copy(kept, now)
    sources = ["qml", "platform", *more]
    subprocess.run([lupdate, "-silent", "-no-obsolete", "-locations", "none", *plural, "-I", ".", *sources,
                    "-source-language", "en", "-ts", str(now)], cwd=root, check=True, stderr=subprocess.DEVNULL)
    return messages(now)


def alike(path):
    """Language ("*" for all) to the texts that are the same there."""
    same = {}
    for line in path.read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            languages, text = line.split(" ", 1)
            for language in languages.split(","):
                same.setdefault(language, set()).add(text)
    return same


def main():
    root, lupdate, *more = sys.argv[1:]
    files = sorted((Path(root) / "assets/languages").glob("undercowl_*.ts"))
    if len(files) < 5:
        sys.exit(f"only {len(files)} languages: the check would prove nothing")
    same = alike(Path(root) / "tests/language/alike.txt")
    used = set()
    faults = []
    for file in files:
        language = file.stem.removeprefix("undercowl_")
        kept = messages(file)
        with tempfile.TemporaryDirectory() as folder:
            now = wanted(root, lupdate, [] if language == "en" else more, file, folder, ["-pluralonly"] if language == "en" else [])
        if language != "en" and len(now) < 1000:
            sys.exit(f"only {len(now)} sentences in the sources: the check would prove nothing")
        for key in now.keys() - kept.keys():
            faults.append(f"{language}: not in {file.name}: {key}")
        for key in kept.keys() - now.keys():
            faults.append(f"{language}: no longer in the sources: {key}")
        for key, forms in kept.items():
            if forms is None:
                faults.append(f"{language}: not translated: {key}")
                continue
            for form in forms:
                if places(form) != places(key[1]):
                    faults.append(f"{language}: place holders differ: {key} is \"{form}\"")
            letters = re.sub(r"%(?:L?\d|n)|[^A-Za-z]", "", key[1])
            if language == "en" or forms != [key[1]] or len(letters) < 2:
                continue
            if key[1] in same.get("*", set()) | same.get(language, set()):
                used.add(key[1])
            else:
                faults.append(f"{language}: left as in English: {key}")
        print(f"{language}: {len(kept)} sentences")
    for text in set().union(*same.values()) - used:
        faults.append(f"alike.txt: nothing is \"{text}\" any more")
    for fault in faults:
        print(fault)
    if faults:
        sys.exit(f"{len(faults)} faults{HOW}")


main()
