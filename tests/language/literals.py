"""No sentence of the core is forgotten: python3 literals.py ROOT.

The core speaks English, and its sentences are translated by what they say. Those that it puts together from pieces cannot be
listed by a program, so they stand a second time in qml/language/sentences_*.cpp; this finds the piece that was written in the
core and not there. Every text of three words or more in core/ has to be part of a sentence of assets/languages, or stand in
english.txt beside this file with the reason why nobody reads it on the screen.
"""

import re
import sys
import xml.etree.ElementTree as tree
from pathlib import Path

HOW = """
A sentence of the core that is shown is added to qml/language/sentences_*.cpp, its values as %1, then translated
(DEVELOPERS.md, Languages). One that never reaches the screen goes into tests/language/english.txt.
"""

TOKEN = re.compile(r'//[^\n]*|/\*.*?\*/|R"(?P<mark>\w*)\((?P<raw>.*?)\)(?P=mark)"|"(?P<text>(?:[^"\\\n]|\\.)*)"'
                   r"|'(?:[^'\\\n]|\\.)+'", re.S)
VALUE = re.compile(r"%(?:L?\d|n)|\{[^{}]*\}")
SQL = re.compile(r"\b(SELECT|INSERT|UPDATE|DELETE|CREATE|DROP|ALTER|PRAGMA|WHERE|ORDER BY|CONFLICT)\b|\bFROM\b")
ESCAPES = {"n": "\n", "t": "\t", "0": "\0"}

# What these hold is no English of the screen: names for searching in five languages, markup, what is spoken aloud (English,
# as the screen says), the pages of docs/calculations.
OTHER = ("core/job/tradewords.cpp", "core/handover/html.cpp", "core/talk/", "core/trade/page.cpp")


def literals(source):
    """Each text of the source, pieces that the compiler joins as one."""
    texts, end = [], None
    for token in TOKEN.finditer(source):
        text = token.group("raw")
        if token.group("text") is not None:
            text = re.sub(r"\\u([0-9A-Fa-f]{4})", lambda code: chr(int(code.group(1), 16)), token.group("text"))
            text = re.sub(r"\\(.)", lambda escape: ESCAPES.get(escape.group(1), escape.group(1)), text)
        if text is None:
            continue
        if end is not None and not source[end:token.start()].strip():
            texts[-1] += text
        else:
            texts.append(text)
        end = token.end()
    return texts


def words(text):
    return re.findall(r"[A-Za-z]{2,}", text)


def pieces(text):
    """What stands between its values, as far as it has words."""
    return [piece.strip() for piece in VALUE.split(text) if len(words(piece)) >= 2]


def translated(root):
    """Every source text of the translations, one after the other, values taken out."""
    file = root / "assets/languages/undercowl_de.ts"
    sources = [message.findtext("source") for message in tree.parse(file).getroot().iter("message")]
    if len(sources) < 1000:
        sys.exit(f"only {len(sources)} sentences in {file}: the check would prove nothing")
    return "\0".join(VALUE.sub("\0", source) for source in sources)


def english(path):
    """The texts that stay English; trailing blanks count, so each is between its quotes."""
    return {line[1:-1].replace("\\n", "\n") for line in path.read_text(encoding="utf-8").splitlines()
            if line.startswith('"')}


def main():
    root = Path(sys.argv[1])
    known = translated(root)
    left = english(root / "tests/language/english.txt")
    used, faults, count = set(), [], 0
    for file in sorted([*root.glob("core/**/*.cpp"), *root.glob("core/**/*.h")]):
        name = file.relative_to(root).as_posix()
        if name.startswith(OTHER):
            continue
        for text in literals(file.read_text(encoding="utf-8")):
            if len(words(text)) < 3 or " " not in text.strip() or SQL.search(text):
                continue
            count += 1
            if all(piece in known for piece in pieces(text)):
                continue
            if text in left:
                used.add(text)
            else:
                faults.append(f"{name}: {text!r}")
    if count < 500:
        sys.exit(f"only {count} texts in the core: the check would prove nothing")
    faults += [f"english.txt: {text!r} is translated, or gone from the core" for text in sorted(left - used)]
    print(f"{count} texts of the core, {len(used)} of them English for a reason")
    for fault in faults:
        print(fault)
    if faults:
        sys.exit(f"{len(faults)} faults{HOW}")


main()
